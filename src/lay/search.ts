import { bad, good, type Result } from '../units/index.ts';
import { layoutProblemFault } from './check.ts';
import { PlanSearch } from './plan-search.ts';
import { rounding } from './polygon.ts';
import { stretchPlans } from './stretches.ts';
import type { Layout, LayoutProblem } from './types.ts';
import { verifyLayout } from './verify.ts';

/** How long to search and whom to tell. One of `seconds` and `rounds` must be given. */
export interface SearchOptions {
  /** Wall time for everything; needs `now`. */
  readonly seconds?: number;
  /** Rounds of the search; the same seed and rounds give the same plan. */
  readonly rounds?: number;
  readonly seed: number;
  /** Milliseconds on any clock that does not go back. */
  readonly now?: () => number;
  /** Told how far along it is (0 to 1), with the plan when there is a better one. */
  readonly report?: (progress: number, partial?: Layout) => void;
  readonly cancelled?: () => boolean;
  /** Awaited every 30 ms or so, to let the world in. */
  readonly pause?: () => Promise<void>;
}

/** Milliseconds of work between pauses, and between plans told of. */
const pauseEvery = 30;
const tellEvery = 250;
/** Share of the time in which the ways of dividing the work compete, and after which the best plan is compressed. */
const competing = 0.2;
const exploringUntil = 0.8;

/** The search's clock: how much of what it may take is used up. */
const spent = (options: SearchOptions): ((rounds: number) => number) => {
  const { seconds, rounds: most, now } = options;
  if (seconds !== undefined && now) {
    const start = now();
    return (rounds) => Math.max((now() - start) / (1000 * seconds), most === undefined ? 0 : rounds / most);
  }
  if (most === undefined) throw new Error('A search needs a bound: rounds, or seconds and a clock');
  return (rounds) => rounds / most;
};

/**
 * Searches for the plan that takes the least cloth. Always gives a plan that `verifyLayout` passes without
 * any allowance, the best found when time ran out or it was cancelled. Problems: `lay.*` as in
 * `layoutProblemFault`; `lay.cancelled` when stopped before there was a first plan.
 */
export const searchLayout = async (problem: LayoutProblem, options: SearchOptions): Promise<Result<Layout>> => {
  const fault = layoutProblemFault(problem);
  if (fault) return { ok: false, problem: fault };
  const run = new Run(problem, options);
  const searches: PlanSearch[] = [];
  for (const plan of stretchPlans(problem)) {
    const starting = PlanSearch.start(problem, plan, options.seed);
    let state = starting.next();
    while (!state.done) {
      await run.breathe();
      if (options.cancelled?.()) return bad('lay.cancelled');
      state = starting.next();
    }
    searches.push(state.value);
    run.offer(state.value);
  }
  await run.work(searches, competing);
  const leader = searches.reduce((best, search) => (search.length < best.length ? search : best));
  await run.work([leader], exploringUntil);
  leader.compress();
  await run.work([leader], 1);
  run.offer(leader);
  if (!run.best) throw new Error('The search found no plan that can be cut');
  options.report?.(1, run.best);
  return good(run.best);
};

/** One run of a search: its clock, its pauses, and the best plan that stood up to being verified. */
class Run {
  readonly #problem: LayoutProblem;
  readonly #options: SearchOptions;
  readonly #spent: (rounds: number) => number;
  #rounds = 0;
  #pausedAt: number;
  #toldAt: number;
  best: Layout | null = null;

  constructor(problem: LayoutProblem, options: SearchOptions) {
    this.#problem = problem;
    this.#options = options;
    this.#spent = spent(options);
    this.#pausedAt = options.now?.() ?? 0;
    this.#toldAt = this.#pausedAt;
  }

  async breathe(): Promise<void> {
    const { now, pause } = this.#options;
    if (!now || !pause || now() - this.#pausedAt < pauseEvery) return;
    await pause();
    this.#pausedAt = now();
  }

  /** Keeps the search's plan if it is better and can be cut. */
  offer(search: PlanSearch): void {
    if (this.best && search.length >= this.best.length) return;
    const layout = search.layout();
    // Without allowance but for rounding: whoever checks the plan by other means must find no overlap either.
    if (verifyLayout(this.#problem, layout, rounding * this.#problem.cloth.width).length > 0) {
      search.disprove();
      return;
    }
    search.prove();
    this.best = layout;
    this.#toldAt = this.#options.now?.() ?? 0;
    this.#options.report?.(Math.min(1, this.#spent(this.#rounds)), layout);
  }

  /** Steps the searches in turn until the given share of the time is used up. */
  async work(searches: readonly PlanSearch[], until: number): Promise<void> {
    const { now, cancelled } = this.#options;
    let busy = true;
    while (busy && this.#spent(this.#rounds) < until) {
      busy = false;
      for (const search of searches) {
        busy = search.step() || busy;
        this.#rounds++;
        if (now && now() - this.#toldAt > tellEvery) this.offer(search);
      }
      await this.breathe();
      if (cancelled?.()) return;
    }
  }
}
