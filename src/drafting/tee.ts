import type { Measures, Survey } from '../body/index.ts';
import { tolerance } from '../geometry/index.ts';
import {
  edgeLength,
  finishedGirths,
  type Garment,
  type Girth,
  type Pattern,
  type Piece,
  type Seam,
  type SeamSide,
  walkAll,
} from '../pattern/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import { menChart } from './chart-men.ts';
import { womenChart } from './chart-women.ts';
import { settleTee, type TeeDraft } from './tee-fit.ts';
import { teeBack, teeBand, teeFront, teeSleevePiece } from './tee-pieces.ts';
import { band, planTee, stretchNeeded } from './tee-plan.ts';
import { knitHeadEase } from './tee-sleeve.ts';
import type { ChartSize, DraftOptions, EaseByLevel, HousePattern } from './types.ts';

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

/** Set in flat, before the side is sewn: both together stay within the 0–12 a knit takes. */
const capSeam = (id: string, a: SeamSide, b: SeamSide, notches: Seam['notches']): Seam => ({
  ...plain(id, a, b, notches),
  easeMin: knitHeadEase.least,
  easeMax: knitHeadEase.most,
  how: 'eased',
});

/** The band is shorter than the neck by a share of it, so the mm allowed follow from the drafted neck. */
const bandSeam = (half: 'front' | 'back', piece: Piece): Seam => {
  const neck = edgeLength(piece, 'neck');
  return {
    ...plain(`band-${half}`, side('neck-band', `neck-${half}`, half === 'front'), side(half, 'neck'), [
      [`band-${half}`, `neck-${half}`],
    ]),
    easeMin: (band.least - 1) * neck,
    easeMax: (band.most - 1) * neck,
    how: 'stretched',
  };
};

const seamsOf = (front: Piece, back: Piece): readonly Seam[] => [
  plain('shoulder', side('back', 'shoulder'), side('front', 'shoulder')),
  plain('side', side('front', 'side'), side('back', 'side'), [['waist', 'waist']]),
  capSeam('armhole-front', side('sleeve', 'cap-front'), side('front', 'armhole', true), [
    ['cap-front', 'armhole-front'],
  ]),
  capSeam('armhole-back', side('sleeve', 'cap-back'), side('back', 'armhole'), [['cap-back', 'armhole-back']]),
  plain('underarm', side('sleeve', 'underarm-front', true), side('sleeve', 'underarm-back')),
  plain('band-join', side('neck-band', 'centre-back'), side('neck-band', 'centre-back')),
  plain('band-fold-front', side('neck-band', 'inner-front'), side('neck-band', 'neck-front', true)),
  plain('band-fold-back', side('neck-band', 'inner-back'), side('neck-band', 'neck-back', true)),
  bandSeam('front', front),
  bandSeam('back', back),
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

const assemble = ({ plan, body, sleeve }: TeeDraft): Garment => {
  const front = teeFront(plan, body);
  const back = teeBack(plan, body);
  return {
    pieces: [front, back, teeSleevePiece(sleeve, body), teeBand(body)],
    seams: seamsOf(front, back),
    girths,
  };
};

const settled = (body: Measures, survey: Survey, options?: DraftOptions): Result<TeeDraft> => {
  const plan = planTee(body, survey, options);
  return plan.ok ? settleTee(plan.value) : plan;
};

/** Whether the draft came out as stated: every seam walks, every girth is body + ease. */
const cameOut = (garment: Garment, body: Measures, ease: EaseByLevel): boolean =>
  walkAll(garment).every(({ meets }) => meets) &&
  finishedGirths(garment).every(({ level, measure, finished }) => {
    const round = body[measure];
    return round === undefined || Math.abs(finished - round - (ease[level] ?? 0)) <= tolerance.girth;
  });

/**
 * Drafts the knit tee for one body. See `draftTeeBody` and `draftTeeSleeve` for the construction, step by step.
 * `survey` says only after whom measures that were not taken are estimated.
 * Problems: `body.impossible`, `drafting.no-bust`, `drafting.levels-too-close`, `drafting.head-cannot-pass`,
 * `drafting.bodice-cannot-fit`, `drafting.cap-cannot-fit`, `drafting.measures-contradict`, and those of the ease asked for.
 */
export const draftTee = (body: Measures, survey: Survey, options?: DraftOptions): Result<Garment> => {
  const draft = settled(body, survey, options);
  if (!draft.ok) return draft;
  const garment = assemble(draft.value);
  return cameOut(garment, body, draft.value.plan.ease) ? good(garment) : bad('drafting.measures-contradict');
};

const about =
  'A knit tee to the hip, semi-fitted: round neck with a narrow band, short set-in sleeve, no darts. The side is drawn in as far as the body is.';

const teeFor = (
  wearers: Survey,
  id: string,
  name: string,
  chart: readonly ChartSize[],
  stature: number,
): HousePattern => {
  const draft = (body: Measures, options?: DraftOptions): Result<Garment> => draftTee(body, wearers, options);
  return {
    id,
    name,
    about,
    for: wearers,
    chart,
    ease: (body, options) => {
      const settledOn = settled(body, wearers, options);
      return settledOn.ok ? good(settledOn.value.plan.ease) : settledOn;
    },
    draft,
    pattern: (): Pattern => ({
      format: 'easewright-pattern/1',
      id,
      name,
      about,
      for: wearers,
      kind: 'top',
      draftedStature: stature,
      cloth: {
        structure: 'knit',
        weight: [140, 220],
        stretch: stretchNeeded,
        cloths: ['single jersey', 'interlock', 'fine rib', 'viscose jersey'],
      },
      notions: ['stay tape for the shoulders 300 mm'],
      sizes: chart.map((size) => {
        const garment = draft(size.body);
        if (!garment.ok) throw new Error(`Size ${size.id} of the ${id} cannot be drafted: ${garment.problem.code}`);
        return { id: size.id, body: size.body, garment: garment.value };
      }),
    }),
  };
};

/** The tee through the women's chart. */
export const tee = teeFor('women', 'tee', 'Tee', womenChart, 1680);

/** The same tee through the men's chart. */
export const teeMen = teeFor('men', 'tee-men', 'Tee, men’s sizes', menChart, 1780);
