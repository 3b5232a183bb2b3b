import type { Measures, Survey } from '../body/index.ts';
import { good, type Result } from '../units/index.ts';
import { dungareesMenWords, dungareesWords, type HouseWords } from '../words/index.ts';
import { menChart } from './chart-men.ts';
import { womenChart } from './chart-women.ts';
import { type Drafted, defineHousePattern } from './define.ts';
import { draftDungarees } from './dungarees-pieces.ts';
import { type DungareesView, planDungarees } from './dungarees-plan.ts';
import { dungareesShape } from './dungarees-shape.ts';
import { dungareesSketch } from './dungarees-sketch.ts';
import { sideOpening } from './side-opening.ts';
import type { ChartSize, EaseByLevel, HousePattern } from './types.ts';

/**
 * Drafts the dungarees for one body: the trousers' legs (`draftLegs`, `settleLegs`) with more room, cut off where short;
 * a bib before and behind (`bibPiece`), straps from the body (`planDungarees`), both sides opening (`sideUnderlap`).
 * Problems: `body.impossible`, `drafting.no-measure`, `drafting.legs-cannot-walk`, `drafting.waist-cannot-be-had`,
 * `drafting.measures-contradict`, and those of the ease asked for.
 */
const draft = (body: Measures, after: Survey, view: DungareesView, ease: EaseByLevel): Result<Drafted> => {
  const plan = planDungarees(body, after, view, ease);
  if (!plan.ok) return plan;
  const drafted = draftDungarees(plan.value);
  return drafted.ok ? good(drafted.value) : drafted;
};

/** Buttons on both sides' underlaps, and one on each side of the bib for a buckle. */
const buttonCount = { sides: 6, bib: 2 } as const;

const dungareesFor = (
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
      weight: [200, 380],
      stretch: 0,
      cloths: ['denim', 'drill', 'canvas', 'corduroy', 'heavy linen', 'moleskin'],
    }),
    notions: () => [
      { what: 'button', count: buttonCount.sides + buttonCount.bib, size: sideOpening.button },
      { what: 'buckle', count: 2, size: 36 },
      { what: 'interfacing' },
    ],
    draft: (body, view, ease) => draft(body, wearers, view as DungareesView, ease),
    shape: (view) => dungareesShape(view as DungareesView),
    sketch: dungareesSketch,
  });

/** The dungarees through the women's chart. */
export const dungarees = dungareesFor('women', 'dungarees', dungareesWords, womenChart, 1680);

/** The same dungarees through the men's chart. */
export const dungareesMen = dungareesFor('men', 'dungarees-men', dungareesMenWords, menChart, 1780);
