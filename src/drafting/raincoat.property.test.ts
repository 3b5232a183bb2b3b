import { describe, expect, it } from 'vitest';
import { raincoat } from './raincoat.ts';
import { generateChildren } from './testing/generated-children.ts';
import { describeDraftingAnybody, garmentComplaints, shapeComplaints } from './testing/house-harness.ts';

describeDraftingAnybody(raincoat, raincoat.chart);

const fresh = Number(process.env['EASEWRIGHT_SEED'] ?? Date.now() % 2 ** 31);

describe('the raincoat for generated children', () => {
  console.log(`raincoat children: fresh seed ${fresh}`);
  it.each([20261, fresh])('is drafted, sound and well shaped for every one of 120, seed %d', (seed) => {
    const complaints = generateChildren(120, seed).flatMap((body, i) => {
      const view = i % 2 === 0 ? 'lined' : 'unlined';
      const garment = raincoat.draft(body, { view });
      if (!garment.ok) return [`${i}: ${garment.problem.code}`];
      return [...garmentComplaints(garment.value), ...shapeComplaints(raincoat, view, garment.value, body)].map(
        (complaint) => `${i}, stature ${body.stature?.toFixed(0)}: ${complaint}`,
      );
    });
    expect(complaints).toEqual([]);
  });
});
