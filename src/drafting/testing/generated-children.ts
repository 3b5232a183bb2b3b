import {
  type ChildFactor,
  childMeasures,
  childSpread,
  childStatures,
  type MeasureId,
  type Measures,
  measureIds,
} from '../../body/index.ts';

/** A small seeded source of numbers, 0 ≤ r < 1: splitmix32, as in Steele, Lea & Flood, Fast Splittable Pseudorandom Number Generators, 2014. */
const seeded = (seed: number): (() => number) => {
  let state = seed | 0;
  return () => {
    state = (state + 0x9e3779b9) | 0;
    let z = state;
    z = Math.imul(z ^ (z >>> 16), 0x85ebca6b);
    z = Math.imul(z ^ (z >>> 13), 0xc2b2ae35);
    return ((z ^ (z >>> 16)) >>> 0) / 4294967296;
  };
};

/** Nobody in the generated lot strays further from the chart than this many deviations, of a factor or by a single measure. */
const furthest = 3;

const factors: readonly ChildFactor[] = ['flesh', 'trunk', 'arm', 'leg', 'head', 'frame'];

/**
 * So many children, statures spread evenly over the whole chart from first to last, every measure straying from it by
 * its stated coefficient of variation and going with its factor by its stated share (`childSpread`): a stout child is
 * stout all over. Front and back crotch length make up the whole. 0.1 mm.
 */
export const generateChildren = (count: number, seed: number): readonly Measures[] => {
  const next = seeded(seed);
  const normal = (): number => {
    for (;;) {
      // Box and Muller, 1958; what strays too far is drawn again.
      const value = Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
      if (Math.abs(value) <= furthest) return value;
    }
  };
  const [first, last] = [childStatures[0], childStatures[childStatures.length - 1] as number];
  return Array.from({ length: count }, (_, i): Measures => {
    const stature = first + (count === 1 ? 0 : ((last - first) * i) / (count - 1));
    const chart = childMeasures(stature);
    if (!chart.ok) throw new Error(`no child of ${stature}`);
    const scores = Object.fromEntries(factors.map((factor) => [factor, normal()])) as Record<ChildFactor, number>;
    const measured = Object.fromEntries(
      measureIds.map((id) => {
        const { varies, factor, share } = childSpread[id];
        const departure = share * scores[factor] + Math.sqrt(1 - share ** 2) * normal();
        return [id, Math.round(10 * chart.value[id] * (1 + varies * departure)) / 10];
      }),
    ) as Record<MeasureId, number>;
    return { ...measured, crotchLength: measured.crotchLengthFront + measured.crotchLengthBack };
  });
};

/** The same children as a file for `pattern draft … --survey children`: a head of measure ids, then one child a line, mm. */
export const childrenCsv = (count: number, seed: number): string =>
  [
    measureIds.join(','),
    ...generateChildren(count, seed).map((body) => measureIds.map((id) => body[id]?.toFixed(1)).join(',')),
  ].join('\n');
