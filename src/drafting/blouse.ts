import type { Measures } from '../body/index.ts';
import { tolerance } from '../geometry/index.ts';
import {
  finishedGirths,
  type Garment,
  type Girth,
  type Pattern,
  type Seam,
  type SeamSide,
  walkAll,
} from '../pattern/index.ts';
import { bad, good, type Result } from '../units/index.ts';
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

/**
 * Whether the draft came out as stated: every seam walks, every girth is body + ease. Measures that contradict one
 * another can be drafted from step by step and still not make a garment.
 */
const cameOut = (garment: Garment, body: Measures, ease: EaseByLevel): boolean =>
  walkAll(garment).every(({ meets }) => meets) &&
  finishedGirths(garment).every(({ level, measure, finished }) => {
    const wanted = (body[measure] ?? finished) + (ease[level] ?? 0);
    return body[measure] === undefined || Math.abs(finished - wanted) <= tolerance.girth;
  });

/**
 * Drafts the blouse for one body. See `draftBodice` and `draftSleeve` for the construction, step by step.
 * Problems: `body.impossible`, `drafting.no-bust`, `drafting.levels-too-close`,
 * `drafting.bust-points-too-far-apart`, `drafting.bodice-cannot-fit`, `drafting.cap-cannot-fit`,
 * `drafting.measures-contradict`, and those of the ease asked for.
 */
export const draftBlouse = (body: Measures, options?: DraftOptions): Result<Garment> => {
  const draft = settled(body, options);
  if (!draft.ok) return draft;
  const garment = assemble(draft.value);
  return cameOut(garment, body, draft.value.plan.ease) ? good(garment) : bad('drafting.measures-contradict');
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
