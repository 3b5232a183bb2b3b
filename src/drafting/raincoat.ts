import type { Measures } from '../body/index.ts';
import type { Garment, NotionRule, Piece } from '../pattern/index.ts';
import { good, type Result } from '../units/index.ts';
import { raincoatWords } from '../words/index.ts';
import { childrenChart } from './chart-children.ts';
import { type Drafted, defineHousePattern } from './define.ts';
import { type RaincoatDraft, settleRaincoat } from './raincoat-fit.ts';
import { hoodCentre, hoodSide } from './raincoat-hood-pieces.ts';
import { backFacing, frontFacing, liningBack, liningFront, liningSleeve } from './raincoat-inside.ts';
import { raincoatBack, raincoatFront, raincoatPlacket, raincoatSleeve, studsApart } from './raincoat-pieces.ts';
import { planRaincoat } from './raincoat-plan.ts';
import { raincoatFlap, raincoatPocket } from './raincoat-pocket.ts';
import { raincoatGirths, raincoatSeams } from './raincoat-seams.ts';
import { raincoatShape } from './raincoat-shape.ts';
import { raincoatSketch } from './raincoat-sketch.ts';
import type { EaseByLevel, HousePattern } from './types.ts';

const lined = (view: string): boolean => view === 'lined';

const piecesOf = (draft: RaincoatDraft, isLined: boolean): readonly Piece[] => [
  raincoatFront(draft),
  raincoatBack(draft),
  raincoatSleeve(draft.sleeve, draft.body),
  hoodSide(draft.hood, isLined),
  hoodCentre(draft.hood, isLined),
  frontFacing(draft),
  backFacing(draft),
  raincoatPlacket(draft),
  raincoatPocket(draft.plan, draft.body),
  raincoatFlap(draft.plan, draft.body),
  ...(isLined ? [liningFront(draft), liningBack(draft), liningSleeve(draft)] : []),
];

/**
 * Drafts the raincoat for one child. See `planRaincoat`, `draftRaincoatBody` and `draftHood` for the construction.
 * Problems: `body.impossible`, `body.not-a-childs-stature`, `drafting.no-measure`, `drafting.levels-too-close`,
 * `drafting.arm-too-short`, `drafting.cap-cannot-fit`, `drafting.hood-cannot-fit`, `drafting.measures-contradict`, and those of the ease asked for.
 */
const draftRaincoat = (body: Measures, view: string, ease: EaseByLevel): Result<Drafted> => {
  const plan = planRaincoat(body, ease);
  if (!plan.ok) return plan;
  const draft = settleRaincoat(plan.value);
  if (!draft.ok) return draft;
  const garment: Garment = {
    pieces: piecesOf(draft.value, lined(view)),
    seams: raincoatSeams(lined(view)),
    girths: raincoatGirths,
  };
  return good({ garment, ease: draft.value.plan.ease });
};

const notionsFor = (view: string): readonly NotionRule[] => [
  // It ends a little above the hem, so that the hem can be turned and the slider put on below nothing.
  { what: 'open-ended-zip', along: [{ piece: 'front', edge: 'centre-front', times: 1 }], plus: -25 },
  // One at each end of the placket's row and one on each flap.
  {
    what: 'press-stud',
    along: [{ piece: 'placket', edge: 'attach', times: 1 }],
    every: studsApart,
    count: 2,
    size: 12,
  },
  {
    what: 'elastic',
    along: [{ piece: 'hood-side', edge: 'opening', times: 2, from: 'elastic-start', to: 'elastic-end' }],
    share: 0.82,
    plus: 30,
    size: 8,
  },
  { what: 'interfacing' },
  ...(lined(view)
    ? []
    : [
        {
          what: 'bias-binding' as const,
          size: 20,
          along: [
            { piece: 'front', edge: 'shoulder', times: 2 },
            { piece: 'front', edge: 'side', times: 2 },
            { piece: 'front', edge: 'armhole', times: 2 },
            { piece: 'back', edge: 'armhole', times: 2 },
            { piece: 'sleeve', edge: 'underarm-front', times: 2 },
            { piece: 'hood-side', edge: 'top', times: 2 },
            { piece: 'front-facing', edge: 'inner', times: 2 },
            { piece: 'back-facing', edge: 'outer', times: 2 },
          ],
          plus: 200,
          step: 100,
        },
      ]),
];

/** The child's raincoat. */
export const raincoat: HousePattern = defineHousePattern({
  id: 'raincoat',
  words: raincoatWords,
  for: 'child',
  kind: 'coat',
  estimatedAfter: 'children',
  chart: childrenChart,
  draftedStature: 1160,
  cloth: () => ({
    structure: 'woven',
    weight: [120, 260],
    stretch: 0,
    cloths: ['coated cotton', 'waxed cotton', 'oilcloth', 'coated polyester', 'gabardine'],
  }),
  notions: notionsFor,
  draft: draftRaincoat,
  shape: (view) => raincoatShape(lined(view)),
  sketch: raincoatSketch,
});
