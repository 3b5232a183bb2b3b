import { type Layout, type LayoutProblem, searchLayout } from '../lay/index.ts';
import type { Job } from './types.ts';

export interface LayoutInput {
  readonly problem: LayoutProblem;
  /** Wall time for the search; or `rounds`, for a plan that does not hang on the machine's speed. */
  readonly seconds?: number;
  readonly rounds?: number;
}

/** Searches for a cutting layout; its partial results are plans that can be cut, each shorter than the last. Called off, it gives the best it has. */
export const layoutJob: Job<LayoutInput, Layout, Layout> = {
  kind: 'layout',
  run: ({ problem, seconds, rounds }, context) =>
    searchLayout(problem, {
      ...(seconds === undefined ? {} : { seconds }),
      ...(rounds === undefined ? {} : { rounds }),
      seed: context.seed,
      now: () => context.now(),
      report: (progress, partial) => context.report(progress, partial),
      cancelled: () => context.cancelled(),
      pause: () => context.pause(),
    }),
};
