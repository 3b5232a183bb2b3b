import { describe, expect, it } from 'vitest';
import { alterationCatalogue } from '../../src/alter/index.ts';
import { housePattern } from '../../src/drafting/index.ts';
import { sayNamed } from '../../src/draw/index.ts';
import { newMake } from '../app/documents.ts';
import { waysOf } from './alteration-words.ts';
import { findAlterations } from './find-alteration.ts';
import { addStep, copyStep, putBack, removeStep } from './steps.ts';

const garmentOf = (id: 'blouse' | 'skirt') => {
  const garment = housePattern(id)?.pattern().sizes[0]?.garment;
  if (!garment) throw new Error(`no ${id}`);
  return garment;
};

describe('finding an alteration', () => {
  it('shows all, by family or as lacking something', () => {
    const found = findAlterations(alterationCatalogue, garmentOf('skirt'), '');
    const able = found.families.flatMap(({ alterations }) => alterations);
    expect(able.length + found.lacking.length).toBe(alterationCatalogue.length);
    expect(found.lacking.map(({ alteration }) => alteration.id)).toContain('full-bust');
  });
  it('takes words of the name or of what it is for, in any order', () => {
    const ids = findAlterations(alterationCatalogue, garmentOf('blouse'), 'BUST fuller')
      .families.flatMap(({ alterations }) => alterations)
      .map(({ id }) => id);
    expect(ids).toContain('full-bust');
    expect(ids).not.toContain('lengthen-shorten');
  });
});

describe('words of a step', () => {
  it('name what a parameter names as the trade does', () => {
    const blouse = garmentOf('blouse');
    expect(sayNamed(blouse, 'piece', 'front')).toBe('Front');
    expect(sayNamed(blouse, 'edge', 'front/armhole')).toBe('Front armhole');
    expect(sayNamed(blouse, 'edge', 'gone/armhole')).toBe('Armhole');
  });
  it('say the two ways of an amount in its own words, or in general ones', () => {
    expect(waysOf('lengthen-shorten')).toEqual({ more: 'Lengthen', less: 'Shorten' });
    expect(waysOf('full-bust')).toEqual({ more: 'Add', less: 'Take out' });
  });
});

describe('a step of the list', () => {
  const [first] = alterationCatalogue;
  if (!first) throw new Error('the catalogue is empty');
  const make = addStep(addStep(newMake('Blouse', 'w', 'house:blouse', null, 'a4'), first), first);
  it('is copied right after itself, under a name of its own', () => {
    const copied = copyStep(make, make.steps[0]?.id ?? '');
    expect(copied.steps.map(({ params }) => params)).toEqual([0, 0, 1].map((i) => make.steps[i]?.params));
    expect(new Set(copied.steps.map(({ id }) => id)).size).toBe(3);
  });
  it('is put back where it was', () => {
    const [step] = make.steps;
    if (!step) throw new Error('no step');
    expect(putBack(removeStep(make, step.id), step, 0)).toEqual(make);
  });
});
