import type { Measures, Survey } from '../body/index.ts';
import { edgeLength, type Garment, type Girth, type Piece, type Seam, type SeamSide } from '../pattern/index.ts';
import { good, type Result } from '../units/index.ts';
import { type HouseWords, teeMenWords, teeWords } from '../words/index.ts';
import { menChart } from './chart-men.ts';
import { womenChart } from './chart-women.ts';
import { type Drafted, defineHousePattern } from './define.ts';
import { longer, plain, roundBody, roundLimb, side } from './seams.ts';
import { bandShape, type FlatSketch, hangSleeve, pieceShape, sleeveHem, stitchedAlong } from './sketch.ts';
import { settleTee, type TeeDraft } from './tee-fit.ts';
import { teeBack, teeBand, teeFront, teeSleevePiece } from './tee-pieces.ts';
import { band, planTee, stretchNeeded } from './tee-plan.ts';
import { teeShape } from './tee-shape.ts';
import { knitHeadEase } from './tee-sleeve.ts';
import type { ChartSize, EaseByLevel, HousePattern } from './types.ts';

/** Set in flat, before the side is sewn: both together stay within the 0–12 a knit takes. */
const capSeam = (id: string, a: SeamSide, b: SeamSide, notches: Seam['notches']): Seam =>
  longer('eased', id, a, b, [knitHeadEase.least, knitHeadEase.most], notches);

/** The band is shorter than the neck by a share of it, so the mm allowed follow from the drafted neck. */
const bandSeam = (half: 'front' | 'back', piece: Piece): Seam => {
  const neck = edgeLength(piece, 'neck');
  return longer(
    'stretched',
    `band-${half}`,
    side('neck-band', `neck-${half}`, half === 'front'),
    side(half, 'neck'),
    [(band.least - 1) * neck, (band.most - 1) * neck],
    [[`band-${half}`, `neck-${half}`]],
  );
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

const girths: readonly Girth[] = [
  roundBody('bust', 'bustGirth', ['front', 'back']),
  roundBody('waist', 'waistGirth', ['front', 'back']),
  roundBody('hip', 'hipGirth', ['front', 'back']),
  roundLimb('upper-arm', 'upperArmGirth', ['sleeve']),
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

/**
 * Drafts the knit tee for one body. See `draftTeeBody` and `draftTeeSleeve` for the construction, step by step.
 * `survey` says only after whom measures that were not taken are estimated.
 * Problems: `body.impossible`, `drafting.no-measure`, `drafting.levels-too-close`, `drafting.head-cannot-pass`,
 * `drafting.bodice-cannot-fit`, `drafting.cap-cannot-fit`, `drafting.measures-contradict`, and those of the ease asked for.
 */
const draftTee = (body: Measures, survey: Survey, ease: EaseByLevel): Result<Drafted> => {
  const plan = planTee(body, survey, { ease });
  if (!plan.ok) return plan;
  const draft = settleTee(plan.value);
  return draft.ok ? good({ garment: assemble(draft.value), ease: draft.value.plan.ease }) : draft;
};

/** How far hems are turned up, as they are seen stitched, mm; a short sleeve's as a share of its length. */
const hemsSeen = { body: 20, sleeve: 0.08 } as const;

const teeSketch = (garment: Garment): FlatSketch => {
  const face = (half: 'front' | 'back') => [
    hangSleeve(garment, half, { lines: (at) => [sleeveHem(at, hemsSeen.sleeve)] }),
    pieceShape(garment, half, { lines: [stitchedAlong(garment, half, 'hem', hemsSeen.body)] }),
    bandShape(garment, half, 'neck', band.width),
  ];
  return {
    front: [{ ...bandShape(garment, 'back', 'neck', band.width), inside: true }, ...face('front')],
    back: face('back'),
  };
};

const teeFor = (
  wearers: Survey,
  id: string,
  words: HouseWords,
  chart: readonly ChartSize[],
  stature: number,
): HousePattern =>
  defineHousePattern({
    id,
    words,
    for: wearers,
    kind: 'top',
    estimatedAfter: wearers,
    chart,
    draftedStature: stature,
    cloth: () => ({
      structure: 'knit',
      weight: [140, 220],
      stretch: stretchNeeded,
      cloths: ['single jersey', 'interlock', 'fine rib', 'viscose jersey'],
    }),
    notions: () => [{ what: 'stay-tape', along: [{ piece: 'front', edge: 'shoulder', times: 2 }], plus: 40 }],
    draft: (body, _view, ease) => draftTee(body, wearers, ease),
    shape: () => teeShape,
    sketch: teeSketch,
  });

/** The tee through the women's chart. */
export const tee = teeFor('women', 'tee', teeWords, womenChart, 1680);

/** The same tee through the men's chart. */
export const teeMen = teeFor('men', 'tee-men', teeMenWords, menChart, 1780);
