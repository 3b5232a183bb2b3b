import type { Girth, Seam } from '../pattern/index.ts';
import { headEase } from './jacket-fit.ts';
import { pleatDepth } from './jacket-lining.ts';
import type { JacketView } from './jacket-plan.ts';
import { longer, plain, roundBody, roundLimb, side } from './seams.ts';

/** How much the side front may be longer over the bust than the centre front: what wool is eased without a pucker, mm. */
export const bustEase = [0.5, 5] as const;

/** Sleeve seams: the top sleeve is stretched over the bend in front and eased over the elbow behind, mm. */
const bendSeams = { front: [-6, -1], back: [0.5, 5] } as const;

/** The lining's under sleeve is made as long as its armhole in all; front and back may share it by so much otherwise. */
const liningShare = [-4, 4] as const;

/** A top collar is longer than its under collar by the turn of the cloth. */
const collarTurn = { outer: [0.5, 6], end: [0.5, 5] } as const;

const princessNotches: Seam['notches'] = [
  ['bust-above', 'bust-above'],
  ['bust-below', 'bust-below'],
  ['princess-waist', 'waist'],
];

const bladeNotches: Seam['notches'] = [
  ['blade', 'blade'],
  ['princess-waist', 'waist'],
];

const elbow = (which: 'front' | 'back'): Seam['notches'] => [[`elbow-${which}`, `elbow-${which}`]];

const shellSeams: readonly Seam[] = [
  plain('shoulder', side('back', 'shoulder'), side('front', 'shoulder')),
  longer('eased', 'shoulder-side', side('side-back', 'shoulder'), side('side-front', 'shoulder'), [2, 9]),
  longer(
    'eased',
    'princess-front',
    side('side-front', 'princess', true),
    side('front', 'princess'),
    bustEase,
    princessNotches,
  ),
  plain('princess-back', side('side-back', 'princess', true), side('back', 'princess'), bladeNotches),
  plain('side', side('side-front', 'side'), side('side-back', 'side'), [
    ['waist', 'waist'],
    ['hip', 'hip'],
  ]),
  plain('centre-back', side('back', 'centre-back'), side('back', 'centre-back'), [['waist-centre', 'waist-centre']]),
  longer(
    'eased',
    'armhole-front',
    side('sleeve', 'cap-front'),
    side('side-front', 'armhole', true),
    [headEase.front - 4, headEase.front + 4],
    [['cap-front', 'armhole-front']],
  ),
  longer(
    'eased',
    'armhole-back',
    side('sleeve', 'cap-back'),
    side('side-back', 'armhole'),
    [headEase.back - 4, headEase.back + 4],
    [['cap-back', 'armhole-back']],
  ),
  plain('underarm-front', side('under-sleeve', 'cap-front'), side('side-front', 'armhole-under')),
  plain('underarm-back', side('under-sleeve', 'cap-back'), side('side-back', 'armhole-under', true)),
  longer(
    'stretched',
    'sleeve-front',
    side('sleeve', 'front-seam', true),
    side('under-sleeve', 'front-seam', true),
    bendSeams.front,
    elbow('front'),
  ),
  longer(
    'eased',
    'sleeve-back',
    side('sleeve', 'back-seam'),
    side('under-sleeve', 'back-seam'),
    bendSeams.back,
    elbow('back'),
  ),
];

const facingSeams: readonly Seam[] = [
  plain('front-edge', side('front-facing', 'front-edge'), side('front', 'front-edge'), [['waist-edge', 'waist-edge']]),
  plain('neck-stand', side('front-facing', 'neck-stand'), side('front', 'neck-stand')),
  plain('facing-shoulder', side('back-facing', 'shoulder'), side('front-facing', 'shoulder')),
];

const neckSeams = (id: string, outerFront: string, outerBack: string): readonly Seam[] => [
  plain(`${id}-front`, side('front-facing', 'neck'), side(outerFront, 'neck'), [['neck-front', 'neck-front']]),
  plain(`${id}-back`, side('back-facing', 'neck'), side(outerBack, 'neck'), [['neck-back', 'neck-back']]),
];

