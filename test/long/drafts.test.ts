import { afterAll, describe, expect, it } from 'vitest';
import { childrenFile } from '../children.ts';
import { headEaseOf } from '../oracle/head-ease.ts';
import { judgeGarment, type PrintedGarment } from '../oracle/pieces.ts';
import { easewright, put, withFolder } from '../oracle/program.ts';
import { sharedText } from '../shared-data.ts';
import { ledger, writeResults } from './ledger.ts';

interface Batch {
  readonly bodies: number;
  readonly refused: number;
  readonly faulty: number;
  readonly complaints: readonly string[];
  readonly worstSeam: number;
  readonly worstGirth: number;
  readonly sleeveHeadEase: readonly [number, number];
}

/** How many children are drafted for, beside every surveyed adult. */
const children = 1500;

const [patterns] = (await easewright(['pattern', 'list', '--json'])).lines as readonly [
  readonly { readonly id: string; readonly for: 'women' | 'men' | 'child'; readonly views: readonly string[] }[],
];

const asked = patterns.flatMap(({ id, for: wearers, views }) =>
  views.map((view) => ({
    pattern: id,
    view,
    survey: wearers === 'child' ? ('children' as const) : wearers,
    ease: headEaseOf(id),
  })),
);

const batchSize = 100;
const done = ledger<Batch>('drafts');
const table: (string | number)[][] = [
  [
    'pattern, view, bodies',
    'bodies',
    'refused',
    'faulty',
    'drafted and sound',
    'worst seam beyond its ease, mm',
    'worst girth against body + ease, mm',
    'sleeve-head ease, mm',
  ],
];

const seamExcess = (garment: PrintedGarment): number =>
  Math.max(0, ...garment.seams.map((seam) => Math.max(seam.difference - seam.easeMax, seam.easeMin - seam.difference)));

const girthError = (garment: PrintedGarment): number =>
  Math.max(0, ...garment.girths.map((girth) => Math.abs(girth.finished - girth.body - girth.ease)));

const headEase = (garment: PrintedGarment): number =>
  garment.seams
    .filter((seam) => /^cap-/.test(seam.a.edge) && !/^lining/.test(seam.a.piece))
    .reduce((sum, seam) => sum + seam.difference, 0);

const judgeBatch = async (
  pattern: string,
  view: string,
  survey: string,
  csv: string,
  limits: readonly [number, number],
): Promise<Batch> => {
  const { lines } = await withFolder((folder) =>
    easewright([
      'pattern',
      'draft',
      pattern,
      '--bodies',
      put(folder, 'bodies.csv', csv),
      '--survey',
      survey,
      '--view',
      view,
      '--pieces',
      '--json',
    ]),
  );
  const drafts = lines as readonly (PrintedGarment & { readonly row: number })[];
  const good = drafts.filter((draft) => draft.ok);
  const eases = good.map(headEase);
  const judged = good.map((draft) => {
    const ease = headEase(draft);
    const outside = ease < limits[0] - 0.1 || ease > limits[1] + 0.1 ? [`sleeve-head ease ${ease}`] : [];
    return [...judgeGarment(draft), ...outside];
  });
  return {
    bodies: csv.split('\n').length - 1,
    refused: drafts.length - good.length,
    faulty: judged.filter((found) => found.length > 0).length,
    complaints: judged.flat().slice(0, 5),
    worstSeam: Math.max(0, ...good.map(seamExcess)),
    worstGirth: Math.max(0, ...good.map(girthError)),
    sleeveHeadEase: [Math.min(...eases), Math.max(...eases)],
  };
};

describe('every surveyed body', () => {
  for (const { pattern, view, survey, ease } of asked) {
    const csv = survey === 'children' ? childrenFile(children) : sharedText(`bodies/ansur2-${survey}.csv`);
    // The drafting is done by processes of its own, so several patterns keep several cores busy.
    it.skipIf(csv === null).concurrent(
      `${pattern}, ${view}, for ${survey}`,
      async () => {
        const [head = '', ...rows] = (csv ?? '').split(/\r?\n/).filter((line) => line !== '');
        const batches: Batch[] = [];
        for (let from = 0; from < rows.length; from += batchSize) {
          const part = [head, ...rows.slice(from, from + batchSize)].join('\n');
          batches.push(
            await done.batch(`${pattern} ${view} ${survey} ${from}`, () =>
              judgeBatch(pattern, view, survey, part, ease),
            ),
          );
        }
        const sum = (value: (batch: Batch) => number) => batches.reduce((total, batch) => total + value(batch), 0);
        const worst = (value: (batch: Batch) => number) => Math.max(...batches.map(value));
        const [bodies, refused, faulty] = [
          sum((one) => one.bodies),
          sum((one) => one.refused),
          sum((one) => one.faulty),
        ];
        const share = (100 * (bodies - refused - faulty)) / bodies;
        const least = Math.min(...batches.map((one) => one.sleeveHeadEase[0]));
        const most = worst((one) => one.sleeveHeadEase[1]);
        table.push([
          `${pattern}, ${view}, ${survey}`,
          bodies,
          refused,
          faulty,
          `${share.toFixed(2)} %`,
          worst((one) => one.worstSeam).toFixed(4),
          worst((one) => one.worstGirth).toFixed(4),
          `${least.toFixed(1)} – ${most.toFixed(1)}`,
        ]);
        console.log(batches.flatMap((batch) => batch.complaints).slice(0, 10));
        expect(bodies).toBe(rows.length);
        expect(share).toBeGreaterThanOrEqual(99.5);
      },
      3_600_000,
    );
  }

  afterAll(() => {
    writeResults(
      'drafts',
      'House patterns drafted for every surveyed body, and for children generated about the chart',
      'Judged by `test/oracle` from what `pattern draft --pieces` prints. A refusal counts as a failure. Faulty: an outline that is open or crosses itself, a seam outside its ease by more than 0.1 mm, a girth off by more than 1 mm, sleeve-head ease outside the trade’s range for the cloth.',
      table,
    );
  });
});
