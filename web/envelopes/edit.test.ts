import { describe, expect, it } from 'vitest';
import { rehearsalDress } from '../../demo/envelopes.ts';
import { blankEnvelope, longestFigure, readEnvelope } from '../../src/pattern/index.ts';
import { sizesKnown, withBodyRow, withFigure, withoutRow, withoutView, withSizes, withView } from './edit.ts';
import { checkClothWidth, readFigure, writeFigure } from './figures.ts';
import { pastedCells } from './pasted-cells.ts';
import { readSizes } from './sizes.ts';

const figuresOf = (envelope: typeof rehearsalDress, measure: string) =>
  envelope.body.find((row) => row.measure === measure)?.figures;

describe('sizes of an envelope', () => {
  it('given other names keep their figures in their places', () => {
    const renamed = withSizes(rehearsalDress, ['34', '36', '38', '40', '42', '44', '46', '48']);
    expect(figuresOf(renamed, 'bustGirth')).toEqual(figuresOf(rehearsalDress, 'bustGirth'));
    expect(renamed.flat[0]?.size).toBe('40');
    expect(renamed.owned.traced).toEqual(['40']);
    expect(readEnvelope(renamed).ok).toBe(true);
  });

  it('added or taken away leave the figures of the others with their names', () => {
    const more = withSizes(rehearsalDress, ['6', ...rehearsalDress.sizes]);
    expect(figuresOf(more, 'bustGirth')).toEqual([null, ...(figuresOf(rehearsalDress, 'bustGirth') ?? [])]);
    const fewer = withSizes(rehearsalDress, ['16', '18']);
    expect(figuresOf(fewer, 'bustGirth')).toEqual(figuresOf(rehearsalDress, 'bustGirth')?.slice(4, 6));
    expect([fewer.flat, fewer.owned.traced]).toEqual([[], []]);
    for (const envelope of [more, fewer]) expect(readEnvelope(envelope).ok).toBe(true);
  });

  it.each([
    ['8, 10, 12', ['8', '10', '12']],
    ['XS S M L', ['XS', 'S', 'M', 'L']],
    ['8–24', ['8', '10', '12', '14', '16', '18', '20', '22', '24']],
    ['34 - 38', ['34', '36', '38']],
    ['10 tall, 12 tall', ['10 tall', '12 tall']],
    ['S; M; L;', ['S', 'M', 'L']],
  ])('are read from “%s”', (text, sizes) => {
    expect(readSizes(text)).toEqual({ ok: true, value: sizes });
  });

  it.each([
    ['', 'web.no-sizes'],
    [' , ,', 'web.no-sizes'],
    ['8, 10, 8', 'web.sizes-twice'],
    ['one name that is far too long for a size of anything,', 'web.size-too-long'],
    [Array.from({ length: 80 }, (_, count) => count).join(','), 'web.sizes-too-many'],
  ])('“%s” is refused', (text, code) => {
    const read = readSizes(text);
    expect(read.ok ? read.value : read.problem.code).toBe(code);
  });
});

describe('rows and views', () => {
  it('an envelope only begun knows no sizes yet', () => {
    expect(sizesKnown(blankEnvelope({ name: 'Ferry coat' }))).toBe(false);
    expect(sizesKnown(rehearsalDress)).toBe(true);
  });

  it('a figure goes into its cell and nowhere else; a row is there once', () => {
    const changed = withFigure(rehearsalDress, 'finished', 1, 2, 900);
    expect(changed.finished[1]?.figures[2]).toBe(900);
    expect(changed.finished[0]).toEqual(rehearsalDress.finished[0]);
    expect(withBodyRow(rehearsalDress, 'bustGirth')).toBe(rehearsalDress);
    expect(withBodyRow(rehearsalDress, 'upperArmGirth').body.at(-1)?.figures).toEqual(
      rehearsalDress.sizes.map(() => null),
    );
    expect(withoutRow(rehearsalDress, 'body', 0).body).toHaveLength(3);
  });

  it('a view takes its own rows away with it, and only those', () => {
    const without = withoutView(withView(rehearsalDress, 'D', 'View D'), 'B');
    expect(without.views.map(({ id }) => id)).toEqual(['A', 'C', 'D']);
    expect(without.finished.some(({ view }) => view === 'B')).toBe(false);
    expect(without.finished.filter(({ view }) => view === null)).toHaveLength(2);
    expect(readEnvelope(without).ok).toBe(true);
  });
});

describe('a cell', () => {
  const most = longestFigure.body;
  it.each([
    ['34 1/2', 'in', 'measure', '34½'],
    ['34–36', 'in', 'measure', '34–36'],
    ['87,5', 'cm', 'measure', '87.5'],
    ['15 15/16', 'in', 'measure', '15¹⁵⁄₁₆'],
    ['2 3/8', 'in', 'cloth', '2⅜'],
    ['1.85', 'cm', 'cloth', '1.85'],
    ['–', 'in', 'measure', ''],
    ['', 'in', 'measure', ''],
  ] as const)('typed “%s” in %s (%s) is shown as %s, and reads back the same', (typed, unit, purpose, shown) => {
    const read = readFigure(typed, unit, purpose, most);
    if (!read.ok) throw new Error(read.problem.code);
    const written = writeFigure(read.value, unit, purpose);
    expect(written).toBe(shown);
    expect(readFigure(written, unit, purpose, most)).toEqual(read);
  });

  it('refuses what is no figure', () => {
    expect(readFigure('twenty', 'in', 'measure', most).ok).toBe(false);
    expect(readFigure('36–34', 'in', 'measure', most).ok).toBe(false);
  });

  it.each(['0', '0–34', '1200'])('refuses “%s” cm, with which the envelope could not be stored', (typed) => {
    expect(readFigure(typed, 'cm', 'measure', most)).toMatchObject({ problem: { code: 'web.figure-outside' } });
  });
});

describe('cells pasted into a chart', () => {
  const paste = (text: string) =>
    pastedCells(text, { row: 1, column: 2 }, { rows: 3, columns: 4 }, (cell) =>
      readFigure(cell, 'cm', 'measure', longestFigure.body),
    );
  it('fill the places from the first on', () => {
    expect(paste('80\t84\n–\t92\n')).toEqual({
      read: [
        { row: 1, column: 2, figure: 800 },
        { row: 1, column: 3, figure: 840 },
        { row: 2, column: 2, figure: null },
        { row: 2, column: 3, figure: 920 },
      ],
      unread: [],
      outside: [],
    });
  });
  it('that do not read, or reach past it, are told and not lost without a word', () => {
    const { read, unread, outside } = paste('80\tten\t88\t\n81\t85\n82\t86');
    expect(read.map(({ figure }) => figure)).toEqual([800, 810, 850]);
    expect([unread, outside]).toEqual([['ten'], ['88', '82', '86']]);
  });
});

it('the width of cloth is one it could be stored with', () => {
  for (const mm of [0, 1.4, 6000]) expect(checkClothWidth(mm)).toMatchObject({ ok: false });
  const [row] = rehearsalDress.clothNeeded;
  for (const width of [50, 1150, 5000]) {
    expect(checkClothWidth(width)).toEqual({ ok: true, value: width });
    expect(readEnvelope({ ...rehearsalDress, clothNeeded: [{ ...row, width }] }).ok).toBe(true);
  }
});
