import { describe, expect, it } from 'vitest';
import { completeMeasures, measureIds } from '../../src/body/index.ts';
import { pathBounds } from '../../src/geometry/index.ts';
import { drawFigure } from './figure.ts';

const words = { label: 'figure', front: 'front', back: 'back', tape: '' };

describe('the figure', () => {
  it('is drawn for every build, as tall as it measures', () => {
    for (const known of [
      { stature: 1480, bustGirth: 760 },
      { stature: 1650 },
      { stature: 1820, bustGirth: 1300, hipGirth: 1350 },
    ]) {
      for (const survey of ['women', 'men'] as const) {
        const { measures } = completeMeasures(known, survey);
        const drawing = drawFigure(measures, null, words);
        const body = drawing.marks.flatMap((mark) => (mark.kind === 'path' && mark.ink === 'body' ? mark.paths : []));
        const bounds = body.map(pathBounds);
        expect(Math.min(...bounds.map((one) => one.minY))).toBeGreaterThan(-5);
        expect(Math.max(...bounds.map((one) => one.maxY))).toBeLessThan(known.stature + 5);
        expect(body.flatMap((path) => path.flatMap((part) => [part.to.x, part.to.y])).every(Number.isFinite)).toBe(
          true,
        );
      }
    }
  });

  it('is narrow at the waist and broadest where the hip is taken, on a body that is', () => {
    const { measures } = completeMeasures(
      { stature: 1680, bustGirth: 1016, waistGirth: 825.5, hipGirth: 1066.8 },
      'women',
    );
    const breadth = (id: 'bustGirth' | 'waistGirth' | 'hipGirth' | 'thighGirth') => {
      const tape = drawFigure(measures, id, words).marks.find((mark) => mark.kind === 'path' && mark.ink === 'cut');
      const bounds = tape?.kind === 'path' ? tape.paths.map(pathBounds) : [];
      return Math.max(...bounds.map((one) => one.maxX));
    };
    expect(breadth('waistGirth')).toBeLessThan(breadth('bustGirth'));
    expect(breadth('bustGirth')).toBeLessThan(breadth('hipGirth'));
    expect(breadth('thighGirth')).toBeLessThan(breadth('hipGirth'));
  });

  it('shows the tape of every measure that is not a depth', () => {
    const { measures } = completeMeasures({ stature: 1650 }, 'women');
    const without = measureIds.filter(
      (id) => !drawFigure(measures, id, words).marks.some((mark) => mark.kind === 'path' && mark.ink === 'cut'),
    );
    expect(without).toEqual(['chestDepth', 'waistDepth', 'hipDepth']);
  });
});
