import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { MeasureId } from '../../body/index.ts';
import { blankEnvelope } from './document.ts';
import { envelopeDoubts } from './doubts.ts';
import { type ChartRead, type Figure, figureMm, readChart, readEnvelope, withChart } from './index.ts';
import { sizeRuns } from './sizes.ts';

const fresh = Number(process.env.EASEWRIGHT_SEED ?? Date.now());
console.log(`read-chart.property seed ${fresh}`);

const inch = 25.4;

/** What a row is called in print; any of the words for it may be used. */
const labels: readonly (readonly [MeasureId, readonly string[], number])[] = [
  ['bustGirth', ['Bust', 'BUST', 'Full bust', 'Chest', 'Bust girth'], 800],
  ['upperBustGirth', ['Upper bust', 'High bust'], 760],
  ['waistGirth', ['Waist', 'Waistline', 'Waist circumference'], 620],
  ['hipGirth', ['Hip', 'Hips', 'Full hip'], 880],
  ['backWaistLength', ['Back waist length', 'Nape to waist'], 390],
  ['insideLeg', ['Inside leg', 'Inseam'], 740],
  ['stature', ['Height', 'Stature'], 1600],
];

const sizeSets = [
  ['8', '10', '12', '14', '16'],
  ['XS', 'S', 'M', 'L', 'XL', '1X', '2X'],
  ['34', '36', '38'],
  ['8-10', '12-14'],
  ['8', '10', '12', '8T', '10T', '12T'],
] as const;

interface Row {
  readonly measure: MeasureId;
  readonly names: readonly string[];
  /** mm, whole. */
  readonly figures: readonly number[];
  readonly range: number;
}

interface Chart {
  readonly sizes: readonly string[];
  readonly rows: readonly Row[];
}

const charts: fc.Arbitrary<Chart> = fc.constantFrom(...sizeSets).chain((sizes) =>
  fc
    .subarray([...labels], { minLength: 1 })
    .chain((chosen) =>
      fc.tuple(
        ...chosen.map(([measure, names, base]) =>
          fc
            .record({
              first: fc.integer({ min: base, max: base + 200 }),
              steps: fc.array(fc.integer({ min: 10, max: 60 }), { minLength: sizes.length, maxLength: sizes.length }),
              range: fc.constantFrom(0, 0, 20),
            })
            .map(({ first, steps, range }): Row => {
              const figures: number[] = Array.from({ length: sizes.length }, () => first);
              // Each run of sizes grows for itself.
              for (const run of sizeRuns(sizes)) {
                run.forEach((at, place) => {
                  figures[at] = place === 0 ? first : (figures[run[place - 1] ?? 0] ?? first) + (steps[place] ?? 10);
                });
              }
              return { measure, names, figures, range };
            }),
        ),
      ),
    )
    .map((rows): Chart => ({ sizes, rows })),
);

/** One way of setting a chart down. */
const ways = fc.record({
  separator: fc.constantFrom('\t', ';', ' | ', '    ', ',', ' '),
  unit: fc.constantFrom('in' as const, 'cm' as const),
  said: fc.constantFrom('figure' as const, 'label' as const, 'title' as const, 'head' as const, 'asked' as const),
  fraction: fc.constantFrom('1/2', '-1/2', '½', 'decimal'),
  between: fc.constantFrom('-', '–', ' - ', ' to '),
  both: fc.boolean(),
  order: fc.array(fc.nat(), { minLength: 20, maxLength: 20 }),
  name: fc.nat(),
  hidden: fc.constantFrom('', '\u200f', '\u202a', '\ufeff'),
  ends: fc.constantFrom('\n', '\r\n', '\n\n'),
});
type Way = typeof ways extends fc.Arbitrary<infer One> ? One : never;

const glyphs: Readonly<Record<number, string>> = { 1: '⅛', 2: '¼', 3: '⅜', 4: '½', 5: '⅝', 6: '¾', 7: '⅞' };

