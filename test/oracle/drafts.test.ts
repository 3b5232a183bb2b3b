import { describe, expect, it } from 'vitest';
import { sharedText } from '../shared-data.ts';
import { stratified } from './bodies.ts';
import { judgeGarment, judgeSeams, type PrintedGarment } from './pieces.ts';
import { easewright, put, withFolder } from './program.ts';

interface Drafted extends PrintedGarment {
  readonly row: number | string;
}

/** Patterns, the surveys they are drafted for, and the sleeve-head ease the trade gives their cloth, mm. */
const asked = [
  { pattern: 'blouse', survey: 'women', ease: [15, 35] },
  { pattern: 'tee', survey: 'women', ease: [0, 12] },
  { pattern: 'tee', survey: 'men', ease: [0, 12] },
] as const;

const sleeveHeadEase = (garment: PrintedGarment): number =>
  garment.seams.filter((seam) => /^cap-/.test(seam.a.edge)).reduce((sum, seam) => sum + seam.difference, 0);

describe('drafts, judged from what is printed', () => {
  for (const { pattern, survey, ease } of asked) {
    const csv = sharedText(`bodies/ansur2-${survey}.csv`);
    it.skipIf(csv === null)(`${pattern} for 200 surveyed ${survey}`, async () => {
      const drafts = await withFolder(async (folder) => {
        const file = put(folder, 'bodies.csv', stratified(csv ?? '', 200));
        const { status, lines } = await easewright([
          'pattern',
          'draft',
          pattern,
          '--bodies',
          file,
          '--survey',
          survey,
          '--pieces',
          '--json',
        ]);
        expect(status).toBe(0);
        return lines as readonly Drafted[];
      });
      expect(drafts).toHaveLength(200);
      const complaints = drafts.flatMap((draft) =>
        judgeGarment(draft).map((complaint) => `row ${draft.row}: ${complaint}`),
      );
      expect(complaints).toEqual([]);
      for (const draft of drafts) {
        expect(sleeveHeadEase(draft)).toBeGreaterThanOrEqual(ease[0] - 0.1);
        expect(sleeveHeadEase(draft)).toBeLessThanOrEqual(ease[1] + 0.1);
      }
    });
  }

  it('are sound in every size of every house pattern', async () => {
    const [patterns] = (await easewright(['pattern', 'list', '--json'])).lines as readonly [
      readonly { id: string; sizes: string[] }[],
    ];
    expect(patterns.length).toBeGreaterThan(1);
    for (const { id, sizes } of patterns) {
      expect(sizes.length).toBeGreaterThanOrEqual(9);
      for (const size of sizes) {
        const [garment] = (await easewright(['pattern', 'draft', id, '--size', size, '--pieces', '--json'])).lines;
        expect(judgeGarment(garment as Drafted), `${id} ${size}`).toEqual([]);
      }
    }
  });
});

describe('the judge', () => {
  const sound = async (): Promise<Drafted> =>
    (await easewright(['pattern', 'draft', 'blouse', '--size', '5', '--pieces', '--json'])).lines[0] as Drafted;

  const changed = (garment: Drafted, change: (copy: Mutable) => void): Drafted => {
    const copy = structuredClone(garment) as unknown as Mutable;
    change(copy);
    return copy as unknown as Drafted;
  };

  interface Mutable {
    pieces: {
      id: string;
      outline: string;
      cut: string;
      edges: { id: string; path: string }[];
      darts: { point: { x: number; y: number } }[];
      levels: { id: string; to: { x: number; y: number } }[];
    }[];
    seams: { lengthA: number; difference: number; b: { piece: string; edge: string } }[];
    girths: { finished: number }[];
  }

  const piece = (copy: Mutable, id: string) => {
    const found = copy.pieces.find((one) => one.id === id);
    if (!found) throw new Error(`no piece ${id}`);
    return found;
  };

  it('finds a seam that is off by 0.2 mm, though its printed lengths say otherwise', async () => {
    const garment = await sound();
    expect(judgeSeams(garment)).toEqual([]);
    const longer = changed(garment, (copy) => {
      const side = piece(copy, 'back').edges.find((edge) => edge.id === 'side');
      // 0.2 mm carried on downwards at the end of the edge.
      if (side)
        side.path = side.path.replace(
          /([-\d.]+) ([-\d.]+)$/,
          (_all, x: string, y: string) => `${x} ${y} L ${x} ${Number(y) + 0.2}`,
        );
    });
    expect(judgeSeams(longer).join()).toMatch(/side/);
  });

  it('finds misprinted lengths, girths, uneven darts, and an edge nobody printed', async () => {
    const garment = await sound();
    const judged = (change: (copy: Mutable) => void) => judgeGarment(changed(garment, change)).join('\n');
    expect(judged((copy) => Object.assign(copy.seams[0] ?? {}, { lengthA: 1 }))).toMatch(/printed 1/);
    expect(judged((copy) => Object.assign(copy.girths[0] ?? {}, { finished: 900 }))).toMatch(/printed 900/);
    expect(judged((copy) => Object.assign(piece(copy, 'front').darts[0]?.point ?? {}, { y: 0 }))).toMatch(/legs/);
    expect(judged((copy) => Object.assign(copy.seams[0]?.b ?? {}, { edge: 'nowhere' }))).toMatch(/not printed/);
  });

  it('finds outlines that are open, mirrored the wrong way round, or cross themselves', async () => {
    const garment = await sound();
    const judged = (change: (copy: Mutable) => void) => judgeGarment(changed(garment, change)).join('\n');
    expect(
      judged((copy) =>
        Object.assign(piece(copy, 'back'), {
          outline: piece(copy, 'back')
            .outline.replace(/ Z$/, '')
            .replace(/ [-\d.]+$/, ' 9'),
        }),
      ),
    ).toMatch(/open/);
    const mirrored = (path: string) =>
      path.replace(/([-\d.]+) ([-\d.]+)/g, (_all, x: string, y: string) => `${-Number(x)} ${y}`);
    expect(
      judged((copy) => Object.assign(piece(copy, 'back'), { outline: mirrored(piece(copy, 'back').outline) })),
    ).toMatch(/wrong way round/);
    expect(
      judged((copy) => Object.assign(piece(copy, 'back'), { outline: 'M 0 0 L 100 100 L 100 0 L 0 90 Z' })),
    ).toMatch(/crosses itself/);
  });

  it('counts a refusal as a failure', () => {
    expect(judgeGarment({ ok: false, reason: 'too hard', seams: [], girths: [], pieces: [] })).toEqual([
      'refused: too hard',
    ]);
  });
});
