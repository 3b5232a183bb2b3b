import { afterAll, describe, expect, it } from 'vitest';
import { alterationCatalogue } from '../../src/alter/index.ts';
import { housePatterns } from '../../src/drafting/index.ts';
import { chainOf, judgeChain, sayChain } from '../chains/chain.ts';
import { oneOf, type Range } from '../chains/draw-steps.ts';
import { singleSteps } from '../chains/single-steps.ts';
import { unsound } from '../chains/sound.ts';
import { sizesOf, views } from '../chains/subjects.ts';
import { ledger, writeResults } from './ledger.ts';

/** How many chains: `EASEWRIGHT_CHAINS` asks for fewer, or more. A run that was stopped goes on where it was. */
const wanted = Number(process.env['EASEWRIGHT_CHAINS'] ?? 200_000);
/** Chains of one batch are on one view, so that its sizes are drafted once and its pieces met again. */
const batchSize = 250;

type Counts = Record<string, { tried: number; refused: number; failed: number; reasons: Record<string, number> }>;

interface Batch {
  readonly counts: Counts;
  readonly complaints: readonly string[];
}

const done = ledger<Batch>('alterations');

const rowOf = (counts: Counts, key: string) => {
  counts[key] ??= { tried: 0, refused: 0, failed: 0, reasons: {} };
  return counts[key];
};

const judgeBatch = async (batch: number): Promise<Batch> => {
  const { pattern, view } = views[batch % views.length] as (typeof views)[number];
  const counts: Counts = {};
  const complaints: string[] = [];
  for (let i = 0; i < batchSize; i += 1) {
    const seed = batch * batchSize + i;
    // One in four with any amount allowed.
    const range: Range = seed % 4 === 3 ? 'full' : 'usual';
    const chain = chainOf(seed, range, alterationCatalogue, (random) => oneOf(random, sizesOf(pattern, view)));
    const wrong = [...new Set([...unsound(chain), ...judgeChain(chain)])];
    for (const { alteration, refused } of chain.tried) {
      const row = rowOf(counts, `${alteration} | ${pattern}`);
      row.tried += 1;
      if (refused === null) continue;
      row.refused += 1;
      row.reasons[refused] = (row.reasons[refused] ?? 0) + 1;
    }
    if (wrong.length === 0) continue;
    // What failed is told of the last step of the list, after which it was looked at.
    const last = chain.thrown?.step.alteration ?? chain.steps.at(-1)?.alteration;
    rowOf(counts, `${last} | ${pattern}`).failed += 1;
    if (complaints.length < 5) complaints.push(`${sayChain(chain)}: ${wrong[0]}`);
  }
  return { counts, complaints };
};

const table: (string | number)[][] = [['alteration', 'pattern', 'tried', 'refused', 'failed', 'why refused']];
const singles: (string | number)[][] = [['alteration', ...housePatterns.map(({ id }) => id)]];

describe('alteration lists', () => {
  it(`${wanted} random chains hold`, async () => {
    const sums: Counts = {};
    const complaints: string[] = [];
    for (let batch = 0; batch * batchSize < wanted; batch += 1) {
      const made = await done.batch(`chains ${batch}`, () => judgeBatch(batch));
      complaints.push(...made.complaints);
      for (const [key, { tried, refused, failed, reasons }] of Object.entries(made.counts)) {
        const sum = rowOf(sums, key);
        sum.tried += tried;
        sum.refused += refused;
        sum.failed += failed;
        for (const [code, count] of Object.entries(reasons)) sum.reasons[code] = (sum.reasons[code] ?? 0) + count;
      }
    }
    for (const [key, sum] of Object.entries(sums).sort()) {
      const why = Object.entries(sum.reasons).sort((a, b) => b[1] - a[1]);
      table.push([
        ...key.split(' | '),
        sum.tried,
        sum.refused,
        sum.failed,
        why.map(([code, n]) => `${code} ${n}`).join(', '),
      ]);
    }
    console.log(complaints.slice(0, 20));
    expect(complaints).toEqual([]);
  }, 86_400_000);

  it('at least nine single steps of ten in the usual range apply, on every pattern an alteration is for', () => {
    const few: string[] = [];
    for (const alteration of alterationCatalogue) {
      const rates = housePatterns.map(({ id }) => singleSteps(alteration, id));
      singles.push([
        alteration.id,
        ...rates.map(({ tried, refused }) =>
          tried === 0 ? '—' : `${Math.round((100 * (tried - refused)) / tried)} %`,
        ),
      ]);
      rates.forEach(({ tried, refused }, i) => {
        if (refused > tried / 10)
          few.push(`${alteration.id} on ${housePatterns[i]?.id}: ${refused} of ${tried} refused`);
      });
    }
    expect(few).toEqual([]);
  }, 3_600_000);

  afterAll(() => {
    const about =
      'Random lists of up to six steps on random sizes, three in four with usual amounts, one in four with any that are allowed; judged by `test/oracle` from what is printed. A step is tried where the garment, as it is at that moment, lacks nothing for it; one that is refused is left out of the list. Failed: lists ending in that alteration of which the judge had anything to say.';
    const line = (cells: readonly (string | number)[]) => `| ${cells.join(' | ')} |`;
    const [head = [], ...rest] = singles;
    const rates = [line(head), line(head.map(() => '---')), ...rest.map(line)].join('\n');
    writeResults(
      'alterations',
      'Alteration lists',
      `${about}\n\n## Single steps of usual amounts that apply\n\nEvery view, every size, eight random steps each. A dash: the alteration is not for that pattern.\n\n${rates}\n\n## In lists of up to six`,
      table,
    );
  });
});
