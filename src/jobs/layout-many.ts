import type { Layout } from '../lay/index.ts';
import { good, type Result } from '../units/index.ts';
import type { Caller, CallOptions, Running } from './call.ts';
import type { LayoutInput } from './layout.ts';

/**
 * One layout searched by several workers, each from a seed of its own, and the shortest plan taken. With one
 * worker, the same as that worker's search.
 */
export const searchWithMany = (
  workers: readonly Caller[],
  input: LayoutInput,
  { seed, report }: CallOptions<'layout'>,
): Running<'layout'> => {
  let best: Layout | null = null;
  const progress = workers.map(() => 0);
  const running = workers.map((worker, i) =>
    worker.start('layout', input, {
      seed: seed + 104729 * i,
      report: (part, partial) => {
        progress[i] = part;
        const better = partial && (best === null || partial.length < best.length) ? partial : undefined;
        if (better) best = better;
        report?.(Math.min(...progress), better);
      },
    }),
  );
  const gather = async (): Promise<Result<Layout>> => {
    const results = await Promise.all(running.map(({ result }) => result));
    const plans = results.flatMap((result) => (result.ok ? [result.value] : []));
    if (plans.length > 0) return good(plans.reduce((least, plan) => (plan.length < least.length ? plan : least)));
    const [first] = results;
    if (!first) throw new Error('A layout needs at least one worker');
    return first;
  };
  return {
    result: gather(),
    cancel: () => {
      for (const one of running) one.cancel();
    },
  };
};
