import { describe, expect, it } from 'vitest';
import { surveyBodies } from '../src/body/index.ts';
import { blouseShape, housePattern, lookAtShape } from '../src/drafting/index.ts';
import { selfIntersections } from '../src/geometry/index.ts';
import { cutLine } from '../src/pattern/index.ts';
import { stratified } from './oracle/bodies.ts';
import { sharedText } from './shared-data.ts';

const csv = sharedText('bodies/ansur2-women.csv');

describe('the shape of drafts', () => {
  it.skipIf(csv === null)('is what a cutter would draw: the blouse for 200 surveyed women', () => {
    const bodies = surveyBodies(stratified(csv ?? '', 200), 'women');
    const blouse = housePattern('blouse');
    if (!bodies.ok || !blouse) throw new Error('nothing to draft');
    expect(bodies.value).toHaveLength(200);
    const complaints = bodies.value.flatMap(({ row, measures }) => {
      const garment = blouse.draft(measures);
      if (!garment.ok) return [`row ${row}: ${garment.problem.code}`];
      const crossed = garment.value.pieces.filter((piece) => selfIntersections(cutLine(piece)).length > 0);
      return [
        ...crossed.map((piece) => `row ${row}: the cut line of ${piece.id} crosses itself`),
        ...lookAtShape(blouseShape, garment.value, measures)
          .filter(({ ok }) => !ok)
          .map(({ check, value }) => `row ${row}: ${check} ${value.toFixed(2)}`),
      ];
    });
    expect(complaints).toEqual([]);
  });
});
