import { useCallback, useEffect, useRef, useState } from 'react';
import { searchWithMany } from '../../src/jobs/index.ts';
import type { Layout, LayoutProblem } from '../../src/lay/index.ts';
import type { Problem } from '../../src/units/index.ts';
import { startWorker, usefulThreads, type WorkerInHand } from '../jobs/workers.ts';
import { planShelf } from './plan-shelf.ts';

/** How a search for a layout stands. The plan is the best so far and can be cut from at any time. */
export interface LayoutSearch {
  readonly state: 'idle' | 'searching' | 'done' | 'refused' | 'broken';
  readonly progress: number;
  readonly plan: Layout | null;
  /** The problem the plan answers: what is drawn must be of a piece with it. */
  readonly of: LayoutProblem | null;
  readonly refusal: Problem | null;
}

const idle: LayoutSearch = { state: 'idle', progress: 0, plan: null, of: null, refusal: null };

/** A good plan comes within two seconds; the rest of the search betters it while she looks. */
const searchSeconds = 20;

/** The same seed gives the same search; what she saw yesterday is what she sees today. */
const seed = 20261;

/** Searches a layout in threads beside the page, with progress, a better plan whenever there is one, and a way to stop. */
export const useLayout = () => {
  const [search, setSearch] = useState<LayoutSearch>(idle);
  const workers = useRef<readonly WorkerInHand[]>([]);
  const cancel = useRef<(() => void) | null>(null);
  const run = useRef(0);

  const stop = useCallback(() => cancel.current?.(), []);
  const end = useCallback(() => {
    run.current += 1;
    for (const worker of workers.current) worker.end();
    workers.current = [];
    cancel.current = null;
  }, []);
  useEffect(() => end, [end]);

  const start = useCallback(
    (problem: LayoutProblem, again: boolean) => {
      end();
      const own = run.current;
      const before = planShelf.find(problem);
      if (before && !again) {
        setSearch({ state: 'done', progress: 1, plan: before, of: problem, refusal: null });
        return;
      }
      setSearch({ state: 'searching', progress: 0, plan: before, of: problem, refusal: null });
      workers.current = Array.from({ length: usefulThreads() }, startWorker);
      const better = (plan: Layout | undefined, now: Layout | null): Layout | null => {
        const best = plan && (!now || plan.length < now.length) ? plan : now;
        if (best && best !== now) planShelf.keep(problem, best);
        return best;
      };
      const running = searchWithMany(
        workers.current.map((worker) => worker.caller),
        { problem, seconds: searchSeconds },
        {
          seed: again ? seed + Math.floor(performance.now()) : seed,
          report: (progress, partial) => {
            if (own !== run.current) return;
            setSearch((now) => ({ ...now, progress, plan: better(partial, now.plan) }));
          },
        },
      );
      cancel.current = running.cancel;
      running.result.then(
        (result) => {
          if (own !== run.current) return;
          setSearch((now) =>
            result.ok
              ? { ...now, state: 'done', progress: 1, plan: better(result.value, now.plan) }
              : { ...now, state: 'refused', refusal: result.problem },
          );
          end();
        },
        () => {
          if (own === run.current) setSearch((now) => ({ ...now, state: 'broken' }));
          end();
        },
      );
    },
    [end],
  );
  const refuse = useCallback(
    (refusal: Problem) => {
      end();
      setSearch({ ...idle, state: 'refused', refusal });
    },
    [end],
  );
  return { search, start, stop, refuse };
};
