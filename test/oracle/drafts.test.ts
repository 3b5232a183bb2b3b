import { describe, expect, it } from 'vitest';
import { childrenFile } from '../children.ts';
import { sharedText } from '../shared-data.ts';
import { stratified } from './bodies.ts';
import { headEaseOf } from './head-ease.ts';
import { judgeGarment, judgeSeams, type PrintedGarment } from './pieces.ts';
import { easewright, put, withFolder } from './program.ts';

interface Drafted extends PrintedGarment {
  readonly row: number | string;
}

interface Listed {
  readonly id: string;
  readonly for: 'women' | 'men' | 'child';
  readonly sizes: readonly string[];
  readonly views: readonly string[];
  readonly cups: readonly number[];
}

const listed = async (): Promise<readonly Listed[]> =>
  (await easewright(['pattern', 'list', '--json'])).lines[0] as unknown as readonly Listed[];

const sleeveHeadEase = (garment: PrintedGarment): number =>
  garment.seams
    .filter((seam) => /^cap-/.test(seam.a.edge) && !/^lining/.test(seam.a.piece))
    .reduce((sum, seam) => sum + seam.difference, 0);

/** A pattern on bodies of its own: the survey it is for, or children generated about the chart by stature. */
const bodiesFor = (wearers: Listed['for'], count: number): { readonly survey: string; readonly csv: string } => {
  if (wearers === 'child') return { survey: 'children', csv: childrenFile(count) };
  return { survey: wearers, csv: stratified(sharedText(`bodies/ansur2-${wearers}.csv`) ?? '', count) };
};

const absent = sharedText('bodies/ansur2-women.csv') === null;

/** How many bodies each view is drafted for here; the long run takes all. */
const each = 60;

describe('drafts, judged from what is printed', async () => {
  for (const { id, for: wearers, views } of await listed()) {
    it.skipIf(absent).each(views)(`${id}, %s, for ${each} ${wearers}`, async (view) => {
      const { survey, csv } = bodiesFor(wearers, each);
      const drafts = await withFolder(async (folder) => {
        const file = put(folder, 'bodies.csv', csv);
        const asked = ['--bodies', file, '--survey', survey, '--view', view, '--pieces', '--json'];
        const { status, lines } = await easewright(['pattern', 'draft', id, ...asked]);
        expect(status).toBe(0);
        return lines as readonly Drafted[];
      });
      expect(drafts).toHaveLength(each);
      const complaints = drafts.flatMap((draft) =>
        judgeGarment(draft).map((complaint) => `row ${draft.row}: ${complaint}`),
      );
      expect(complaints).toEqual([]);
      const [least, most] = headEaseOf(id);
      for (const draft of drafts) {
        expect(sleeveHeadEase(draft)).toBeGreaterThanOrEqual(least - 0.1);
        expect(sleeveHeadEase(draft)).toBeLessThanOrEqual(most + 0.1);
      }
    });
  }

  it('are sound in every size of every house pattern', async () => {
    for (const { id, sizes, views, cups } of await listed()) {
      expect(sizes.length).toBeGreaterThanOrEqual(9);
      for (const [which, view] of views.entries()) {
        // Cups change the same pieces in every view: they are judged in the first.
        for (const cup of cups.length === 0 || which > 0 ? [[]] : cups.map((mm) => ['--cup', String(mm)])) {
          const asked = ['--size', 'all', '--view', view, ...cup, '--pieces', '--json'];
          const drafts = (await easewright(['pattern', 'draft', id, ...asked])).lines as readonly Drafted[];
          expect(drafts.map(({ row }) => row)).toEqual(sizes);
          for (const draft of drafts) expect(judgeGarment(draft), `${id} ${asked.join(' ')} ${draft.row}`).toEqual([]);
        }
      }
    }
  }, 240_000);
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
    expect(judged((copy) => Object.assign(copy.girths[0] ?? {}, { pieces: [{ piece: 'front', factor: 2 }] }))).toMatch(
      /back carries it and is not counted/,
    );
    expect(
      judged((copy) =>
        Object.assign(copy.girths[0] ?? {}, {
          pieces: [
            { piece: 'front', factor: 4 },
            { piece: 'back', factor: 2 },
          ],
        }),
      ),
    ).toMatch(/front is counted more often than it is cut/);
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
