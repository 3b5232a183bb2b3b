import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { sentence } from '../words/index.ts';
import type { Measures, SurveyBody, Wearer } from './index.ts';
import {
  askedFirst,
  bodyFromSurveyRow,
  checkMeasure,
  completeMeasures,
  describeMeasure,
  doubtfulMeasures,
  latestMeasures,
  measureGroups,
  measureIds,
  readWearer,
  surveyBodies,
  wearerSchema,
} from './index.ts';

const shared = join(import.meta.dirname, '../../../shared/data/bodies');
const survey = (name: 'women' | 'men'): readonly SurveyBody[] => {
  const read = surveyBodies(readFileSync(join(shared, `ansur2-${name}.csv`), 'utf8'), name);
  if (!read.ok) throw new Error(read.problem.code);
  return read.value;
};

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

describe('surveyed bodies', () => {
  let women: readonly SurveyBody[];
  let men: readonly SurveyBody[];
  beforeAll(() => {
    women = survey('women');
    men = survey('men');
  });
  const all = () => [...women, ...men];
  const mean = (bodies: readonly SurveyBody[], of: (m: Required<Measures>) => number) =>
    bodies.reduce((sum, body) => sum + of(body.measures as Required<Measures>), 0) / bodies.length;

  it('are all read whole', () => {
    expect(women).toHaveLength(1390);
    expect(men).toHaveLength(2857);
    for (const body of all()) expect(body).toMatchObject({ missing: [], problem: null });
  });
  it('have only measures somebody could have, the direct ones as surveyed', () => {
    for (const { measures, columns, row } of all()) {
      for (const id of measureIds)
        expect(checkMeasure(id, measures[id] ?? 0, 'adult').ok, `${id} of row ${row}`).toBe(true);
      expect(measures.bustGirth).toBe(columns.chestcircumference);
      expect(measures.acrossBack).toBe(columns.interscyei);
      expect(measures.insideLeg).toBe(columns.crotchheight);
    }
  });
  it('are torsos that can be drafted for', () => {
    for (const { measures, row } of all()) {
      const m = measures as Required<Measures>;
      const where = `row ${row}`;
      expect(m.upperBustGirth, where).toBeLessThan(m.bustGirth);
      expect(m.frontWaistLength, where).toBeGreaterThan(m.backWaistLength);
      expect(m.backWaistLength - m.armholeDepth, where).toBeGreaterThan(120);
      expect(m.shoulderDrop / m.shoulderLength, where).toBeLessThan(Math.sin((38 * Math.PI) / 180));
      expect(m.bustDepth, where).toBeLessThan(m.frontWaistLength - 60);
      expect(m.crotchLengthFront + m.crotchLengthBack).toBeCloseTo(m.crotchLength, 6);
      expect(m.wristGirth, where).toBeLessThan(m.handGirth);
      expect(m.waistHeight, where).toBeLessThan(m.napeHeight);
    }
  });
  it('stand near what body charts of the trade show for their mean', () => {
    expect(mean(women, (m) => m.bustGirth - m.upperBustGirth)).toBeCloseTo(50, 0);
    const rise = mean(women, (m) => m.bodyRise);
    expect(rise).toBeGreaterThan(250);
    expect(rise).toBeLessThan(290);
    // 85.5 % of stature is where charts put a woman's nape; the waist lies 37–39 % of stature under the crown.
    expect(mean(women, (m) => m.waistHeight / m.stature)).toBeCloseTo(0.63, 2);
    expect(mean(women, (m) => (m.shoulderDrop / m.shoulderLength) * 57.3)).toBeGreaterThan(18);
    expect(mean(women, (m) => (m.shoulderDrop / m.shoulderLength) * 57.3)).toBeLessThan(23);
  });
  it('lose a measure, and only it, for want of a column', () => {
    const { columns } = women[0] as SurveyBody;
    const { chestheight: _, ...rest } = columns;
    const measures = bodyFromSurveyRow(rest, 'women');
    expect(measures.bustDepth).toBeUndefined();
    expect(measures.frontWaistLength).toBeUndefined();
    expect(measures.bustGirth).toBe(columns.chestcircumference);
  });

  describe('completing', () => {
    const asked = (measures: Measures): Measures =>
      Object.fromEntries(askedFirst.map((id) => [id, measures[id]])) as Measures;

    it('changes nothing that is known and fills in the rest', () => {
      const { measures } = women[7] as SurveyBody;
      const completed = completeMeasures(asked(measures));
      expect(asked(completed.measures)).toEqual(asked(measures));
      expect(completed.estimated).toHaveLength(measureIds.length - askedFirst.length);
      for (const id of measureIds) expect(completed.measures[id]).toBeGreaterThan(0);
      expect(completeMeasures(measures)).toMatchObject({ measures, estimated: [] });
      expect(completeMeasures({})).toMatchObject({ measures: {}, estimated: [] });
    });
    it('is honest about how far off it may be: four in five within its 80 % interval', () => {
      let within = 0;
      let count = 0;
      for (const [bodies, name] of [
        [women, 'women'],
        [men, 'men'],
      ] as const) {
        for (const { measures } of bodies.filter((_, index) => index % 10 === 0)) {
          const completed = completeMeasures(asked(measures), name);
          for (const id of [
            'napeHeight',
            'shoulderLength',
            'acrossBack',
            'wristGirth',
            'insideLeg',
            'thighGirth',
          ] as const) {
            count += 1;
            const off = Math.abs((completed.measures[id] ?? 0) - (measures[id] ?? 0));
            if (off <= 1.2816 * (completed.deviation[id] ?? 0)) within += 1;
          }
        }
      }
      expect(count).toBeGreaterThan(2000);
      expect(within / count).toBeGreaterThan(0.76);
      expect(within / count).toBeLessThan(0.86);
    });
    it('says when a body is not one the survey saw', () => {
      expect(completeMeasures({ stature: 1100, bustGirth: 600 }).outsideSurvey).toEqual(['stature', 'bustGirth']);
      expect(completeMeasures({ stature: 1640, bustGirth: 920 }).outsideSurvey).toEqual([]);
    });
    it('stays possible even for impossible company', () => {
      const completed = completeMeasures({ stature: 900, bustGirth: 2000, wristGirth: 100 }).measures;
      for (const id of measureIds) expect(checkMeasure(id, completed[id] ?? 0, 'adult').ok, id).toBe(true);
    });
  });

  describe('doubting', () => {
    it('finds a slip of the tape and leaves true bodies mostly alone', () => {
      const sample = women.filter((_, index) => index % 5 === 0);
      const troubled = sample.filter(({ measures }) => {
        const { stature, bustGirth, waistGirth, hipGirth, insideLeg, armLength } = measures as Required<Measures>;
        return doubtfulMeasures({ stature, bustGirth, waistGirth, hipGirth, insideLeg, armLength }, 'women').length > 0;
      });
      expect(troubled.length / sample.length).toBeLessThan(0.03);
      const found = sample.filter(({ measures }) => {
        const { stature, bustGirth, waistGirth, hipGirth, insideLeg, armLength } = measures as Required<Measures>;
        const slipped = { stature, bustGirth, waistGirth, hipGirth, insideLeg: insideLeg + 150, armLength };
        return doubtfulMeasures(slipped, 'women')[0]?.measure === 'insideLeg';
      });
      expect(found.length / sample.length).toBeGreaterThan(0.95);
    });
    it('says nothing from two measures', () => {
      expect(doubtfulMeasures({ stature: 1640, insideLeg: 300 }, 'women')).toEqual([]);
    });
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
