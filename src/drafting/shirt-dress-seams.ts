import { edgeLength, type Garment, type Girth, pieceOf, type Seam } from '../pattern/index.ts';
import { longer, plain, roundBody, roundLimb, side } from './seams.ts';
import { type ShirtDressView, shirtDress } from './shirt-dress-plan.ts';

/** Ease of each of the cap's three parts, mm: all three within the 0–20 that crisp cotton takes. */
const capEase: readonly [number, number] = [0, 7];

/** How full a gathered edge may be for what it is sewn to, as a share over it. */
export const gathers = {
  /** Bodice on waistband: drawn in softly. */
  bodice: [0.01, 0.6],
  skirt: [0.15, 1],
  tier: [0.4, 0.6],
} as const;

type Half = 'front' | 'back';

/** A gathered seam whose allowed mm follow from the plain edge's length; `more` is pleated away beside. */
const gathered = (
  garment: Pick<Garment, 'pieces'>,
  id: string,
  [piece, edge]: readonly [string, string],
  [onPiece, onEdge, reversed]: readonly [string, string, boolean?],
  [least, most]: readonly [number, number],
  notches: Seam['notches'],
  more = 0,
): Seam => {
  const length = edgeLength(pieceOf(garment as Garment, onPiece), onEdge);
  return longer(
    'gathered',
    id,
    side(piece, edge),
    side(onPiece, onEdge, reversed ?? false),
    [least * length + more, most * length + more],
    notches,
  );
};

const quarterNotches = (a: string, b: string): Seam['notches'] => [1, 2, 3].map((i) => [`${a}-${i}`, `${b}-${i}`]);

const bodiceSeams: readonly Seam[] = [
  plain('yoke-front', side('yoke', 'front'), side('front', 'shoulder')),
  longer(
    'pleated',
    'yoke-back',
    side('back', 'yoke'),
    side('yoke', 'back', true),
    [2 * shirtDress.pleat, 2 * shirtDress.pleat],
    [['pleat-face', 'pleat']],
  ),
  plain('side', side('front', 'side'), side('back', 'side')),
  longer('eased', 'armhole-front', side('sleeve', 'cap-front'), side('front', 'armhole', true), capEase, [
    ['cap-front', 'armhole-front'],
  ]),
  longer('eased', 'armhole-yoke', side('sleeve', 'cap-yoke'), side('yoke', 'armhole'), capEase, [
    ['shoulder', 'shoulder'],
  ]),
  longer('eased', 'armhole-back', side('sleeve', 'cap-back'), side('back', 'armhole'), capEase, [
    ['cap-back', 'armhole-back'],
  ]),
  plain('underarm', side('sleeve', 'underarm-front', true), side('sleeve', 'underarm-back')),
];

const collarSeams = (collar: boolean): readonly Seam[] => [
  plain('collar-back', side('collar-stand', 'neck-back', true), side('yoke', 'neck'), [['neck-back', 'neck-back']]),
  plain('collar-front', side('collar-stand', 'neck-front', true), side('front', 'neck', true), [
    ['neck-front', 'neck-front'],
  ]),
  plain('collar-stand', side('collar-stand', 'neck-stand'), side('button-stand', 'neck'), [
    ['centre-front', 'centre-front'],
  ]),
  plain('stand-end', side('collar-stand', 'end'), side('collar-stand', 'end')),
  plain('stand-top-front', side('collar-stand', 'top-front'), side('collar-stand', 'top-front')),
  ...(collar
    ? [
        plain('collar', side('collar', 'neck', true), side('collar-stand', 'top'), [
          ['collar-middle', 'collar-middle'],
        ]),
        plain('collar-outer', side('collar', 'outer'), side('collar', 'outer')),
        plain('collar-points', side('collar', 'front'), side('collar', 'front')),
      ]
    : [plain('stand-top', side('collar-stand', 'top'), side('collar-stand', 'top'))]),
];

/** What two pleats take up at the wrist, mm. */
const pleatsTake: readonly [number, number] = [38, 112];

