import { describe, expect, it } from 'vitest';
import { blouse } from '../drafting/index.ts';
import { sayNotion } from '../draw/index.ts';
import type { Garment } from './index.ts';
import { edgeLength, notionsOf, pieceOf, readPattern, writePattern } from './index.ts';

const garment = blouse.pattern().sizes[4]?.garment as Garment;

describe('notions', () => {
  it('are read off the pieces: a zip from the neck to its notch, up to the next centimetre', () => {
    const back = pieceOf(garment, 'back');
    const notch = back.notches.find(({ id }) => id === 'zip-end')?.at ?? Number.NaN;
    const opening = edgeLength(back, 'centre-back') * (1 - notch);
    const [zip] = notionsOf(garment, blouse.notions());
    expect(zip?.length).toBeGreaterThanOrEqual(opening);
    expect((zip?.length ?? 0) - opening).toBeLessThan(10);
    expect((zip?.length ?? 1) % 10).toBe(0);
  });
  it('follow a body, are counted by their spacing, and give no length where a measure is not known', () => {
    const rules = [
      { what: 'elastic', around: 'waistGirth', share: 0.9, plus: 30, size: 25 },
      { what: 'button', along: [{ piece: 'front', edge: 'centre-front', times: 1 }], every: 85, size: 12 },
    ] as const;
    const [elastic, buttons] = notionsOf(garment, rules, { waistGirth: 740 });
    expect(elastic).toEqual({ what: 'elastic', count: 1, length: 700, size: 25 });
    const front = edgeLength(pieceOf(garment, 'front'), 'centre-front');
    expect(buttons?.count).toBe(Math.ceil(front / 85) + 1);
    expect(notionsOf(garment, rules)[0]?.length).toBeUndefined();
    const studs = { what: 'press-stud', around: 'waistGirth', every: 60, count: 2 } as const;
    expect(notionsOf(garment, [studs], { waistGirth: 600 })).toEqual([{ what: 'press-stud', count: 13 }]);
    expect(notionsOf(garment, [studs])).toEqual([{ what: 'press-stud', count: 2 }]);
  });
  it.each([
    ['piece', { piece: 'tail', edge: 'centre-back', times: 1 }],
    ['edge', { piece: 'back', edge: 'tail', times: 1 }],
  ])('that follow a %s which is not there are refused at the door', (_, along) => {
    const document = writePattern(blouse.pattern()) as object;
    expect(readPattern(document).ok).toBe(true);
    expect(readPattern({ ...document, notions: [{ what: 'zip', along: [along] }] })).toMatchObject({
      ok: false,
      problem: { code: 'pattern.notion-missing', values: { piece: along.piece, edge: along.edge } },
    });
  });
  it('are said in either unit, one and several', () => {
    expect(sayNotion({ what: 'concealed-zip', count: 1, length: 560 }, 'cm')).toMatch(/^concealed zip, 56.0\scm$/);
    expect(sayNotion({ what: 'button', count: 9, size: 12 }, 'cm')).toMatch(/^9 buttons, 1.2\scm across$/);
    expect(sayNotion({ what: 'elastic', count: 2, length: 254, size: 25.4 }, 'in')).toMatch(
      /^2 pieces of elastic, 10″ each, 1″ wide$/,
    );
    expect(sayNotion({ what: 'interfacing', count: 1 }, 'cm')).toBe('interfacing, for the pieces marked');
  });
});
