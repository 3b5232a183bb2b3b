import { figureMm } from './figures.ts';
import { fallsAt } from './rising.ts';
import { sizeRuns } from './sizes.ts';
import type { Figure } from './types.ts';

/** A figure that sits oddly between its neighbours, by size's place, with the steps before and after it, mm. */
export interface Uneven {
  readonly at: number;
  /** What the neighbours make likely, mm. */
  readonly likely: number;
}

/** Steps this near the usual one are rounding: half a centimetre with a quarter inch, mm. */
const rounding = 12;

/**
 * How far a step may lie from the usual step beside it, as a share of that. A chart that goes from 25 a size to 50
 * turns by less than this against the middle of its neighbours.
 */
const share = 1.25;

const middle = (values: readonly number[]): number => {
  const sorted = values.toSorted((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  const upper = sorted[half] ?? 0;
  return sorted.length % 2 === 1 ? upper : ((sorted[half - 1] ?? upper) + upper) / 2;
};

interface Step {
  readonly to: number;
  readonly mm: number;
}

/** A figure wrong by an amount makes the step before it too large and the one after too small, or the reverse. */
const oddFigure = (steps: readonly Step[], index: number): boolean => {
  const [before, after] = [steps[index], steps[index + 1]];
  if (!before || !after) return false;
  const beside = [steps[index - 2], steps[index - 1], steps[index + 2], steps[index + 3]].flatMap((step) =>
    step ? [step.mm] : [],
  );
  if (beside.length === 0)
    return Math.abs(before.mm - after.mm) > Math.max(2 * rounding, 2 * share * Math.min(before.mm, after.mm));
  const usual = middle(beside);
  const allowed = Math.max(rounding / 2, usual / 2);
  const [early, late] = [before.mm - usual, after.mm - usual];
  return early * late < 0 && Math.min(Math.abs(early), Math.abs(late)) > allowed;
};

/** One step far off those beside it on both sides: a figure at an end, or a size left out of the chart. */
const oddStep = (steps: readonly Step[], index: number): boolean => {
  const step = steps[index];
  const beside = [steps[index - 2], steps[index - 1], steps[index + 1], steps[index + 2]].flatMap((one) =>
    one ? [one.mm] : [],
  );
  if (!step || beside.length < 2) return false;
  const usual = middle(beside);
  return Math.abs(step.mm - usual) > Math.max(rounding, share * usual);
};

const inRun = (figures: readonly Figure[], run: readonly number[]): Uneven | null => {
  const known = run.flatMap((at) => {
    const mm = figureMm(figures[at] ?? null);
    return mm === null ? [] : [{ at, mm }];
  });
  const steps = known.slice(1).map(({ at, mm }, index): Step => ({ to: at, mm: mm - (known[index]?.mm ?? mm) }));
  const odd = steps.findIndex((_, index) => oddFigure(steps, index));
  const neighbours = (index: number) => [known[index - 1]?.mm, known[index + 1]?.mm] as const;
  if (odd >= 0) {
    const [before = 0, after = 0] = neighbours(odd + 1);
    return { at: steps[odd]?.to ?? 0, likely: (before + after) / 2 };
  }
  const step = steps.findIndex((_, index) => oddStep(steps, index));
  if (step < 0) return null;
  // At the beginning it is the first figure that is off, elsewhere the one the step leads to.
  const beside = middle(steps.filter((_, index) => index !== step).map(({ mm }) => mm));
  return step === 0
    ? { at: known[0]?.at ?? 0, likely: (known[1]?.mm ?? 0) - beside }
    : { at: steps[step]?.to ?? 0, likely: (known[step]?.mm ?? 0) + beside };
};

/** The first figure of a row, in each run of sizes, that does not grow as its neighbours do. */
const unevenIn = (figures: readonly Figure[], sizes: readonly string[]): readonly Uneven[] =>
  sizeRuns(sizes).flatMap((run) => inRun(figures, run) ?? []);

/** How a row fails to grow: from one size to the next it falls, or a figure sits oddly between its neighbours. */
export type Growth =
  | { readonly is: 'falls'; readonly before: number; readonly at: number }
  | ({ readonly is: 'uneven' } & Uneven);

/**
 * Where a row does not grow as it should. One figure that is far too large makes the next one fall: then it is that
 * figure which is doubted, if with a likely one in its place nothing falls.
 */
export const growthOf = (
  figures: readonly Figure[],
  sizes: readonly string[],
  neverFalls: boolean,
): readonly Growth[] => {
  const uneven = unevenIn(figures, sizes).map((one): Growth => ({ is: 'uneven', ...one }));
  const falls = neverFalls ? fallsAt(figures, sizes) : null;
  if (!falls) return uneven;
  const mended = (one: Growth): boolean =>
    one.is === 'uneven' && fallsAt(figures.with(one.at, one.likely), sizes) === null;
  const odd = uneven.find(mended);
  return odd ? [odd] : [{ is: 'falls', ...falls }];
};
