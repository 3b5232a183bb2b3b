import { describe, expect, it } from 'vitest';
import { alterationCatalogue, applyAlterations } from '../src/alter/index.ts';
import { surveyBodies } from '../src/body/index.ts';
import { housePattern } from '../src/drafting/index.ts';
import { fitPattern, patternFigures } from '../src/fit/index.ts';
import { dartsOf, finishedGirths, readAlterationList } from '../src/pattern/index.ts';
import { sharedText } from './shared-data.ts';

const house = housePattern('blouse');
if (!house) throw new Error('no blouse');
const blouse = house.pattern();
const figures = patternFigures(blouse);

const csv = sharedText('bodies/ansur2-women.csv');
const read = surveyBodies(csv ?? 'stature', 'women');
if (!read.ok) throw new Error(read.problem.code);
const bodies = read.value.filter((_, index) => index % 20 === 0);

describe('the bust dart a full bust opens', () => {
  it('is as wide as was foretold', () => {
    for (const [index, more] of [
      [0, 56],
      [4, 56],
      [4, 110],
      [9, 90],
    ] as const) {
      const size = blouse.sizes[index];
      if (size?.body.bustGirth === undefined) throw new Error('no bust on the chart');
      const measures = { ...size.body, bustGirth: size.body.bustGirth + more };
      const answer = fitPattern({ pattern: blouse, figures, measures });
      if (!answer.ok) throw new Error(answer.problem.code);
      const way = answer.value.ways.find(({ startingSize }) => startingSize === size.id);
      const foretold = way?.reasons.find(({ code }) => code === 'fit.bust-dart-wide')?.values?.intake;
      if (!way || typeof foretold !== 'object') throw new Error(`nothing foretold of size ${size.id}`);
      const { garment, refusal } = applyAlterations(size.garment, way.alterations);
      expect(refusal).toBeNull();
      const intakes = garment.pieces.flatMap((piece) => dartsOf(piece).map((dart) => dart.intake));
      expect(Math.max(...intakes)).toBeCloseTo(foretold.mm, 3);
    }
  });
});

describe.skipIf(csv === null)('what a fit suggests', () => {
  const answers = bodies.map(({ row, measures }) => {
    const answer = fitPattern({ pattern: blouse, figures, measures });
    if (!answer.ok) throw new Error(answer.problem.code);
    return { row, fit: answer.value };
  });
  const ways = answers.flatMap(({ row, fit }) => fit.ways.map((way) => ({ row, way })));

  it('is a list of alterations that exist, within their limits, as it stands', () => {
    for (const { row, way } of ways) {
      const list = readAlterationList({
        format: 'easewright-alterations/1',
        pattern: 'blouse',
        steps: way.alterations,
      });
      expect(list.ok, `row ${row} ${JSON.stringify(list)}`).toBe(true);
      for (const step of way.alterations) {
        const known = alterationCatalogue.find(({ id, version }) => id === step.alteration && version === step.version);
        for (const name of Object.keys(step.params)) expect(known?.params).toHaveProperty([name]);
        const amount = known?.params.amount;
        if (amount?.unit !== 'mm') throw new Error(`${step.alteration} takes no amount`);
        expect(step.params.amount).toBeGreaterThanOrEqual(amount.min);
        expect(step.params.amount).toBeLessThanOrEqual(amount.max);
      }
    }
  });

  it('can be done, and gives the ease foretold', () => {
    const refused: string[] = [];
    const off: Record<string, number[]> = {};
    for (const { row, way } of ways) {
      const garment = blouse.sizes.find(({ id }) => id === way.startingSize)?.garment;
      if (!garment) throw new Error(`no size ${way.startingSize}`);
      const altered = applyAlterations(garment, way.alterations);
      if (altered.refusal) {
        refused.push(
          `row ${row} size ${way.startingSize}: ${altered.refusal.step} ${altered.refusal.problem.code} ${JSON.stringify(way.alterations.map((step) => [step.id, step.params.amount]))}`,
        );
        continue;
      }
      for (const girth of finishedGirths(altered.garment)) {
        const foretold = way.ease.find(({ level }) => level === girth.level)?.finished ?? Number.NaN;
        off[girth.level] = [...(off[girth.level] ?? []), Math.abs(girth.finished - foretold)];
      }
    }
    const worst = Object.fromEntries(Object.entries(off).map(([level, all]) => [level, Math.max(...all).toFixed(1)]));
    console.log(
      `foretold ease is off by at most ${JSON.stringify(worst)} mm; refused ${refused.length} of ${ways.length}`,
    );
    // A refusal is a sentence with the largest amount that holds, never a fault; but it should be rare.
    expect(refused, refused.join('\n')).toHaveLength(0);
    for (const [level, all] of Object.entries(off)) {
      // Lengthening draws the side seam anew from corner to corner, which moves a width a little.
      expect(Math.max(...all), level).toBeLessThanOrEqual(3);
    }
  });
});
