import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type ChartRead, type ClothRow, readChart } from './index.ts';

const fresh = Number(process.env.EASEWRIGHT_SEED ?? Date.now());
console.log(`cloth-chart.property seed ${fresh}`);

const sizes = ['8', '10', '12'];

/** The widths of the trade, each by both its names, mm. */
const widths = [
  { in: 36, cm: 90 },
  { in: 45, cm: 115 },
  { in: 60, cm: 150 },
] as const;

interface Row {
  readonly view: 'A' | 'B';
  readonly layer: 'Fabric' | 'Lining' | 'Contrast';
  readonly width: (typeof widths)[number];
  readonly nap: ClothRow['nap'];
  /** mm. */
  readonly figures: readonly number[];
}

const layers = { Fabric: 'shell', Lining: 'lining', Contrast: 'contrast' } as const;

const rows: fc.Arbitrary<readonly Row[]> = fc.uniqueArray(
  fc.record<Row>({
    view: fc.constantFrom('A', 'B'),
    layer: fc.constantFrom('Fabric', 'Lining', 'Contrast'),
    width: fc.constantFrom(...widths),
    nap: fc.constantFrom('with', 'without', 'either'),
    figures: fc.array(fc.integer({ min: 400, max: 4000 }), { minLength: 3, maxLength: 3 }),
  }),
  { minLength: 1, maxLength: 8, selector: ({ view, layer, width, nap }) => `${view}${layer}${width.in}${nap}` },
);

const ways = fc.record({
  separator: fc.constantFrom('\t', ' | ', '    '),
  unit: fc.constantFrom('in' as const, 'cm' as const),
  views: fc.constantFrom('headings' as const, 'column' as const, 'label' as const),
  widthSaid: fc.constantFrom('one' as const, 'both' as const),
  stars: fc.boolean(),
  marked: fc.boolean(),
  order: fc.array(fc.nat(), { minLength: 12, maxLength: 12 }),
});
type Way = typeof ways extends fc.Arbitrary<infer One> ? One : never;

/** Yards to the eighth, metres to 5 cm, mm. */
const step = { in: 914.4 / 8, cm: 50 } as const;

const figure = (mm: number, { unit, marked }: Way): string => {
  const steps = Math.round(mm / step[unit]);
  if (unit === 'cm') return `${(steps * 0.05).toFixed(2)}${marked ? ' m' : ''}`;
  const [whole, eighths] = [Math.floor(steps / 8), steps % 8];
  const fraction =
    eighths === 0 ? '' : eighths % 4 === 0 ? '1/2' : eighths % 2 === 0 ? `${eighths / 2}/4` : `${eighths}/8`;
  return `${[whole === 0 && fraction ? '' : String(whole), fraction].filter(Boolean).join(' ')}${marked ? ' yd' : ''}`;
};

const napIn = (nap: ClothRow['nap'], stars: boolean): string =>
  stars
    ? { without: '*', with: '**', either: '***' }[nap]
    : { without: ' without nap', with: ' with nap', either: ' with or without nap' }[nap];

const widthIn = ({ width }: Row, { unit, widthSaid }: Way): string =>
  widthSaid === 'both' ? `${width.in}"/${width.cm} cm` : unit === 'in' ? `${width.in}"` : `${width.cm} cm`;

const line = (row: Row, way: Way): string => {
  const said = `${row.layer} ${widthIn(row, way)}${napIn(row.nap, way.stars)}`;
  const lead =
    way.views === 'headings'
      ? [said]
      : way.views === 'column'
        ? [`View ${row.view}`, said]
        : [`${said} View ${row.view}`];
  return [...lead, ...row.figures.map((mm) => figure(mm, way))].join(way.separator);
};

const setDown = (chart: readonly Row[], way: Way): string => {
  const ordered = chart
    .map((row, at) => ({ row, by: way.order[at] ?? 0 }))
    .toSorted((a, b) => a.by - b.by)
    .map(({ row }) => row);
  const head = [...(way.views === 'column' ? ['View', 'Width'] : ['Size']), ...sizes].join(way.separator);
  const lines =
    way.views === 'headings'
      ? (['B', 'A'] as const).flatMap((view) => {
          const own = ordered.filter((row) => row.view === view);
          return own.length > 0 ? [`View ${view}`, ...own.map((row) => line(row, way))] : [];
        })
      : ordered.map((row) => line(row, way));
  return [head, ...lines].join('\n');
};

const read = (chart: readonly Row[], way: Way): ChartRead => {
  const text = setDown(chart, way);
  const result = readChart(text, { kind: 'cloth', printedIn: way.unit === 'in' ? 'inches' : 'cm' });
  if (!result.ok) throw new Error(`${JSON.stringify(result.problem)}\n${text}`);
  if (result.value.asked.length > 0) throw new Error(`asked: ${result.value.asked[0]?.label}\n${text}`);
  return result.value;
};

it.each([20261, fresh])('cloth needed is the same however the chart is set down (seed %d)', (seed) => {
  fc.assert(
    fc.property(rows, ways, ways, (chart, one, other) => {
      for (const way of [one, other]) {
        const { clothNeeded } = read(chart, way);
        expect(clothNeeded).toHaveLength(chart.length);
        for (const row of chart) {
          const width = way.unit === 'in' ? row.width.in * 25.4 : row.width.cm * 10;
          const found = clothNeeded.find(
            ({ view, layer, nap, width: mm }) =>
              view === row.view && layer === layers[row.layer] && nap === row.nap && Math.abs(mm - width) < 1e-6,
          );
          expect(found, setDown(chart, way)).toBeDefined();
          found?.figures.forEach((mm, at) => {
            expect(Math.abs(Number(mm) - (row.figures[at] ?? 0))).toBeLessThanOrEqual(step[way.unit] / 2 + 1e-6);
          });
        }
      }
      if (one.unit === other.unit) expect(read(chart, other).clothNeeded).toEqual(read(chart, one).clothNeeded);
    }),
    { seed, numRuns: 200 },
  );
});