const cuffSeams: readonly Seam[] = [
  longer('pleated', 'cuff', side('sleeve', 'wrist', true), side('cuff', 'wrist'), pleatsTake),
  plain('cuff-fold', side('cuff', 'wrist-inside', true), side('cuff', 'wrist')),
  plain('cuff-lap', side('cuff', 'lap-inside', true), side('cuff', 'lap')),
  plain('cuff-end', side('cuff', 'end-inside', true), side('cuff', 'end')),
  plain('cuff-lap-end', side('cuff', 'end-lap-inside', true), side('cuff', 'end-lap')),
  plain('slit-fold', side('slit-binding', 'slit-inside', true), side('slit-binding', 'slit')),
];

const skirtSeams = (garment: Pick<Garment, 'pieces'>, tier: boolean): readonly Seam[] => [
  plain('waist-side', side('waist-front', 'side'), side('waist-back', 'side')),
  plain('skirt-side-above', side('skirt-front', 'side-above'), side('skirt-back', 'side-above')),
  plain('skirt-side', side('skirt-front', 'side'), side('skirt-back', 'side')),
  ...(['front', 'back'] as const).map((half) =>
    plain(`pocket-${half}`, side('pocket', 'mouth'), side(`skirt-${half}`, 'pocket'), [
      ['mouth-top', 'mouth-top'],
      ['mouth-end', 'mouth-end'],
    ]),
  ),
  plain('pocket-top', side('pocket', 'top'), side('pocket', 'top')),
  plain('pocket-bag', side('pocket', 'bag'), side('pocket', 'bag')),
  ...(['front', 'back'] as const).flatMap((half: Half): readonly Seam[] => [
    gathered(
      garment,
      `waist-${half}`,
      [half, 'waist'],
      [`waist-${half}`, 'top', true],
      gathers.bodice,
      half === 'front' ? [[`waist-front`, 'top-middle']] : [],
      half === 'back' ? 2 * shirtDress.pleat : 0,
    ),
    gathered(
      garment,
      `skirt-${half}`,
      [`skirt-${half}`, 'waist'],
      [`waist-${half}`, 'bottom', true],
      gathers.skirt,
      quarterNotches('waist', 'bottom').map(([a], i) => [a, `bottom-${3 - i}`] as const),
    ),
    ...(tier
      ? [
          gathered(
            garment,
            `tier-${half}`,
            [`tier-${half}`, 'top'],
            [`skirt-${half}`, 'tier', true],
            gathers.tier,
            quarterNotches('top', 'tier').map(([a], i) => [a, `tier-${3 - i}`] as const),
          ),
        ]
      : []),
  ]),
  ...(tier ? [plain('tier-side', side('tier-front', 'side'), side('tier-back', 'side'))] : []),
];

/** The button stand: each front edge to it, and its inner half to its outer. */
const standSeams = (tier: boolean): readonly Seam[] => {
  const joined = ['front', 'waist', 'skirt', ...(tier ? ['tier'] : [])];
  return [
    ...joined.flatMap((id) => [
      plain(`stand-${id}`, side(id === 'front' ? id : `${id}-front`, 'stand', true), side('button-stand', id)),
      plain(`stand-fold-${id}`, side('button-stand', `${id}-inside`, true), side('button-stand', id)),
    ]),
    plain('stand-fold-neck', side('button-stand', 'neck-inside', true), side('button-stand', 'neck')),
    plain('stand-hem', side('button-stand', 'hem-inside', true), side('button-stand', 'hem')),
  ];
};

export const shirtDressSeams = (pieces: Garment['pieces'], view: ShirtDressView): readonly Seam[] => [
  ...bodiceSeams,
  ...collarSeams(view.collar),
  ...(view.sleeve === 'long' ? cuffSeams : []),
  ...skirtSeams({ pieces }, view.tier),
  ...standSeams(view.tier),
];

export const shirtDressGirths: readonly Girth[] = [
  roundBody('bust', 'bustGirth', ['front', 'back', 'button-stand']),
  roundBody('waist', 'waistGirth', ['waist-front', 'waist-back', 'button-stand']),
  roundBody('hip', 'hipGirth', ['skirt-front', 'skirt-back', 'button-stand']),
  roundLimb('upper-arm', 'upperArmGirth', ['sleeve']),
];
