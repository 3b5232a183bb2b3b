import type { Measures, Survey } from '../body/index.ts';
import { good, type Result } from '../units/index.ts';
import { type HouseWords, trousersMenWords, trousersWords } from '../words/index.ts';
import { menChart } from './chart-men.ts';
import { womenChart } from './chart-women.ts';
import { type Drafted, defineHousePattern } from './define.ts';
import { band, draftTrousers, elasticShare } from './trousers-pieces.ts';
import { planTrousers, type TrouserView } from './trousers-plan.ts';
import { trousersShape } from './trousers-shape.ts';
import { trousersSketch } from './trousers-sketch.ts';
import type { ChartSize, EaseByLevel, HousePattern } from './types.ts';

/**
 * Drafts the trousers for one body. See `draftLegs`, `settleLegs`, `draftCrotch` and `draftWaist` for the construction, step
 * by step. `after` says only after whom measures that were not taken are estimated.
 * Problems: `body.impossible`, `drafting.no-measure`, `drafting.legs-cannot-walk`, `drafting.waist-cannot-be-had`,
 * `drafting.measures-contradict`, and those of the ease asked for.
 */
const draft = (body: Measures, after: Survey, view: TrouserView, ease: EaseByLevel): Result<Drafted> => {
  const plan = planTrousers(body, after, view, ease);
  if (!plan.ok) return plan;
  const drafted = draftTrousers(plan.value);
  return drafted.ok ? good(drafted.value) : drafted;
};

const trousersFor = (
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
    kind: 'trousers',
    estimatedAfter: wearers,
    chart,
    draftedStature: stature,
    cloth: () => ({
      structure: 'woven',
      weight: [170, 300],
      stretch: 0,
      cloths: ['gabardine', 'twill', 'linen', 'wool suiting', 'chambray', 'needlecord'],
    }),
    notions: () => [
      { what: 'concealed-zip', along: [{ piece: 'front', edge: 'side-upper', times: 1 }], plus: band.width },
      {
        what: 'elastic',
        size: band.elastic,
        along: [
          { piece: 'back-waistband', edge: 'inner-left', times: 1, from: 'elastic-left' },
          { piece: 'back-waistband', edge: 'inner-right', times: 1, to: 'elastic-right' },
        ],
        share: elasticShare,
        plus: 30,
      },
      { what: 'interfacing' },
    ],
    draft: (body, view, ease) => draft(body, wearers, view as TrouserView, ease),
    shape: (view) => trousersShape(view as TrouserView),
    sketch: trousersSketch,
  });

/** The trousers through the women's chart. */
export const trousers = trousersFor('women', 'trousers', trousersWords, womenChart, 1680);

/** The same trousers through the men's chart. */
export const trousersMen = trousersFor('men', 'trousers-men', trousersMenWords, menChart, 1780);
