import { applyAlterations, createAlterationCache } from '../src/alter/index.ts';
import { housePattern } from '../src/drafting/index.ts';
import type { AlterationStep } from '../src/pattern/index.ts';

/**
 * Re-doing an alteration after a slider moved, on the whole blouse: what has to be done again between two frames while a
 * person drags. Must: median 8 ms, 95th percentile 16; goal 4 and 8.
 */
const blouse = housePattern('blouse');
if (!blouse) throw new Error('The blouse is missing');
const { sizes } = blouse.pattern();
const garment = (sizes[Math.floor(sizes.length / 2)] as (typeof sizes)[number]).garment;

const step = (id: string, alteration: string, params: AlterationStep['params']): AlterationStep => ({
  id,
  alteration,
  version: 1,
  on: true,
  params,
});

const lengthen = (where: string, amount: number) => step(where, 'lengthen-shorten', { where, amount });

/** Lists as they are while the last-named amount is dragged: `at` runs from 0 to 1. */
const drags: Readonly<Record<string, (at: number) => readonly AlterationStep[]>> = {
  'full bust alone': (at) => [step('bust', 'full-bust', { amount: 1 + 35 * at })],
  'lengthening alone': (at) => [lengthen('above-waist', -40 + 100 * at)],
  'full bust before three lengthenings': (at) => [
    step('bust', 'full-bust', { amount: 1 + 35 * at }),
    lengthen('above-waist', 20),
    lengthen('below-waist', 30),
    lengthen('sleeve', -20),
  ],
  'full bust after three lengthenings': (at) => [
    lengthen('above-waist', 20),
    lengthen('below-waist', 30),
    lengthen('sleeve', -20),
    step('bust', 'full-bust', { amount: 1 + 35 * at }),
  ],
};

const quantile = (sorted: readonly number[], share: number): string =>
  (sorted[Math.min(Math.floor(share * sorted.length), sorted.length - 1)] as number).toFixed(2);

const rows = Object.entries(drags).map(([drag, steps]) => {
  const cache = createAlterationCache();
  const times: number[] = [];
  for (let move = 0; move < 360; move += 1) {
    // Never the same amount twice, or the cache would answer.
    const list = steps((move * 0.618034) % 1);
    const start = performance.now();
    const { refusal } = applyAlterations(garment, list, cache);
    const taken = performance.now() - start;
    if (refusal) throw new Error(JSON.stringify(refusal));
    if (move >= 60) times.push(taken);
  }
  times.sort((a, b) => a - b);
  return { drag, 'median ms': quantile(times, 0.5), 'p95 ms': quantile(times, 0.95), 'worst ms': quantile(times, 1) };
});
console.table(rows);
