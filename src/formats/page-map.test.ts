import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { housePattern } from '../drafting/index.ts';
import type { GroupMark } from '../draw/index.ts';
import { pathBounds } from '../geometry/index.ts';
import { drawPageMap, measureWords, paperSizes, printPdf, type SheetRequest } from './index.ts';

const font = (file: string): Uint8Array =>
  new Uint8Array(readFileSync(`node_modules/@expo-google-fonts/alegreya-sans/${file}`));
const fonts = {
  regular: font('400Regular/AlegreyaSans_400Regular.ttf'),
  bold: font('700Bold/AlegreyaSans_700Bold.ttf'),
};
const size = housePattern('tee')?.pattern().sizes[2];
if (!size) throw new Error('no tee');

const requestOn = (paper: SheetRequest['paper']): SheetRequest => ({
  garment: size.garment,
  title: 'Tee',
  size: size.id,
  make: 'For the nephew',
  paper,
  unit: 'cm',
});

describe('the map of a print', () => {
  it('tells the sheets and pages the print then has, on every paper', async () => {
    const textWidth = await measureWords(fonts);
    if (!textWidth) throw new Error('the fonts cannot be read');
    for (const paper of ['a4', 'letter', 'a0', 'roll36'] as const) {
      const map = drawPageMap(requestOn(paper), textWidth);
      const print = await printPdf({ ...requestOn(paper), fonts });
      if (!map.ok || !print.ok) throw new Error('refused');
      expect(map.value.tiles).toEqual(print.value.tiles);
      expect(map.value.pages).toBe(print.value.pages);
      expect(map.value.length === null).toBe(!paperSizes[paper].roll);
      const groups = map.value.drawing.marks.filter((mark): mark is GroupMark => mark.kind === 'group');
      expect(groups.map(({ id }) => id)).toEqual(size.garment.pieces.map(({ id }) => id));
    }
  });

  it('names each piece on the paper, at its true size, and says which sheets it lies on', async () => {
    const textWidth = (await measureWords(fonts)) ?? (() => 0);
    const map = drawPageMap(requestOn('a4'), textWidth);
    if (!map.ok) throw new Error(map.problem.code);
    for (const piece of size.garment.pieces) {
      const group = map.value.drawing.marks.find((mark) => mark.kind === 'group' && mark.id === piece.id);
      if (group?.kind !== 'group') throw new Error(`${piece.id} is not on the map`);
      const sheets = group.label.replace(/^\d+ .*: /, '').split(', ');
      expect(sheets.every((sheet) => map.value.tiles.includes(sheet))).toBe(true);
      const cut = group.marks.find((mark) => mark.kind === 'path');
      const { minX, maxX } = pathBounds(cut?.kind === 'path' ? (cut.paths[0] ?? []) : []);
      const levels = piece.levels.map(({ from, to }) => Math.abs(to.x - from.x));
      expect(maxX - minX).toBeGreaterThan(Math.max(0, ...levels));
    }
  });

  it('has fonts read or says that they cannot be', async () => {
    expect(await measureWords({ regular: new Uint8Array([1, 2, 3]), bold: fonts.bold })).toBeNull();
  });

  it('refuses nothing to print', () => {
    const request = { ...requestOn('a4'), garment: { ...size.garment, pieces: [] } };
    expect(drawPageMap(request, () => 0)).toMatchObject({ ok: false, problem: { code: 'formats.nothing-to-print' } });
  });
});
