import { describe, expect, it } from 'vitest';
import { sharedText } from '../shared-data.ts';
import { type Asked, judgeLayout, type PrintedLayout } from './layout.ts';
import { readRuns, type Spot, sampled } from './path.ts';
import type { PrintedGarment } from './pieces.ts';
import { easewright, put, withFolder } from './program.ts';

interface PublicInstance {
  readonly strip_height: number;
  readonly items: readonly {
    readonly id: number;
    readonly demand: number;
    readonly allowed_orientations?: readonly number[];
    readonly shape: { readonly data: readonly (readonly [number, number])[] };
  }[];
}

const askedOf = (instance: PublicInstance): Asked => ({
  width: instance.strip_height,
  items: instance.items.map((item) => ({
    id: item.id,
    demand: item.demand,
    orientations: item.allowed_orientations ?? [0],
    spots: item.shape.data.map(([x, y]): Spot => ({ x, y })),
  })),
});

const lay = async (file: string, seconds: number): Promise<PrintedLayout> => {
  const { status, lines, said } = await easewright([
    'lay',
    file,
    '--seconds',
    String(seconds),
    '--workers',
    '1',
    '--seed',
    '1',
    '--json',
  ]);
  expect(status, said).toBe(0);
  return lines[0] as PrintedLayout;
};

describe('layouts, judged from what is printed', () => {
  for (const name of ['shirts', 'trousers', 'swim', 'marques', 'albano']) {
    const text = sharedText(`nesting/${name}.json`);
    it.skipIf(text === null)(`${name}: every piece once, none over another, none off the cloth`, async () => {
      const instance = JSON.parse(text ?? '') as PublicInstance;
      await withFolder(async (folder) => {
        const started = performance.now();
        const layout = await lay(put(folder, 'instance.json', text ?? ''), 4);
        // The time asked for is all the time there is; a loaded machine may take a little more to end.
        expect(performance.now() - started).toBeLessThan(6000);
        expect(judgeLayout(askedOf(instance), layout)).toEqual([]);
        expect(layout.density).toBeGreaterThan(50);
      });
    });
  }

  /** The blouse's cut lines as a layout file of our own, on single cloth. */
  const blouse = async (folder: string): Promise<{ readonly file: string; readonly asked: Asked }> => {
    const [drafted] = (await easewright(['pattern', 'draft', 'blouse', '--size', '4', '--pieces', '--json']))
      .lines as readonly [
      PrintedGarment & { readonly pieces: readonly { readonly grain: { readonly from: Spot; readonly to: Spot } }[] },
    ];
    const pieces = drafted.pieces.filter((piece) => !piece.onFold);
    const shapes = pieces.map((piece) => ({ piece, spots: sampled(readRuns(piece.cut)[0] ?? [], 4).slice(0, -1) }));
    const file = put(
      folder,
      'blouse.json',
      JSON.stringify({
        format: 'easewright-layout/1',
        cloth: { width: 1400, length: null, fold: 'single', oneWay: true, gap: 2 },
        items: shapes.map(({ piece, spots }) => ({
          id: piece.id,
          outline: spots.map(({ x, y }) => [x, y]),
          copies: piece.count,
          mirrored: piece.mirrored,
          grain: [
            [0, 0],
            [0, 100],
          ],
        })),
      }),
    );
    return {
      file,
      asked: {
        width: 1400,
        items: shapes.map(({ piece, spots }) => ({
          id: piece.id,
          demand: piece.count,
          orientations: [90, 270],
          mirrored: piece.mirrored,
          spots,
        })),
      },
    };
  };

  it('our own pieces: pairs come out mirrored, all one way', async () => {
    await withFolder(async (folder) => {
      const { file, asked } = await blouse(folder);
      const layout = await lay(file, 3);
      expect(judgeLayout(asked, layout)).toEqual([]);
      // One way: a mirrored copy turned by the same angle would have its head at the other end.
      const heads = new Set(layout.placed.map((placement) => (placement.rotation + 360) % 360));
      expect(heads.size).toBe(1);
    });
  });

  it('the judge finds an overlap, a piece mirrored wrongly, one missing, one off the cloth and a false density', async () => {
    await withFolder(async (folder) => {
      const { file, asked } = await blouse(folder);
      const layout = await lay(file, 3);
      const mutant = (
        change: (copy: {
          density: number;
          placed: { id: string | number; x: number; y: number; mirrored: boolean }[];
        }) => void,
      ) => {
        const copy = structuredClone(layout) as unknown as Parameters<typeof change>[0];
        change(copy);
        return judgeLayout(asked, copy as unknown as PrintedLayout).join('\n');
      };
      expect(
        mutant((copy) => Object.assign(copy.placed[0] ?? {}, { x: copy.placed[1]?.x, y: copy.placed[1]?.y })),
      ).toMatch(/overlap/);
      expect(mutant((copy) => Object.assign(copy.placed[0] ?? {}, { mirrored: !copy.placed[0]?.mirrored }))).toMatch(
        /mirrored/,
      );
      expect(mutant((copy) => copy.placed.splice(0, 1))).toMatch(/placed/);
      expect(mutant((copy) => Object.assign(copy.placed[0] ?? {}, { y: -50 }))).toMatch(/off the cloth/);
      expect(mutant((copy) => Object.assign(copy, { density: copy.density + 1 }))).toMatch(/density/);
    });
  });
});
