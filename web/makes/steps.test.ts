import { describe, expect, it } from 'vitest';
import { alterationCatalogue } from '../../src/alter/index.ts';
import { housePattern } from '../../src/drafting/index.ts';
import type { Way } from '../../src/fit/index.ts';
import { makeSchema } from '../../src/make/index.ts';
import { newMake } from '../app/documents.ts';
import {
  addStep,
  alterationOf,
  begunIn,
  changeStep,
  moveStep,
  newStep,
  removeStep,
  setParam,
  sliderRange,
  withWay,
} from './steps.ts';

const start = newMake('Blouse', 'w', 'house:blouse', null, 'a4');
const [first, second] = alterationCatalogue;
if (!first || !second) throw new Error('the catalogue is empty');

describe('an alteration list', () => {
  it('takes every alteration of the catalogue, as usually begun and within its limits', () => {
    for (const alteration of alterationCatalogue) {
      const step = newStep(alteration, []);
      expect(alterationOf(step)).toBe(alteration);
      for (const [name, parameter] of Object.entries(alteration.params)) {
        const value = step.params[name];
        if (parameter.unit === 'choice') expect(parameter.choices).toContain(value);
        else if (parameter.unit === 'named') expect(value).toBeUndefined();
        else expect(value).toSatisfy((mm: number) => mm >= parameter.min && mm <= parameter.max);
      }
    }
  });

  it('is added to, switched, reordered and taken from, and stays a make the workroom keeps', () => {
    let make = addStep(addStep(addStep(start, first), second), first);
    const ids = make.steps.map((step) => step.id);
    expect(new Set(ids).size).toBe(3);
    make = moveStep(make, ids[2] ?? '', -1);
    expect(make.steps.map((step) => step.id)).toEqual([ids[0], ids[2], ids[1]]);
    expect(moveStep(make, ids[0] ?? '', -1)).toEqual(make);
    make = changeStep(make, ids[1] ?? '', { on: false });
    make = setParam(make, ids[0] ?? '', 'amount', 12.7);
    expect(make.steps.map((step) => step.on)).toEqual([true, true, false]);
    expect(make.steps[0]?.params.amount).toBe(12.7);
    make = removeStep(make, ids[0] ?? '');
    const again = addStep(make, second);
    expect(new Set(again.steps.map((step) => step.id)).size).toBe(3);
    expect(makeSchema.safeParse(again).success).toBe(true);
  });

  it('takes a way’s suggestions in place of another’s and keeps what she added', () => {
    const bust = { id: 'full-bust', alteration: 'full-bust', version: 1, on: true, params: { amount: 12 } };
    const length = {
      ...bust,
      id: 'length-sleeve',
      alteration: 'lengthen-shorten',
      params: { amount: 20, where: 'sleeve' },
    };
    const way = (startingSize: string, ...alterations: (typeof bust | typeof length)[]): Way => ({
      startingSize,
      front: startingSize,
      back: startingSize,
      blend: [],
      ease: [],
      alterations: alterations.map((one) => ({
        ...one,
        total: 24,
        perPiece: 12,
        count: 2,
        counted: 'pieces' as const,
      })),
      minutes: 0,
      reasons: [],
    });
    const ways = [way('4', bust, length), way('5', length)];
    const [four, five] = ways;
    if (!four || !five) throw new Error('two ways are needed');
    const taken = withWay(addStep(start, second), four, ways);
    expect([taken.size, ...taken.steps.map((step) => step.id)]).toEqual(['4', 'full-bust', 'length-sleeve', 's1']);
    const other = withWay(taken, five, ways);
    expect([other.size, ...other.steps.map((step) => step.id)]).toEqual(['5', 'length-sleeve', 's1']);
    expect(makeSchema.safeParse(other).success).toBe(true);
  });

  it('has slider stops inside the limits in either unit', () => {
    for (const unit of ['cm', 'in'] as const) {
      const range = sliderRange({ unit: 'mm', min: 1, max: 60, usual: [6, 30] }, unit);
      expect(range.least * range.stop).toBeGreaterThanOrEqual(1);
      expect(range.most * range.stop).toBeLessThanOrEqual(60);
      expect((range.most + 1) * range.stop).toBeGreaterThan(60);
    }
  });
});

describe('a step begun on a garment', () => {
  it('writes down what it names, so that it means the same when the list is put in another order', () => {
    const garment = housePattern('blouse')?.pattern().sizes[0]?.garment;
    const moveDart = alterationCatalogue.find(({ id }) => id === 'move-dart');
    if (!garment || !moveDart) throw new Error('no dart to move');
    const begun = begunIn(moveDart, garment);
    expect(begun['dart']).toBe('front/bust');
    expect(moveDart.options?.(garment, 'to', begun)).toContain(begun['to']);
  });
});
