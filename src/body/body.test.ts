import { describe, expect, it } from 'vitest';
import { sentence } from '../words/index.ts';
import type { Wearer } from './index.ts';
import {
  askedFirst,
  checkMeasure,
  describeMeasure,
  latestMeasures,
  measureGroups,
  measureIds,
  readWearer,
  surveyBodies,
  wearerSchema,
} from './index.ts';

describe('descriptions', () => {
  it('cover every measure once, in groups', () => {
    expect(measureGroups.flatMap((group) => group.measures).toSorted()).toEqual([...measureIds].toSorted());
    for (const group of measureGroups) expect(group.name).not.toBe('');
  });
  it('ask first what the trade asks first', () => {
    expect([...askedFirst].toSorted()).toEqual(
      ['stature', 'bustGirth', 'upperBustGirth', 'waistGirth', 'hipGirth', 'backWaistLength', 'armLength'].toSorted(),
    );
  });
  it.each(measureIds)('%s says how it is taken, and its ranges enclose one another', (id) => {
    const measure = describeMeasure(id);
    expect(measure.how).toMatch(/\.$/);
    const { adult, child } = measure.possible;
    expect(adult[0]).toBeLessThanOrEqual(measure.usual[0]);
    expect(measure.usual[0]).toBeLessThan(measure.usual[1]);
    expect(measure.usual[1]).toBeLessThanOrEqual(adult[1]);
    expect(child[0]).toBeLessThan(adult[0] + 1);
    expect(child[1]).toBeLessThan(adult[1]);
  });
  it('refuse what nobody has, in a sentence', () => {
    const refused = checkMeasure('bustGirth', 98);
    expect(refused.ok).toBe(false);
    if (refused.ok) return;
    expect(sentence(refused.problem, 'cm').message).toBe(
      '9.8\u00a0cm cannot be a bust girth: nobody’s is under 30.0\u00a0cm or over 220.0\u00a0cm.',
    );
    for (const wrong of [Number.NaN, Number.POSITIVE_INFINITY, -1, 0])
      expect(checkMeasure('stature', wrong).ok).toBe(false);
    expect(checkMeasure('stature', 700, 'child').ok).toBe(true);
    expect(checkMeasure('stature', 700, 'adult').ok).toBe(false);
  });
});

describe('a wearer', () => {
  const wearer: Wearer = {
    format: 'easewright-wearer/1',
    name: 'Maren',
    comparedWith: 'women',
    note: '',
    sets: [
      {
        id: 'b',
        date: '2026-03-14',
        waistAt: 'narrowest',
        note: '',
        readings: [
          { measure: 'waistGirth', side: 'both', mm: 800, written: '80 cm' },
          { measure: 'waistGirth', side: 'both', mm: 804, written: '80.4 cm' },
          { measure: 'shoulderDrop', side: 'left', mm: 52, written: '5.2 cm' },
          { measure: 'shoulderDrop', side: 'right', mm: 44, written: '4.4 cm' },
          { measure: 'upperArmGirth', side: 'left', mm: 300, written: '30' },
          { measure: 'upperArmGirth', side: 'right', mm: 306, written: '30.6' },
        ],
      },
      {
        id: 'a',
        date: '2025-01-02',
        waistAt: 'narrowest',
        note: '',
        readings: [
          { measure: 'waistGirth', side: 'both', mm: 780, written: '78 cm' },
          { measure: 'hipGirth', side: 'both', mm: 1010, written: '101 cm' },
        ],
      },
    ],
  };
  it('is measured by the latest reading of each measure, whatever order the sets stand in', () => {
    expect(latestMeasures(wearer)).toEqual({ waistGirth: 804, hipGirth: 1010, shoulderDrop: 44, upperArmGirth: 306 });
    expect(latestMeasures(wearer, '2025-12-31')).toEqual({ waistGirth: 780, hipGirth: 1010 });
    expect(latestMeasures(wearer, '2024-12-31')).toEqual({});
  });
  it('lets a later reading of both sides stand for what was read apart', () => {
    const set = wearer.sets[0];
    if (!set) throw new Error('no set');
    const readings = [...set.readings, { measure: 'upperArmGirth', side: 'both', mm: 290, written: '29' } as const];
    expect(latestMeasures({ ...wearer, sets: [{ ...set, readings }] }).upperArmGirth).toBe(290);
  });
  it('passes the schema and comes back the same', () => {
    expect(wearerSchema.parse(JSON.parse(JSON.stringify(wearer)))).toEqual(wearer);
    expect(readWearer(JSON.parse(JSON.stringify(wearer)))).toEqual({ ok: true, value: wearer });
  });
  it('keeps alterations usual for her, and refuses one without a day', () => {
    const kept = {
      id: 'u1',
      alteration: 'full-bust',
      version: 1,
      params: { amount: 15, side: 'both' },
      reason: 'Drag lines from the bust on the first blouse',
      madeAs: 'Concert blouse',
      make: 'make-1',
      kind: 'top',
      date: '2026-03-14',
    } as const;
    const usual = { ...wearer, usual: [kept] };
    expect(readWearer(JSON.parse(JSON.stringify(usual)))).toEqual({ ok: true, value: usual });
    expect(readWearer({ ...wearer, usual: [{ ...kept, date: 'in spring' }] })).toMatchObject({
      ok: false,
      problem: { code: 'body.wearer-shape', values: { where: 'usual.0.date' } },
    });
  });
  it.each<[string, unknown, string]>([
    ['nothing', null, 'body.wearer-shape'],
    ['another version', { ...wearer, format: 'easewright-wearer/9' }, 'body.wearer-version'],
    ['a name missing', { ...wearer, name: '  ' }, 'body.wearer-shape'],
    ['a day that is none', { ...wearer, sets: [{ ...wearer.sets[0], date: '2026-02-30' }] }, 'body.wearer-shape'],
    [
      'a measure nobody has',
      {
        ...wearer,
        sets: [{ ...wearer.sets[0], readings: [{ measure: 'hipGirth', side: 'both', mm: 98, written: '98' }] }],
      },
      'body.impossible',
    ],
  ])('is refused with %s', (_, json, code) => {
    expect(readWearer(json)).toMatchObject({ ok: false, problem: { code } });
  });
});

describe('survey files', () => {
  const head = 'stature,chestcircumference,Note';
  it.each<[string, string, string | null]>([
    ['a whole row', '1640,920,"tall, and well"', null],
    ['a short row', '1640,920', 'body.row-length'],
    ['a word for a length', 'tall,920,', 'body.bad-cell'],
    ['a negative length', '-1640,920,', 'body.bad-cell'],
    ['an empty cell', ',920,', null],
  ])('%s', (_, line, code) => {
    const read = surveyBodies(`\ufeff${head}\r\n${line}\r\n`, 'women');
    expect(read.ok && read.value).toMatchObject([{ row: 1, problem: code === null ? null : { code } }]);
  });
  it('without known columns are refused', () => {
    expect(surveyBodies('a,b\n1,2', 'women')).toMatchObject({ ok: false, problem: { code: 'body.no-columns' } });
    expect(surveyBodies('', 'women')).toMatchObject({ ok: false, problem: { code: 'body.no-columns' } });
  });
});