/** Inches to the eighth, the finest print; cm to half a cm. */
const step = { in: inch / 8, cm: 5 } as const;

const oneFigure = (mm: number, unit: 'in' | 'cm', way: Way): string => {
  const steps = Math.round(mm / step[unit]);
  if (unit === 'cm')
    return way.fraction === 'decimal' || way.separator === ','
      ? String(steps / 2)
      : String(steps / 2).replace('.', way.separator === ';' ? ',' : '.');
  const [whole, eighths] = [Math.floor(steps / 8), steps % 8];
  if (eighths === 0) return String(whole);
  if (way.fraction === 'decimal') return String(steps / 8);
  if (way.fraction === '½') return `${whole}${glyphs[eighths]}`;
  const [above, below] = eighths % 4 === 0 ? [1, 2] : eighths % 2 === 0 ? [eighths / 2, 4] : [eighths, 8];
  return `${whole}${way.fraction === '1/2' ? ' ' : '-'}${above}/${below}`;
};

const cell = (mm: number, range: number, unit: 'in' | 'cm', way: Way): string => {
  const mark = way.said === 'figure' ? (unit === 'in' ? '"' : ' cm') : '';
  const one = oneFigure(mm, unit, way);
  return range === 0 ? `${one}${mark}` : `${one}${way.between}${oneFigure(mm + range, unit, way)}${mark}`;
};

const rowIn = (row: Row, unit: 'in' | 'cm', way: Way): string => {
  const name = row.names[way.name % row.names.length] ?? '';
  const label = way.said === 'label' || way.both ? `${name} (${unit})` : name;
  return [label, ...row.figures.map((mm) => cell(mm, row.range, unit, way))].join(way.separator);
};

const shuffled = <T>(items: readonly T[], order: readonly number[]): readonly T[] =>
  items
    .map((item, at) => ({ item, by: order[at % order.length] ?? 0, at }))
    .toSorted((a, b) => a.by - b.by || a.at - b.at)
    .map(({ item }) => item);

const setDown = ({ sizes, rows }: Chart, way: Way): string => {
  const title =
    way.said === 'title' ? [way.unit === 'in' ? 'Measurements in inches' : 'Measurements in centimetres'] : [];
  const head = [way.said === 'head' ? (way.unit === 'in' ? 'inches' : 'cm') : 'Size', ...sizes].join(way.separator);
  const units = way.both ? (['in', 'cm'] as const) : [way.unit];
  const lines = shuffled(rows, way.order).flatMap((row) =>
    shuffled(units, way.order.slice(5)).map((unit) => rowIn(row, unit, way)),
  );
  return [...title, head, ...lines].map((line) => `${way.hidden}${line}`).join(way.ends);
};

const readWay = (chart: Chart, way: Way): ChartRead => {
  const text = setDown(chart, way);
  const read = readChart(text, { kind: 'body', printedIn: way.unit === 'in' ? 'inches' : 'cm' });
  if (!read.ok) throw new Error(`${JSON.stringify(read.problem)}\n${text}`);
  return read.value;
};

const ends = (figure: Figure | undefined): readonly number[] =>
  figure === null || figure === undefined ? [] : typeof figure === 'number' ? [figure, figure] : figure;

it.each([20261, fresh])(
  'the same chart in any order of units, rows and separators is the same chart (seed %d)',
  (seed) => {
    fc.assert(
      fc.property(charts, ways, ways, (chart, one, other) => {
        const [a, b] = [readWay(chart, one), readWay(chart, other)];
        expect(a.sizes).toEqual(chart.sizes);
        expect(b.sizes).toEqual(a.sizes);
        expect(a.asked).toEqual([]);
        expect(b.body.map(({ measure }) => measure)).toEqual(a.body.map(({ measure }) => measure));
        for (const [read, way] of [
          [a, one],
          [b, other],
        ] as const) {
          expect(read.body).toHaveLength(chart.rows.length);
          for (const { measure, figures } of read.body) {
            const row = chart.rows.find((printed) => printed.measure === measure);
            figures.forEach((figure, at) => {
              const truth = row?.figures[at] ?? Number.NaN;
              const within = step[way.unit] / 2 + 1e-6;
              const [low = Number.NaN, high = Number.NaN] = ends(figure);
              expect(Math.abs(low - truth)).toBeLessThanOrEqual(within);
              expect(Math.abs(high - truth - (row?.range ?? 0))).toBeLessThanOrEqual(within);
            });
          }
        }
        // Printed in one unit the two are the same to the last figure.
        if (one.unit === other.unit) expect(b.body).toEqual(a.body);
      }),
      { seed, numRuns: 200 },
    );
  },
);

