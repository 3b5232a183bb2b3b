import type { Measures } from '../body/index.ts';
import type { Garment, Girth, Seam, SeamSide } from '../pattern/index.ts';
import { good, type Result } from '../units/index.ts';
import { blouseWords } from '../words/index.ts';
import { backPiece, frontPiece } from './blouse-body-pieces.ts';
import { type BlouseDraft, settleBlouse } from './blouse-fit.ts';
import { planBlouse } from './blouse-plan.ts';
import { blouseShape } from './blouse-shape.ts';
import { headEase } from './blouse-sleeve.ts';
import { backFacing, frontFacing, sleevePiece } from './blouse-small-pieces.ts';
import { womenChart } from './chart-women.ts';
import { type Drafted, defineHousePattern } from './define.ts';
import { longer, plain, roundBody, roundLimb, side } from './seams.ts';
import { type FlatSketch, hangSleeve, pieceShape, sleeveHem, stitchedAlong } from './sketch.ts';
import type { EaseByLevel, HousePattern } from './types.ts';

/** Ease around the cap may move by this between front and back while the whole stays within 15–35. */
const capSeam = (id: string, a: SeamSide, b: SeamSide, ease: number, notches: Seam['notches']): Seam =>
  longer('eased', id, a, b, [ease - 4, ease + 5], notches);

const seams: readonly Seam[] = [
  longer('eased', 'shoulder', side('back', 'shoulder'), side('front', 'shoulder'), [0, 6]),
  plain('side', side('front', 'side'), side('back', 'side'), [
    ['waist', 'waist'],
    ['hem', 'hem'],
  ]),
  plain('centre-back', side('back', 'centre-back'), side('back', 'centre-back'), [
    ['zip-end', 'zip-end'],
    ['waist-centre', 'waist-centre'],
    ['hem-centre', 'hem-centre'],
  ]),
  capSeam('armhole-front', side('sleeve', 'cap-front'), side('front', 'armhole', true), headEase.front, [
    ['cap-front', 'armhole-front'],
  ]),
  capSeam('armhole-back', side('sleeve', 'cap-back'), side('back', 'armhole'), headEase.back, [
    ['cap-back', 'armhole-back'],
  ]),
  plain('underarm', side('sleeve', 'underarm-front', true), side('sleeve', 'underarm-back'), [
    ['elbow-front', 'elbow-back'],
    ['hem-front', 'hem-back'],
  ]),
  plain('neck-front', side('front-facing', 'neck'), side('front', 'neck'), [['neck-front', 'neck-front']]),
  plain('neck-back', side('back-facing', 'neck'), side('back', 'neck'), [['neck-back', 'neck-back']]),
  plain('facing-shoulder', side('back-facing', 'shoulder'), side('front-facing', 'shoulder')),
];

const girths: readonly Girth[] = [
  roundBody('bust', 'bustGirth', ['front', 'back']),
  roundBody('waist', 'waistGirth', ['front', 'back']),
  roundBody('hip', 'hipGirth', ['front', 'back']),
  roundLimb('upper-arm', 'upperArmGirth', ['sleeve']),
];

const assemble = ({ plan, bodice, sleeve }: BlouseDraft): Garment => ({
  pieces: [
    frontPiece(plan, bodice.front),
    backPiece(plan, bodice.back, bodice.front),
    sleevePiece(sleeve, bodice.front, bodice.back),
    frontFacing(bodice.front, bodice.back),
    backFacing(bodice.back),
  ],
  seams,
  girths,
});

/**
 * Drafts the blouse for one body. See `draftBodice` and `draftSleeve` for the construction, step by step.
 * Problems: `body.impossible`, `drafting.no-measure`, `drafting.levels-too-close`,
 * `drafting.bust-points-too-far-apart`, `drafting.bodice-cannot-fit`, `drafting.cap-cannot-fit`,
 * `drafting.measures-contradict`, and those of the ease asked for.
 */
const draftBlouse = (body: Measures, ease: EaseByLevel): Result<Drafted> => {
  const plan = planBlouse(body, { ease });
  if (!plan.ok) return plan;
  const draft = settleBlouse(plan.value);
  return draft.ok ? good({ garment: assemble(draft.value), ease: draft.value.plan.ease }) : draft;
};

/** How far hems are turned up, as they are seen stitched, mm; the sleeve's as a share of its length. */
const hemsSeen = { body: 25, sleeve: 0.035 } as const;

const blouseSketch = (garment: Garment): FlatSketch => {
  const face = (half: 'front' | 'back') => [
    hangSleeve(garment, half, { lines: (at) => [sleeveHem(at, hemsSeen.sleeve)] }),
    pieceShape(garment, half, { lines: [stitchedAlong(garment, half, 'hem', hemsSeen.body)] }),
  ];
  return { front: [pieceShape(garment, 'back', { inside: true }), ...face('front')], back: face('back') };
};

export const blouse: HousePattern = defineHousePattern({
  id: 'blouse',
  words: blouseWords,
  for: 'women',
  kind: 'top',
  estimatedAfter: 'women',
  chart: womenChart,
  cups: [20, 50, 80, 110],
  draftedStature: 1680,
  cloth: () => ({
    structure: 'woven',
    weight: [80, 180],
    stretch: 0,
    cloths: ['poplin', 'lawn', 'chambray', 'viscose', 'crepe', 'fine linen', 'silk'],
  }),
  notions: () => [
    { what: 'concealed-zip', along: [{ piece: 'back', edge: 'centre-back', times: 1, from: 'zip-end' }] },
    { what: 'interfacing' },
  ],
  draft: (body, _view, ease) => draftBlouse(body, ease),
  shape: () => blouseShape,
  sketch: blouseSketch,
});
