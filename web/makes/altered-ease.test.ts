import { describe, expect, it } from 'vitest';
import { applyAlterations } from '../../src/alter/index.ts';
import { housePatterns } from '../../src/drafting/index.ts';
import { fitPattern, patternFigures } from '../../src/fit/index.ts';
import { easeAsAltered, fitAsAltered } from './altered-ease.ts';

const pattern = housePatterns.find((house) => house.id === 'blouse')?.pattern();
if (!pattern) throw new Error('there is no blouse');
const figures = patternFigures(pattern);
const size = pattern.sizes[4];
if (!size) throw new Error('the blouse lacks sizes');
const fit = fitPattern({ measures: size.body, pattern, figures, size: size.id });
if (!fit.ok) throw new Error(fit.problem.code);

const fullBust = { id: 's1', alteration: 'full-bust', version: 1, on: true, params: { amount: 15 } };

describe('ease as altered', () => {
  it('is the pattern’s own while nothing is altered', () => {
    const cells = easeAsAltered(fit.value, figures, size, size.garment, null);
    expect(cells).toEqual(fit.value.sizes[4]?.cells);
  });

  it('has at the bust what a full bust puts in, and leaves what is usual where it was', () => {
    const { garment, refusal } = applyAlterations(size.garment, [fullBust]);
    expect(refusal).toBeNull();
    const before = fit.value.sizes[4]?.cells.find((cell) => cell.level === 'bust');
    const cells = easeAsAltered(fit.value, figures, size, garment, null);
    const after = cells.find((cell) => cell.level === 'bust');
    expect((after?.ease ?? 0) - (before?.ease ?? 0)).toBeCloseTo(30, 0);
    expect([after?.low, after?.high]).toEqual([before?.low, before?.high]);
    expect(fitAsAltered(fit.value, size.id, cells).sizes[4]?.cells).toBe(cells);
  });
});
