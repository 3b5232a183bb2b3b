import { beforeAll, describe, expect, it } from 'vitest';
import type { Measures, SurveyBody } from '../src/body/index.ts';
import {
  askedFirst,
  bodyFromSurveyRow,
  checkMeasure,
  completeMeasures,
  doubtfulMeasures,
  measureIds,
  surveyBodies,
} from '../src/body/index.ts';
import { housePattern } from '../src/drafting/index.ts';
import { fitPattern, patternFigures } from '../src/fit/index.ts';
import { sharedText } from './shared-data.ts';

const survey = (name: 'women' | 'men'): readonly SurveyBody[] => {
  const read = surveyBodies(sharedText(`bodies/ansur2-${name}.csv`) ?? '', name);
  if (!read.ok) throw new Error(read.problem.code);
  return read.value;
};

describe.skipIf(sharedText('bodies/ansur2-women.csv') === null)('surveyed bodies', () => {
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

describe.skipIf(sharedText('bodies/ansur2-women.csv') === null)('surveyed women and the blouse', () => {
  it('all get an answer, and none a bust she cannot breathe in', () => {
    const house = housePattern('blouse');
    if (!house) throw new Error('no blouse');
    const pattern = house.pattern();
    const figures = patternFigures(pattern);
    const ways = survey('women').map(({ row, measures }) => {
      const answer = fitPattern({ pattern, figures, measures });
      if (!answer.ok) throw new Error(`row ${row}: ${answer.problem.code}`);
      return { row, way: answer.value.ways[answer.value.recommended] };
    });
    expect(ways).toHaveLength(1390);
    const altered = ways.filter(({ way }) => way?.alterations.some((step) => step.alteration.endsWith('-bust')));
    console.log(`bust altered for ${altered.length} of ${ways.length} surveyed women`);
    const tight = ways.filter(({ way }) =>
      way?.ease.some((cell) => cell.level === 'bust' && cell.verdict === 'too-tight'),
    );
    expect(tight.map(({ row }) => row)).toEqual([]);
  });
});
