import type { Girth, Seam, SeamSide } from '../pattern/index.ts';
import { flatHeadEase } from './raincoat-fit.ts';
import { liningPleat } from './raincoat-inside.ts';
import { longer, plain, roundBody, roundLimb, side } from './seams.ts';

/** Set in flat, before the side is sewn, in cloth that takes next to no ease. */
const capSeam = (id: string, a: SeamSide, b: SeamSide, notches: Seam['notches']): Seam =>
  longer('eased', id, a, b, [flatHeadEase.least, flatHeadEase.most], notches);

/** Sides, shoulders, armholes and sleeve seams: of the coat, and of its lining. */
const shellSeams = (prefix: '' | 'lining-'): readonly Seam[] => {
  const [front, back, sleeve] = [`${prefix}front`, `${prefix}back`, `${prefix}sleeve`];
  return [
    plain(`${prefix}shoulder`, side(back, 'shoulder'), side(front, 'shoulder')),
    plain(`${prefix}side`, side(front, 'side'), side(back, 'side'), [['waist', 'waist']]),
    capSeam(`${prefix}armhole-front`, side(sleeve, 'cap-front'), side(front, 'armhole', true), [
      ['cap-front', 'armhole-front'],
    ]),
    capSeam(`${prefix}armhole-back`, side(sleeve, 'cap-back'), side(back, 'armhole'), [['cap-back', 'armhole-back']]),
    plain(`${prefix}underarm`, side(sleeve, 'underarm-front', true), side(sleeve, 'underarm-back')),
  ];
};

const hoodSeams: readonly Seam[] = [
  plain('hood-top', side('hood-side', 'top'), side('hood-centre', 'top'), [
    ['crown', 'crown'],
    ['head-back', 'head-back'],
  ]),
  plain('hood-neck-front', side('hood-side', 'neck-front'), side('front', 'neck', true), [
    ['neck-front', 'neck-front'],
  ]),
  plain('hood-neck-back', side('hood-side', 'neck-back'), side('back', 'neck'), [['neck-back', 'neck-back']]),
  plain('hood-neck-centre', side('hood-centre', 'neck', true), side('back', 'neck-centre')),
];

const facingSeams: readonly Seam[] = [
  plain('facing-neck-front', side('front-facing', 'neck'), side('front', 'neck'), [['neck-front', 'neck-front']]),
  plain('facing-neck-back', side('back-facing', 'neck'), side('back', 'neck'), [['neck-back', 'neck-back']]),
  plain('facing-neck-centre', side('back-facing', 'neck-centre'), side('back', 'neck-centre')),
  plain('facing-shoulder', side('back-facing', 'shoulder'), side('front-facing', 'shoulder')),
  plain('facing-front', side('front-facing', 'centre-front'), side('front', 'centre-front'), [
    ['waist-centre', 'waist-centre'],
  ]),
];

const placketSeams: readonly Seam[] = [
  plain('placket', side('placket', 'attach'), side('front', 'centre-front'), [['waist-centre', 'waist-centre']]),
  plain('placket-under', side('placket', 'attach-under'), side('placket', 'attach', true)),
  plain('placket-top', side('placket', 'top'), side('placket', 'top-under', true)),
  plain('placket-bottom', side('placket', 'bottom'), side('placket', 'bottom-under', true)),
];

/** Both layers of a flap are the same piece, turned over: each edge is sewn to itself. */
const flapSeams: readonly Seam[] = ['side', 'bottom', 'side-front'].map((edge) =>
  plain(`flap-${edge}`, side('pocket-flap', edge), side('pocket-flap', edge)),
);

const liningSeams: readonly Seam[] = [
  ...shellSeams('lining-'),
  plain('lining-facing-front', side('lining-front', 'facing', true), side('front-facing', 'inner')),
  longer('pleated', 'lining-facing-back', side('lining-back', 'facing', true), side('back-facing', 'outer'), [
    liningPleat,
    liningPleat,
  ]),
  plain('hood-lining-side', side('hood-side', 'opening'), side('hood-side', 'opening')),
  plain('hood-lining-centre', side('hood-centre', 'opening'), side('hood-centre', 'opening')),
];

export const raincoatSeams = (isLined: boolean): readonly Seam[] => [
  ...shellSeams(''),
  ...hoodSeams,
  ...facingSeams,
  ...placketSeams,
  ...flapSeams,
  ...(isLined ? liningSeams : []),
];

export const raincoatGirths: readonly Girth[] = [
  roundBody('bust', 'bustGirth', ['front', 'back']),
  roundBody('hip', 'hipGirth', ['front', 'back']),
  roundLimb('upper-arm', 'upperArmGirth', ['sleeve']),
];
