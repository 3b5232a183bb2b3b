import { surveyBodies } from '../src/body/index.ts';
import { type EaseByLevel, housePatterns } from '../src/drafting/index.ts';
import { finishedGirths, type Garment, walkAll } from '../src/pattern/index.ts';
import { sharedText } from '../test/shared-data.ts';

/**
 * Drafts every house pattern for every surveyed body it is for: how long one draft takes, how many were refused, and the
 * worst seam and girth. Reads the shared survey; goal well under 10 ms a draft.
 */
const quantile = (sorted: readonly number[], share: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;

/** Head ease: what the cap is longer than the armhole by. */
const headEase = (garment: Garment): number =>
  walkAll(garment)
    .filter(({ seam }) => seam.a.edge.startsWith('cap-'))
    .reduce((sum, { difference }) => sum + difference, 0);

const girthError = (garment: Garment, body: Readonly<Record<string, number>>, ease: EaseByLevel): number =>
  Math.max(
    ...finishedGirths(garment).map(({ level, measure, finished }) =>
      Math.abs(finished - (body[measure] ?? 0) - (ease[level] ?? 0)),
    ),
  );

const table: Record<string, string | number>[] = [];
for (const pattern of housePatterns) {
  for (const survey of pattern.for === 'child' ? [] : [pattern.for]) {
    const text = sharedText(`bodies/ansur2-${survey}.csv`);
    if (text === null) {
      console.error('The shared survey is not here; set EASEWRIGHT_DATA to its folder.');
      continue;
    }
    const bodies = surveyBodies(text, survey);
    if (!bodies.ok) throw new Error(bodies.problem.code);
    const times: number[] = [];
    const eases: number[] = [];
    let [refused, seam, girth] = [0, 0, 0];
    for (const { measures } of bodies.value) {
      const start = performance.now();
      const garment = pattern.draft(measures);
      times.push(performance.now() - start);
      const ease = pattern.ease(measures);
      if (!garment.ok || !ease.ok) {
        refused += 1;
        continue;
      }
      seam = Math.max(seam, ...walkAll(garment.value).map(({ excess }) => Math.abs(excess)));
      girth = Math.max(girth, girthError(garment.value, measures as Record<string, number>, ease.value));
      eases.push(headEase(garment.value));
    }
    const sorted = times.toSorted((a, b) => a - b);
    table.push({
      pattern: pattern.id,
      survey,
      bodies: bodies.value.length,
      refused,
      'median ms': quantile(sorted, 0.5).toFixed(2),
      'p95 ms': quantile(sorted, 0.95).toFixed(2),
      'most ms': quantile(sorted, 1).toFixed(1),
      'worst seam mm': seam.toExponential(1),
      'worst girth mm': girth.toFixed(3),
      'head ease mm': `${Math.min(...eases).toFixed(1)}–${Math.max(...eases).toFixed(1)}`,
    });
  }
}
console.table(table);
