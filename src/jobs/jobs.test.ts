import { describe, expect, test } from 'vitest';
import { type Layout, readLayoutFile, verifyLayout } from '../lay/index.ts';
import { openNodeJobs, searchLayoutOnNode } from './host-node.ts';
import { callJobs, type FromWorker, serveJobs, type ToWorker } from './index.ts';

const problem = (() => {
  const slanted = [
    [0, 0],
    [70, 10],
    [90, 160],
    [-20, 180],
  ];
  const items = [0, 1, 2].map((id) => ({
    id,
    demand: 6,
    allowed_orientations: [0, 180],
    shape: { data: slanted.map(([x, y]) => [(x ?? 0) * (1 + id / 5), (y ?? 0) * (1 - id / 5)]) },
  }));
  const file = readLayoutFile({ strip_height: 500, items });
  if (!file.ok) throw new Error(file.problem.code);
  return file.value.problem;
})();

describe('jobs', () => {
  test('a layout tells of plans that only get shorter, then gives the last', async () => {
    const partials: Layout[] = [];
    const progress: number[] = [];
    const running = searchLayoutOnNode(
      { problem, seconds: 0.6 },
      {
        seed: 1,
        workers: 2,
        report: (share, partial) => {
          progress.push(share);
          if (partial) partials.push(partial);
        },
      },
    );
    const result = await running.result;
    if (!result.ok) throw new Error(result.problem.code);
    expect(partials.length).toBeGreaterThan(0);
    for (const [i, partial] of partials.entries()) {
      expect(verifyLayout(problem, partial)).toEqual([]);
      if (i > 0) expect(partial.length).toBeLessThan((partials[i - 1] as Layout).length);
    }
    expect(result.value.length).toBeLessThanOrEqual((partials[partials.length - 1] as Layout).length);
    expect(progress[progress.length - 1]).toBe(1);
  });

  test('cancelling works while it computes, and gives the best so far', async () => {
    const running = searchLayoutOnNode({ problem, seconds: 60 }, { seed: 1, workers: 1 });
    setTimeout(running.cancel, 300);
    const started = performance.now();
    const result = await running.result;
    expect(performance.now() - started).toBeLessThan(5000);
    if (!result.ok) throw new Error(result.problem.code);
    expect(verifyLayout(problem, result.value)).toEqual([]);
  });

  test('cancelled before it began, it never begins', async () => {
    const { workers, close } = openNodeJobs(1);
    const running = workers[0]?.start('layout', { problem, seconds: 60 }, { seed: 1 });
    running?.cancel();
    const result = await running?.result;
    await close();
    expect(result).toEqual({ ok: false, problem: { code: 'jobs.cancelled' } });
  });

  test('what is wrong with the input comes back as a problem', async () => {
    const narrow = { ...problem, cloth: { ...problem.cloth, width: 50 } };
    const result = await searchLayoutOnNode({ problem: narrow, seconds: 1 }, { seed: 1, workers: 2 }).result;
    expect(result.ok).toBe(false);
    if (!result.ok) expect(result.problem.code).toBe('lay.wider-than-cloth');
  });

  test('an unknown kind is a problem, a broken job and a lost worker are errors', async () => {
    let toWorker: (message: ToWorker) => void = () => {};
    const said: FromWorker[] = [];
    let heard: (message: FromWorker) => void = () => {};
    serveJobs(
      { send: (message) => said.push(message), listen: (hear) => (toWorker = hear) },
      { now: () => 0, pause: async () => {} },
    );
    toWorker({ say: 'start', id: 1, kind: 'knitting', seed: 1, input: null });
    toWorker({ say: 'start', id: 2, kind: 'layout', seed: 1, input: { problem: null } });
    await new Promise((resolve) => setTimeout(resolve, 10));
    expect(said).toContainEqual({
      say: 'result',
      id: 1,
      result: { ok: false, problem: { code: 'jobs.unknown-kind', values: { kind: 'knitting' } } },
    });
    expect(said.find(({ id }) => id === 2)?.say).toBe('broken');

    const caller = callJobs({ send: () => {}, listen: (hear) => (heard = hear) });
    const [first, second] = [0, 1].map(() => caller.start('layout', { problem, rounds: 1 }, { seed: 1 }).result);
    heard({ say: 'broken', id: 1, message: 'it broke' });
    await expect(first).rejects.toThrow('it broke');
    caller.lost(new Error('the thread ended'));
    await expect(second).rejects.toThrow('the thread ended');
  });
});
