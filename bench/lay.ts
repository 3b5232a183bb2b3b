import { cpus, loadavg } from 'node:os';
import { searchLayoutOnNode } from '../src/jobs/host-node.ts';
import { type Layout, readLayoutFile, verifyLayout } from '../src/lay/index.ts';
import { sharedText } from '../test/shared-data.ts';

/**
 * How full the cloth is after 2, 10 and 20 seconds on the public instances, beside the published figures and
 * those of the published heuristic run on a machine of this kind. Wall time: run it on an idle machine.
 * `npm run bench -- lay [INSTANCE,… [SEED,… [WORKERS]]]`
 */
const [names = 'shirts,swim,trousers,marques,albano', seeds = '1,2', workers = '2'] = process.argv.slice(2);
const marks = [2, 10, 20] as const;

interface Reference {
  readonly published: { readonly mean: Readonly<Record<string, number>> };
  readonly same_machine: { readonly seconds_20: Readonly<Record<string, readonly number[]>> };
}

const search = async (name: string, seed: number): Promise<Record<string, string | number>> => {
  const text = sharedText(`nesting/${name}.json`);
  const file = readLayoutFile(text === null ? null : JSON.parse(text));
  if (!file.ok) throw new Error(`${name}: ${file.problem.code}`);
  const { problem } = file.value;
  const start = performance.now();
  const elapsed = (): number => (performance.now() - start) / 1000;
  let first = Number.NaN;
  let best: Layout | null = null;
  const at: string[] = marks.map(() => '');
  const note = (): void => {
    marks.forEach((mark, i) => {
      if (at[i] === '' && elapsed() >= mark) at[i] = best ? best.density.toFixed(2) : '–';
    });
  };
  const running = searchLayoutOnNode(
    { problem, seconds: 19.7 },
    {
      seed,
      workers: Number(workers),
      report: (_progress, partial) => {
        note();
        if (!partial) return;
        if (best === null) first = elapsed();
        best = partial;
      },
    },
  );
  const result = await running.result;
  if (!result.ok) throw new Error(`${name}: ${result.problem.code}`);
  best = result.value;
  const took = elapsed();
  at[marks.length - 1] = result.value.density.toFixed(2);
  const faults = verifyLayout(problem, result.value, 1e-9 * problem.cloth.width);
  return {
    instance: name,
    seed,
    'first plan s': first.toFixed(2),
    ...Object.fromEntries(marks.map((mark, i) => [`${mark} s`, at[i] as string])),
    took: took.toFixed(1),
    faults: faults.length,
  };
};

const referenceText = sharedText('nesting/reference.json');
if (referenceText === null) {
  console.error('The shared nesting data is not here; set EASEWRIGHT_DATA to its folder.');
  process.exit(1);
}
const reference = JSON.parse(referenceText) as Reference;
const rows: Record<string, string | number>[] = [];
for (const name of names.split(',')) {
  for (const seed of seeds.split(',')) {
    const same = reference.same_machine.seconds_20[name] ?? [];
    rows.push({
      ...(await search(name, Number(seed))),
      'compiled heuristic 20 s': same[Number(seed) - 1] ?? same[0] ?? '',
      'published 1200 s, mean': reference.published.mean[name] ?? '',
      'load before': loadavg()[0]?.toFixed(1) ?? '',
    });
    console.error(rows.at(-1));
  }
}
console.log(`${workers} workers on ${cpus().length} × ${cpus()[0]?.model ?? 'unknown'}; density in percent`);
console.table(rows);
