import type { Measures, Survey } from '../body/index.ts';
import { tolerance } from '../geometry/index.ts';
import {
  type ClothAdvice,
  finishedGirths,
  type Garment,
  type NotionRule,
  type Pattern,
  walkAll,
} from '../pattern/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import type { HouseWords } from '../words/index.ts';
import { bodyWithCup } from './chart.ts';
import { nearestCup } from './cups.ts';
import type { ShapeCheck } from './shape-check.ts';
import type { FlatSketch } from './sketch.ts';
import type { ChartSize, DraftOptions, EaseByLevel, HousePattern } from './types.ts';

/** A garment drafted, and the ease by level it states; with the ease asked for, where it was. */
export interface Drafted {
  readonly garment: Garment;
  readonly ease: EaseByLevel;
}

/** What is particular to one pattern of our own. Everything else follows from it in `defineHousePattern`. */
export interface HouseDesign {
  readonly id: string;
  readonly words: HouseWords;
  readonly for: Pattern['for'];
  readonly kind: Pattern['kind'];
  readonly estimatedAfter: Survey | 'children';
  readonly chart: readonly ChartSize[];
  /** Cups beside the chart's own, mm; left out where no dart or seam shapes the bust. */
  readonly cups?: readonly number[];
  readonly draftedStature: number;
  readonly cloth: (view: string) => ClothAdvice;
  readonly notions: (view: string) => readonly NotionRule[];
  /** Drafts one body in one view, with the ease wished for (none: the design's own). */
  readonly draft: (body: Measures, view: string, ease: EaseByLevel) => Result<Drafted>;
  readonly shape: (view: string) => readonly ShapeCheck[];
  readonly sketch: (garment: Garment, view: string) => FlatSketch;
}

/**
 * Whether the draft came out as stated: every seam walks, every girth is body + ease. Measures that contradict one
 * another can be drafted from step by step and still not make a garment.
 */
const cameOut = ({ garment, ease }: Drafted, body: Measures): boolean =>
  walkAll(garment).every(({ meets }) => meets) &&
  finishedGirths(garment).every(({ level, measure, finished }) => {
    const round = body[measure];
    return round === undefined || Math.abs(finished - round - (ease[level] ?? 0)) <= tolerance.girth;
  });

/**
 * A house pattern from its design. Its drafts refuse (`drafting.measures-contradict`) what does not sew together or
 * misses a girth it states; `drafting.no-such-view` where the view is not one of its own.
 */
export const defineHousePattern = (design: HouseDesign): HousePattern => {
  const { id, words, chart } = design;
  const views = Object.entries(words.views).map(([view, said]) => ({ id: view, ...said }));
  const firstView = views[0]?.id ?? '';
  const chartCup = (chart[0]?.body.bustGirth ?? 0) - (chart[0]?.body.upperBustGirth ?? 0);
  const cups = design.cups ?? [];
  const drafted = (body: Measures, options: DraftOptions = {}): Result<Drafted> => {
    const view = options.view ?? firstView;
    if (!(view in words.views)) {
      return bad('drafting.no-such-view', { view, pattern: words.name, views: views.map((one) => one.id).join(', ') });
    }
    const draft = design.draft(body, view, options.ease ?? {});
    if (!draft.ok) return draft;
    return cameOut(draft.value, body) ? draft : bad('drafting.measures-contradict');
  };
  const chartFor = (cup?: number): readonly ChartSize[] =>
    cup === undefined || cup === chartCup
      ? chart
      : chart.map((size) => ({ id: size.id, body: bodyWithCup(size.body, cup) }));
  return {
    id,
    name: words.name,
    about: words.about,
    for: design.for,
    kind: design.kind,
    estimatedAfter: design.estimatedAfter,
    views,
    cups,
    nearestCup: (body) => nearestCup(cups, body),
    chart,
    chartFor,
    ease: (body, options) => {
      const draft = drafted(body, options);
      return draft.ok ? good(draft.value.ease) : draft;
    },
    draft: (body, options) => {
      const draft = drafted(body, options);
      return draft.ok ? good(draft.value.garment) : draft;
    },
    pattern: ({ view = firstView, cup } = {}): Pattern => {
      const shown = views.find((one) => one.id === view);
      return {
        format: 'easewright-pattern/1',
        id,
        name: words.name,
        about: words.about,
        for: design.for,
        kind: design.kind,
        ...(cups.length > 0 ? { draftedCup: cup ?? chartCup } : {}),
        draftedStature: design.draftedStature,
        ...(shown ? { view: shown } : {}),
        cloth: design.cloth(view),
        notions: design.notions(view),
        sizes: chartFor(cup).map((size) => {
          const draft = drafted(size.body, { view });
          if (!draft.ok) throw new Error(`Size ${size.id} of ${id}, ${view}, cannot be drafted: ${draft.problem.code}`);
          return { ...size, garment: draft.value.garment };
        }),
      };
    },
    notions: (view = firstView) => design.notions(view),
    shape: (view = firstView) => design.shape(view),
    sketch: (garment, view = firstView) => design.sketch(garment, view),
    work: (view = firstView) => words.work.filter((step) => step.views === undefined || step.views.includes(view)),
    cautions: words.cautions ?? [],
  };
};
