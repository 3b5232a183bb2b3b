import { describe, expect, it } from 'vitest';
import { rehearsalDress } from '../../demo/envelopes.ts';
import type { Drawing, GroupMark, Mark, PathMark, TextMark } from '../../src/draw/index.ts';
import { nearestOnPath, pathEnd, pathStart } from '../../src/geometry/index.ts';
import { finishedKinds, flatMeasureGuide } from '../../src/pattern/index.ts';
import { drawBodyChart, drawFinishedChart } from './chart-picture.ts';
import { drawClothNeeded } from './cloth-picture.ts';
import { drawFlatGuide } from './flat-picture.ts';

const groups = (drawing: Drawing | null): readonly GroupMark[] =>
  (drawing?.marks ?? []).filter((mark): mark is GroupMark => mark.kind === 'group');
const paths = (marks: readonly Mark[], ink: PathMark['ink'], filled = false): readonly PathMark[] =>
  marks.filter(
    (mark): mark is PathMark => mark.kind === 'path' && mark.ink === ink && (mark.filled ?? false) === filled,
  );
const texts = (marks: readonly Mark[]): readonly TextMark[] =>
  marks.filter((mark): mark is TextMark => mark.kind === 'text');

const runa = { name: 'Runa', measures: { bustGirth: 1040, waistGirth: 840, hipGirth: 1060 } };
const whole = { narrow: false, row: 0 };

describe('a body chart as a picture', () => {
  const strips = groups(drawBodyChart(rehearsalDress, runa, whole));

  it('has a strip for each measure, sizes in the order of their figures', () => {
    expect(strips.map(({ id }) => id)).toEqual(rehearsalDress.body.map(({ measure }) => `strip-${measure}`));
    for (const strip of strips) {
      const names = texts(strip.marks).filter(({ text, weight }) => weight === 'bold' && /^\d+$/.test(text));
      expect(names.map(({ text }) => text)).toEqual(rehearsalDress.sizes);
      const places = names.map(({ at }) => at.x);
      expect(places).toEqual(places.toSorted((a, b) => a - b));
    }
  });

  it('shows the wearer’s own among them, in words too, and nothing where it was not measured', () => {
    const [bust, , , back] = strips;
    const own = paths(bust?.marks ?? [], 'body');
    expect(own).toHaveLength(1);
    const names = texts(bust?.marks ?? []).filter(({ weight }) => weight === 'bold');
    const at = (size: string) => names.find(({ text }) => text === size)?.at.x ?? 0;
    const x = pathStart(own[0]?.paths[0] ?? []).x;
    // 1040 mm are 40.9 inches: between the 40 of size 16 and the 42 of size 18.
    expect(x > at('16') && x < at('18')).toBe(true);
    expect(texts(bust?.marks ?? []).some(({ text }) => text.includes('between 16 and 18'))).toBe(true);
    expect(paths(back?.marks ?? [], 'body')).toHaveLength(0);
  });

  it('shows on a phone the rows about the one worked in', () => {
    const near = groups(drawFinishedChart(rehearsalDress, runa, { narrow: true, row: 6 }));
    expect(near.map(({ id }) => id)).toEqual(['strip-5', 'strip-6', 'strip-7']);
  });

  it('is none where nothing was typed in', () => {
    expect(drawBodyChart({ ...rehearsalDress, body: [] }, runa, whole)).toBeNull();
  });
});

it('cloth needed lies to scale, a view after the other', () => {
  const drawn = groups(drawClothNeeded(rehearsalDress, '16', whole));
  expect(drawn).toHaveLength(6);
  const [cloth] = paths(drawn[0]?.marks ?? [], 'cloth');
  const xs = (cloth?.paths[0] ?? []).flatMap(({ from }) => from.x);
  expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(45 * 25.4, 6);
  const ys = (cloth?.paths[0] ?? []).flatMap(({ from }) => from.y);
  expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(3.125 * 914.4, 6);
  expect(drawClothNeeded(rehearsalDress, '99', whole)).toBeNull();
});

describe('where the tape goes', () => {
  const kinds = ['top', 'dress', 'jacket', 'coat', 'trousers', 'skirt'] as const;
  it.each(kinds)('is drawn from seam to seam on every piece there is to measure, of a %s', (kind) => {
    for (const of of finishedKinds) {
      const { pieces } = flatMeasureGuide(of, kind);
      const drawn = groups(drawFlatGuide(of, kind, false));
      expect([of, drawn.length]).toEqual([of, pieces.length]);
      for (const group of drawn) {
        const seam = paths(group.marks, 'seam')[0]?.paths[0] ?? [];
        const tape = paths(group.marks, 'body')[0]?.paths[0] ?? [];
        for (const end of [pathStart(tape), pathEnd(tape)]) {
          const off = nearestOnPath(seam, end).distance;
          expect(off, `${kind}, ${of}, ${group.label}: the tape ends ${off.toFixed(1)} mm off the seam`).toBeLessThan(
            12,
          );
        }
      }
    }
  });
});
