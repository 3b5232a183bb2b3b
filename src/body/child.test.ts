import { describe, expect, it } from 'vitest';
import { sentence } from '../words/index.ts';
import {
  checkMeasure,
  childBodies,
  childMeasures,
  childProportions,
  childSpread,
  childStatures,
  completeChild,
  type Measures,
  measureIds,
} from './index.ts';

const child = (stature: number) => {
  const measures = childMeasures(stature);
  if (!measures.ok) throw new Error(measures.problem.code);
  return measures.value;
};

const completed = (known: Measures) => {
  const made = completeChild(known);
  if (!made.ok) throw new Error(made.problem.code);
  return made.value;
};

describe('the children’s proportions', () => {
  it.each(measureIds)('%s grows with stature, and is possible three deviations either way', (id) => {
    const written = childProportions[id];
    written.slice(1).forEach((mm, i) => {
      expect(mm).toBeGreaterThan(written[i] ?? Number.NaN);
    });
    for (const stature of [800, ...childStatures, 1580]) {
      const mm = child(stature)[id];
      for (const off of [-3, 0, 3]) {
        expect(checkMeasure(id, mm * (1 + off * childSpread[id].varies), 'child').ok).toBe(true);
      }
    }
  });

  it('gives what is written at its statures, and between two of them in proportion', () => {
    for (const [i, stature] of childStatures.entries()) {
      for (const id of measureIds) expect(child(stature)[id]).toBeCloseTo(childProportions[id][i] ?? Number.NaN, 9);
    }
    expect(child(950).bustGirth).toBeCloseTo(540, 9);
    expect(child(1580).armLength).toBeCloseTo(559 + (559 - 511) / 2, 9);
  });

  it('agrees with itself: heights, lengths and girths are one body’s', () => {
    for (let stature = 860; stature <= 1520; stature += 20) {
      const body = child(stature);
      expect(body.napeHeight - body.waistHeight).toBeLessThan(body.backWaistLength);
      expect(body.backWaistLength - (body.napeHeight - body.waistHeight)).toBeLessThan(20);
      expect(body.bodyRise - (body.waistHeight - body.insideLeg)).toBeCloseTo(12, 0);
      expect(body.crotchLengthFront + body.crotchLengthBack).toBeCloseTo(body.crotchLength, 6);
      expect(body.waistGirth).toBeLessThan(body.bustGirth);
      expect(body.bustGirth).toBeLessThan(body.hipGirth);
      expect(body.acrossFront).toBeLessThan(body.acrossBack);
      expect(body.kneeHeight).toBeLessThan(body.insideLeg);
      expect(body.wristGirth).toBeLessThan(body.handGirth);
      // A body that is neither a plank nor a barrel: girth over breadth and depth together.
      for (const [girth, breadth, depth] of [
        [body.bustGirth, body.chestBreadth, body.chestDepth],
        [body.waistGirth, body.waistBreadth, body.waistDepth],
        [body.hipGirth, body.hipBreadth, body.hipDepth],
      ] as const) {
        expect(girth / (breadth + depth)).toBeGreaterThan(1.65);
        expect(girth / (breadth + depth)).toBeLessThan(1.9);
      }
    }
  });

  it('a child’s head is large and grows slowly, her legs are short and grow fast', () => {
    const [little, big] = [child(860), child(1520)];
    const grown = (id: 'headGirth' | 'bustGirth' | 'insideLeg' | 'backWaistLength') => big[id] / little[id];
    expect(grown('headGirth')).toBeLessThan(1.15);
    expect(grown('backWaistLength')).toBeLessThan(grown('insideLeg'));
    expect(grown('bustGirth')).toBeLessThan(1520 / 860);
    expect(big.insideLeg / 1520 - little.insideLeg / 860).toBeGreaterThan(0.06);
  });

  it('says nothing of statures that are no child’s', () => {
    for (const stature of [799, 1581, Number.NaN]) {
      const refused = childMeasures(stature);
      expect(refused.ok).toBe(false);
      if (!refused.ok) expect(sentence(refused.problem, 'cm').message).not.toMatch(/no words for it|[{]/);
    }
  });
});

describe('a child made whole', () => {
  it('is the chart’s where nothing but the stature is known', () => {
    const { measures, estimated } = completed({ stature: 1130 });
    expect(measures).toEqual(child(1130));
    expect(estimated).toHaveLength(measureIds.length - 1);
  });

  it('keeps what is known, and changes what goes with it by less than as much', () => {
    const known = { stature: 1220, bustGirth: 700, waistGirth: 660 };
    const { measures, estimated, deviation } = completed(known);
    expect(measures).toMatchObject(known);
    expect(estimated).not.toContain('bustGirth');
    const plump = measures.upperArmGirth / child(1220).upperArmGirth;
    expect(plump).toBeGreaterThan(1.08);
    expect(plump).toBeLessThan(1.2);
    expect(measures.insideLeg).toBe(child(1220).insideLeg);
    expect(measures.headGirth).toBe(child(1220).headGirth);
    // What is known makes the rest surer.
    const alone = completed({ stature: 1220 }).deviation;
    expect(deviation.hipGirth ?? 0).toBeLessThan(0.6 * (alone.hipGirth ?? 0));
    expect(deviation.headGirth).toBe(alone.headGirth);
  });

  it('makes a longer arm’s hand a little larger, and nothing thicker', () => {
    const { measures } = completed({ stature: 1220, armLength: 460 });
    expect(measures.handGirth).toBeGreaterThan(child(1220).handGirth);
    expect(measures.bustGirth).toBe(child(1220).bustGirth);
  });

  it('needs the stature', () => {
    const refused = completeChild({ bustGirth: 600 });
    expect(refused).toMatchObject({ ok: false, problem: { code: 'body.no-stature' } });
  });
});

describe('a file of children', () => {
  it('is read by our own measures’ names; empty cells are not measured, other columns ignored', () => {
    const read = childBodies('name,stature,bustGirth,armLength\n"Ivo, small",980,545,\nRune,1340,,480\n');
    expect(read).toEqual({
      ok: true,
      value: [
        { row: 1, measures: { stature: 980, bustGirth: 545 }, problem: null },
        { row: 2, measures: { stature: 1340, armLength: 480 }, problem: null },
      ],
    });
  });

  it('refuses a file without stature, and lets a bad row be without losing the others', () => {
    expect(childBodies('bustGirth\n600')).toMatchObject({ ok: false, problem: { code: 'body.no-stature-column' } });
    const read = childBodies('stature,bustGirth\n1100,sixty\n1100\n110,600\n,600\n1100,600');
    if (!read.ok) throw new Error('refused');
    expect(read.value.map(({ problem }) => problem?.code ?? null)).toEqual([
      'body.bad-cell',
      'body.row-length',
      'body.impossible',
      'body.no-stature',
      null,
    ]);
    for (const { problem } of read.value) {
      if (problem) expect(sentence(problem, 'cm').message).not.toMatch(/no words for it|[{]/);
    }
  });
});
