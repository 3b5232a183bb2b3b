import { describe, expect, it } from 'vitest';
import { surveyBodies } from '../src/body/index.ts';
import { type HousePattern, housePatterns } from '../src/drafting/index.ts';
import { garmentComplaints, shapeComplaints } from '../src/drafting/testing/house-harness.ts';
import { clothQuestions } from '../src/lay/index.ts';
import { stratified } from './oracle/bodies.ts';
import { sharedText } from './shared-data.ts';

/** What keeps a garment from being laid on cloth; a piece wider than some cloth is no fault of the draft. */
const layComplaints = (house: HousePattern, view: string): readonly string[] =>
  [house.pattern({ view })].flatMap(({ cloth, sizes }) =>
    sizes.flatMap(({ id, garment }) =>
      clothQuestions(garment, cloth).flatMap(({ layer, width, refusal }) =>
        refusal && refusal.code !== 'lay.wider-than-cloth' ? [`${id}: ${layer} on ${width}: ${refusal.code}`] : [],
      ),
    ),
  );

describe('house patterns on cloth', () => {
  it.each(housePatterns.flatMap((house) => house.views.map(({ id }) => ({ id: house.id, house, view: id }))))(
    'can be laid in every size: $id, $view',
    ({ house, view }) => {
      expect(layComplaints(house, view)).toEqual([]);
    },
  );
});

/** Every view of every house pattern, and the survey whose bodies it is for. */
const asked = housePatterns.flatMap((house) =>
  house.for === 'child' ? [] : house.views.map(({ id }) => ({ id: house.id, house, view: id, survey: house.for })),
);

describe('the shape of drafts for surveyed bodies', () => {
  it.skipIf(sharedText('bodies/ansur2-women.csv') === null).each(asked)(
    'is what a cutter would draw: $id, $view, for 200 $survey',
    ({ house, view, survey }) => {
      const csv = sharedText(`bodies/ansur2-${survey}.csv`);
      if (csv === null) return;
      const bodies = surveyBodies(stratified(csv, 200), survey as 'women' | 'men');
      if (!bodies.ok) throw new Error('nothing to draft for');
      expect(bodies.value).toHaveLength(200);
      const complaints = bodies.value.flatMap(({ row, measures }) => {
        const garment = house.draft(measures, { view });
        if (!garment.ok) return [`row ${row}: ${garment.problem.code}`];
        return [...garmentComplaints(garment.value), ...shapeComplaints(house, view, garment.value, measures)].map(
          (complaint) => `row ${row}: ${complaint}`,
        );
      });
      expect(complaints).toEqual([]);
    },
  );
});