const anyFigures = fc.array(fc.array(fc.integer({ min: 60, max: 66 }), { minLength: 4, maxLength: 4 }), {
  minLength: 1,
  maxLength: 3,
});

it.each([20261, fresh])('every chart that passes has sizes that do not fall (seed %d)', (seed) => {
  let passed = 0;
  fc.assert(
    fc.property(
      anyFigures,
      fc.constantFrom(['8', '10', '12', '14'], ['8', '10', '8T', '10T'], ['14', '12', '10', '8']),
      (figures, sizes) => {
        const rows = figures.map((row, at) => [labels[at]?.[1][0] ?? '', ...row].join('\t'));
        const read = readChart([['Size', ...sizes].join('\t'), ...rows].join('\n'), { kind: 'body', printedIn: 'cm' });
        if (!read.ok) {
          expect(read.problem.code).toBe('envelope.crossing');
          return;
        }
        passed += 1;
        for (const row of read.value.body) {
          for (const run of sizeRuns(read.value.sizes)) {
            const known = run.map((at) => figureMm(row.figures[at] ?? null) ?? 0);
            expect(known).toEqual(known.toSorted((a, b) => a - b));
          }
        }
      },
    ),
    { seed, numRuns: 1500 },
  );
  // Enough of them pass for the property to say something.
  expect(passed).toBeGreaterThan(20);
});

const pieces = fc.constantFrom(
  'Size',
  'Bust',
  'Hip',
  'View A',
  'A, B',
  '45"',
  '115 cm',
  '*',
  '**',
  'with nap',
  '8',
  '10',
  '12',
  'XS',
  '80',
  '84',
  '31 1/2',
  '½',
  '32–34',
  '-',
  '\t',
  '\t',
  ';',
  '|',
  '  ',
  ' ',
  ',',
  '\n',
  '\n',
  '(in)',
  'cm',
  '$5',
  '1e9',
  '\u202e',
  'Lining',
  '"',
  '(',
  '/',
);

it.each([20261, fresh])(
  'any text at all gives a chart that can be stored, or a problem, and never a throw (seed %d)',
  (seed) => {
    const texts = fc.oneof(
      fc.string({ maxLength: 200 }),
      fc.array(pieces, { maxLength: 60 }).map((parts) => parts.join('')),
      fc.array(pieces, { maxLength: 40 }).map((parts) => `Size\t8\t10\n${parts.join('\t')}`),
    );
    fc.assert(
      fc.property(
        texts,
        fc.constantFrom('body' as const, 'finished' as const, 'cloth' as const),
        fc.boolean(),
        (text, kind, known) => {
          const read = readChart(text, { kind, printedIn: 'inches', ...(known ? { sizes: ['8', '10'] } : {}) });
          if (!read.ok) {
            expect(read.problem.code).toMatch(/^envelope\./);
            return;
          }
          const envelope = withChart(blankEnvelope({ name: 'Smock' }), read.value);
          if (!envelope.ok) throw new Error(envelope.problem.code);
          expect(readEnvelope(envelope.value)).toMatchObject({ ok: true });
          expect(() => envelopeDoubts(envelope.value)).not.toThrow();
        },
      ),
      { seed, numRuns: 1500 },
    );
  },
);
