import { describe, expect, it } from 'vitest';
import { applyAlterations } from '../src/alter/index.ts';
import { surveyBodies } from '../src/body/index.ts';
import { housePattern } from '../src/drafting/index.ts';
import { fitPattern, patternFigures } from '../src/fit/index.ts';
import { finishedGirths, walkAll } from '../src/pattern/index.ts';
import { stratified } from './oracle/bodies.ts';
import { sharedText } from './shared-data.ts';

const surveys = [
  { survey: 'women', house: 'tee' },
  { survey: 'men', house: 'tee-men' },
] as const;

describe.each(surveys)('the tee for surveyed $survey', ({ survey, house }) => {
  const csv = sharedText(`bodies/ansur2-${survey}.csv`);
  const bodies = () => {
    const read = surveyBodies(stratified(csv ?? '', 200), survey);
    if (!read.ok) throw new Error(read.problem.code);
    expect(read.value).toHaveLength(200);
    return read.value;
  };

  it.skipIf(csv === null)(
    'fits them by the bust, and what is suggested can be done and gives the ease foretold',
    () => {
      const pattern = housePattern(house)?.pattern();
      if (!pattern) throw new Error(`no ${house}`);
      const figures = patternFigures(pattern);
      const [least = 0, most = 0] = [pattern.sizes[0], pattern.sizes.at(-1)].map((size) => size?.body.bustGirth);
      const complaints = bodies().flatMap(({ row, measures }) => {
        const answer = fitPattern({ pattern, figures, measures });
        if (!answer.ok) return [`row ${row}: ${answer.problem.code}`];
        const way = answer.value.ways[answer.value.recommended];
        const size = pattern.sizes.find(({ id }) => id === way?.startingSize);
        if (!way || !size) return [`row ${row}: no way`];
        const bust = measures.bustGirth ?? 0;
        const off = Math.abs((size.body.bustGirth ?? 0) - bust);
        const altered = applyAlterations(size.garment, way.alterations);
        if (altered.refusal) return [`row ${row}: ${altered.refusal.problem.code}`];
        const girths = finishedGirths(altered.garment).filter(({ level, finished }) => {
          const foretold = way.ease.find((cell) => cell.level === level)?.finished ?? Number.NaN;
          // Lengthening draws the side seam anew from corner to corner, which moves a width a little.
          return !(Math.abs(finished - foretold) <= 3);
        });
        return [
          ...(bust >= least && bust <= most && off > 30 ? [`row ${row}: bust ${bust} in size ${size.id}`] : []),
          ...girths.map(({ level }) => `row ${row}: ${level} not as foretold`),
          ...walkAll(altered.garment)
            .filter(({ meets }) => !meets)
            .map(({ seam }) => `row ${row}: ${seam.id} does not walk`),
        ];
      });
      expect(complaints).toEqual([]);
    },
  );
});