const collarNeck = (collar: string, front: string, back: string): readonly Seam[] => [
  plain(`${collar}-neck-front`, side(collar, 'neck-front'), side(front, 'neck'), [['neck-front', 'neck-front']]),
  plain(`${collar}-neck-back`, side(collar, 'neck-back'), side(back, 'neck', true), [['neck-back', 'neck-back']]),
];

const collarSeams: readonly Seam[] = [
  ...collarNeck('under-collar', 'front', 'back'),
  ...collarNeck('collar', 'front-facing', 'back-facing'),
  plain('collar-centre', side('under-collar', 'centre-back'), side('under-collar', 'centre-back')),
  longer('eased', 'collar-outer', side('collar', 'outer'), side('under-collar', 'outer'), collarTurn.outer),
  longer('eased', 'collar-end', side('collar', 'end'), side('under-collar', 'end'), collarTurn.end),
];

const liningSeams: readonly Seam[] = [
  plain('lining-facing-front', side('lining-front', 'facing', true), side('front-facing', 'inner'), [['bust', 'bust']]),
  longer('pleated', 'lining-facing-back', side('lining-back', 'facing'), side('back-facing', 'outer', true), [
    pleatDepth,
    pleatDepth,
  ]),
  plain('lining-shoulder', side('lining-back', 'shoulder'), side('lining-front', 'shoulder')),
  longer(
    'eased',
    'lining-shoulder-side',
    side('lining-side-back', 'shoulder'),
    side('lining-side-front', 'shoulder'),
    [2, 9],
  ),
  longer(
    'eased',
    'lining-princess-front',
    side('lining-side-front', 'princess', true),
    side('lining-front', 'princess'),
    bustEase,
    [
      ['bust-above', 'bust-above'],
      ['waist', 'waist'],
    ],
  ),
  plain('lining-princess-back', side('lining-side-back', 'princess', true), side('lining-back', 'princess'), [
    ['blade', 'blade'],
    ['waist', 'waist'],
  ]),
  plain('lining-side', side('lining-side-front', 'side'), side('lining-side-back', 'side'), [
    ['waist-side', 'waist-side'],
  ]),
  plain('lining-centre-back', side('lining-back', 'centre-back'), side('lining-back', 'centre-back'), [
    ['waist-centre', 'waist-centre'],
  ]),
  longer(
    'eased',
    'lining-armhole-front',
    side('lining-sleeve', 'cap-front'),
    side('lining-side-front', 'armhole', true),
    [headEase.front - 4, headEase.front + 4],
    [['cap-front', 'armhole-front']],
  ),
  longer(
    'eased',
    'lining-armhole-back',
    side('lining-sleeve', 'cap-back'),
    side('lining-side-back', 'armhole'),
    [headEase.back - 4, headEase.back + 4],
    [['cap-back', 'armhole-back']],
  ),
  longer(
    'eased',
    'lining-underarm-front',
    side('lining-under-sleeve', 'cap-front'),
    side('lining-side-front', 'armhole-under'),
    liningShare,
  ),
  longer(
    'eased',
    'lining-underarm-back',
    side('lining-under-sleeve', 'cap-back'),
    side('lining-side-back', 'armhole-under', true),
    liningShare,
  ),
  longer(
    'stretched',
    'lining-sleeve-front',
    side('lining-sleeve', 'front-seam', true),
    side('lining-under-sleeve', 'front-seam', true),
    bendSeams.front,
    elbow('front'),
  ),
  longer(
    'eased',
    'lining-sleeve-back',
    side('lining-sleeve', 'back-seam'),
    side('lining-under-sleeve', 'back-seam'),
    bendSeams.back,
    elbow('back'),
  ),
];

/** Every seam of a view: shell, facings, collar or neck, lining. */
export const jacketSeams = (view: JacketView): readonly Seam[] => [
  ...shellSeams,
  ...facingSeams,
  ...(view === 'collar' ? collarSeams : neckSeams('neck', 'front', 'back')),
  ...liningSeams,
];

const panels = ['front', 'side-front', 'side-back', 'back'] as const;

export const jacketGirths: readonly Girth[] = [
  roundBody('bust', 'bustGirth', panels),
  roundBody('waist', 'waistGirth', panels),
  roundBody('hip', 'hipGirth', panels),
  roundLimb('upper-arm', 'upperArmGirth', ['sleeve', 'under-sleeve']),
];
