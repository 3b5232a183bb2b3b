import type { Measures, Survey } from '../body/index.ts';
import type { Garment, Girth, NotionRule, Seam } from '../pattern/index.ts';
import { good, type Result } from '../units/index.ts';
import { type HouseWords, sweatshirtMenWords, sweatshirtWords } from '../words/index.ts';
import { menChart } from './chart-men.ts';
import { womenChart } from './chart-women.ts';
import { type Drafted, defineHousePattern } from './define.ts';
import { type KangarooFrame, kangarooLines, kangarooPocket } from './kangaroo-pocket.ts';
import { bandJoins, knitBand } from './knit-bands.ts';
import { plain, roundBody, roundLimb, side } from './seams.ts';
import { sweatBandSeams, sweatBands } from './sweatshirt-bands.ts';
import { type SweatshirtDraft, settleSweatshirt } from './sweatshirt-fit.ts';
import { sweatBody, sweatSleeve } from './sweatshirt-pieces.ts';
import { planSweatshirt, type SweatshirtView, sweatStretch } from './sweatshirt-plan.ts';
import { sweatshirtShape } from './sweatshirt-shape.ts';
import { sweatshirtSketch } from './sweatshirt-sketch.ts';
import type { ChartSize, EaseByLevel, HousePattern } from './types.ts';

const joins: readonly Seam[] = [
  plain('side', side('front', 'side'), side('back', 'side'), [['waist', 'waist']]),
  plain('raglan-front', side('sleeve', 'raglan-front'), side('front', 'raglan', true), [
    ['raglan-front', 'raglan-front'],
  ]),
  plain('raglan-back', side('sleeve', 'raglan-back'), side('back', 'raglan'), [['raglan-back', 'raglan-back']]),
  plain('underarm', side('sleeve', 'underarm-front', true), side('sleeve', 'underarm-back')),
];

const girths: readonly Girth[] = [
  roundBody('bust', 'bustGirth', ['front', 'back']),
  roundBody('waist', 'waistGirth', ['front', 'back']),
  roundBody('hip', 'hipGirth', ['front', 'back']),
  roundLimb('upper-arm', 'upperArmGirth', ['sleeve']),
];

/** The pocket's foot lies this much above the hem's band, mm, and its side this much inside the side seam. */
const pocketClear = { hem: 14, side: 45 } as const;

const pocketOf = ({ plan }: SweatshirtDraft): KangarooFrame => ({
  hand: plan.hand,
  room: Math.min(plan.block.waistQuarter, plan.block.hipQuarter) - pocketClear.side,
  bottom: plan.block.hemLevel - pocketClear.hem,
});

const assemble = (draft: SweatshirtDraft, view: SweatshirtView): Garment => {
  const bands = sweatBands(draft, view);
  const pocketed = view === 'pocket';
  return {
    pieces: [
      sweatBody(draft, 'front', pocketed ? kangarooLines(pocketOf(draft)) : []),
      sweatBody(draft, 'back'),
      sweatSleeve(draft, view),
      ...bands.map(knitBand),
      ...(pocketed ? [kangarooPocket(pocketOf(draft))] : []),
    ],
    seams: [...joins, ...bands.flatMap(bandJoins), ...sweatBandSeams(draft, view)],
    girths,
  };
};

/**
 * Drafts the raglan sweatshirt for one body. See `draftTeeBody` for the block, `draftRaglan` and `draftRaglanSleeve` for
 * what becomes of it. `survey` says only after whom measures that were not taken are estimated.
 * Problems: those of the tee's block, `drafting.raglan-cannot-fit`, and those of the ease asked for.
 */
const draftSweatshirt = (body: Measures, survey: Survey, view: SweatshirtView, ease: EaseByLevel): Result<Drafted> => {
  const plan = planSweatshirt(body, survey, view, ease);
  if (!plan.ok) return plan;
  const draft = settleSweatshirt(plan.value);
  return draft.ok ? good({ garment: assemble(draft.value, view), ease: draft.value.plan.ease }) : draft;
};

/** Stay tape in the upper half of both back raglan seams, which carry the weight of the cloth. */
const notions: readonly NotionRule[] = [
  { what: 'stay-tape', along: [{ piece: 'back', edge: 'raglan', times: 2 }], share: 0.5, plus: 40 },
];

const sweatshirtFor = (
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
      weight: [220, 340],
      stretch: sweatStretch,
      cloths: ['sweatshirt fleece', 'loopback', 'interlock', 'double jersey'],
    }),
    notions: () => notions,
    draft: (body, view, ease) => draftSweatshirt(body, wearers, view as SweatshirtView, ease),
    shape: (view) => sweatshirtShape(view as SweatshirtView),
    sketch: (garment, view) => sweatshirtSketch(garment, view as SweatshirtView),
  });

/** The sweatshirt through the women's chart. */
export const sweatshirt = sweatshirtFor('women', 'sweatshirt', sweatshirtWords, womenChart, 1680);

/** The same sweatshirt through the men's chart. */
export const sweatshirtMen = sweatshirtFor('men', 'sweatshirt-men', sweatshirtMenWords, menChart, 1780);
