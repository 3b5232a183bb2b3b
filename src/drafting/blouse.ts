import type { Measures } from '../body/index.ts';
import type { Garment, Girth, Pattern, Seam, SeamSide } from '../pattern/index.ts';
import { good, type Result } from '../units/index.ts';
import { backPiece, frontPiece } from './blouse-body-pieces.ts';
import { type BlouseDraft, settleBlouse } from './blouse-fit.ts';
import { planBlouse } from './blouse-plan.ts';
import { headEase } from './blouse-sleeve.ts';
import { backFacing, frontFacing, sleevePiece } from './blouse-small-pieces.ts';
import { womenChart } from './chart-women.ts';
import type { DraftOptions, EaseByLevel, HousePattern } from './types.ts';

const side = (piece: string, edge: string, reversed = false): SeamSide => ({ piece, edge, reversed });

const plain = (id: string, a: SeamSide, b: SeamSide, notches: Seam['notches'] = []): Seam => ({
  id,
  a,
  b,
  easeMin: 0,
  easeMax: 0,
  how: 'plain',
  notches,
});

/** Ease around the cap may move by this between front and back while the whole stays within 15–35. */
const capSeam = (id: string, a: SeamSide, b: SeamSide, ease: number, notches: Seam['notches']): Seam => ({
  id,
  a,
  b,
  easeMin: ease - 4,
  easeMax: ease + 5,
  how: 'eased',
  notches,
});

const seams: readonly Seam[] = [
  {
    ...plain('shoulder', side('back', 'shoulder'), side('front', 'shoulder')),
    easeMin: 0,
    easeMax: 6,
    how: 'eased',
  },
  plain('side', side('front', 'side'), side('back', 'side'), [['waist', 'waist']]),
  plain('centre-back', side('back', 'centre-back'), side('back', 'centre-back'), [
    ['zip-end', 'zip-end'],
    ['waist-centre', 'waist-centre'],
  ]),
  capSeam('armhole-front', side('sleeve', 'cap-front'), side('front', 'armhole', true), headEase.front, [
    ['cap-front', 'armhole-front'],
  ]),
  capSeam('armhole-back', side('sleeve', 'cap-back'), side('back', 'armhole'), headEase.back, [
    ['cap-back', 'armhole-back'],
  ]),
  plain('underarm', side('sleeve', 'underarm-front', true), side('sleeve', 'underarm-back'), [
    ['elbow-front', 'elbow-back'],
  ]),
  plain('neck-front', side('front-facing', 'neck'), side('front', 'neck'), [['neck-front', 'neck-front']]),
  plain('neck-back', side('back-facing', 'neck'), side('back', 'neck'), [['neck-back', 'neck-back']]),
  plain('facing-shoulder', side('back-facing', 'shoulder'), side('front-facing', 'shoulder')),
];

const roundBody = (level: string, measure: Girth['measure']): Girth => ({
  level,
  measure,
  around: 'body',
  pieces: [
    { piece: 'front', factor: 2 },
    { piece: 'back', factor: 2 },
  ],
});

const girths: readonly Girth[] = [
  roundBody('bust', 'bustGirth'),
  roundBody('waist', 'waistGirth'),
  roundBody('hip', 'hipGirth'),
  { level: 'upper-arm', measure: 'upperArmGirth', around: 'limb', pieces: [{ piece: 'sleeve', factor: 1 }] },
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

const settled = (body: Measures, options?: DraftOptions): Result<BlouseDraft> => {
  const plan = planBlouse(body, options);
  return plan.ok ? settleBlouse(plan.value) : plan;
};

/** Drafts the blouse for one body. See `draftBodice` and `draftSleeve` for the construction, step by step. */
export const draftBlouse = (body: Measures, options?: DraftOptions): Result<Garment> => {
  const draft = settled(body, options);
  return draft.ok ? good(assemble(draft.value)) : draft;
};

const blouseEase = (body: Measures, options?: DraftOptions): Result<EaseByLevel> => {
  const draft = settled(body, options);
  return draft.ok ? good(draft.value.plan.ease) : draft;
};

const about =
  'A woven blouse to the hip: round neck with facings, side bust dart, back shoulder dart, centre-back zip, long set-in sleeve. Semi-fitted by its side seams.';

const blousePattern = (): Pattern => ({
  format: 'easewright-pattern/1',
  id: 'blouse',
  name: 'Blouse',
  about,
  for: 'women',
  kind: 'top',
  draftedCup: 50,
  draftedStature: 1680,
  cloth: {
    structure: 'woven',
    weight: [80, 180],
    stretch: 0,
    cloths: ['poplin', 'lawn', 'chambray', 'viscose', 'crepe', 'fine linen', 'silk'],
  },
  notions: ['concealed zip 550 mm', 'interfacing, light'],
  sizes: womenChart.map(({ id, body }) => {
    const garment = draftBlouse(body);
    if (!garment.ok) throw new Error(`Size ${id} of the blouse cannot be drafted: ${garment.problem.code}`);
    return { id, body, garment: garment.value };
  }),
});

export const blouse: HousePattern = {
  id: 'blouse',
  name: 'Blouse',
  about,
  for: 'women',
  chart: womenChart,
  ease: blouseEase,
  draft: draftBlouse,
  pattern: blousePattern,
};
