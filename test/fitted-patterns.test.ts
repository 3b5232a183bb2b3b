import { describe, expect, it } from 'vitest';
import { applyAlterations } from '../src/alter/index.ts';
import { type Measures, surveyBodies } from '../src/body/index.ts';
import { type HousePattern, housePatterns } from '../src/drafting/index.ts';
import { generateChildren } from '../src/drafting/testing/generated-children.ts';
import { fitPattern, patternFigures } from '../src/fit/index.ts';
import { finishedGirths, type Pattern, walkAll } from '../src/pattern/index.ts';
import { stratified } from './oracle/bodies.ts';
import { sharedText } from './shared-data.ts';

/** Bodies a pattern is for: surveyed ones, or children about the chart. */
const bodiesFor = (house: HousePattern): readonly Measures[] => {
  if (house.for === 'child') return generateChildren(60, 20261);
  const read = surveyBodies(stratified(sharedText(`bodies/ansur2-${house.for}.csv`) ?? '', 100), house.for);
  if (!read.ok) throw new Error(read.problem.code);
  return read.value.map(({ measures }) => measures);
};

/** Each cup's pattern and its figures, drafted once. */
const cutsOf = (house: HousePattern) => {
  const cuts = new Map<number | undefined, { pattern: Pattern; figures: ReturnType<typeof patternFigures> }>();
  return (cup: number | undefined) => {
    const known = cuts.get(cup);
    if (known) return known;
    const pattern = house.pattern(cup === undefined ? {} : { cup });
    const cut = { pattern, figures: patternFigures(pattern) };
    cuts.set(cup, cut);
    return cut;
  };
};

/** What is wrong with what a fit recommends for a body, carried out on the pieces. */
const complaints = (
  house: HousePattern,
  body: Measures,
  { pattern, figures }: ReturnType<ReturnType<typeof cutsOf>>,
) => {
  const answer = fitPattern({ pattern, figures, measures: body });
  if (!answer.ok) return [answer.problem.code];
  const way = answer.value.ways[answer.value.recommended];
  const size = pattern.sizes.find(({ id }) => id === way?.startingSize);
  if (!way || !size) return ['no way'];
  const altered = applyAlterations(size.garment, way.alterations);
  if (altered.refusal) return [`size ${size.id}: ${altered.refusal.problem.code} ${JSON.stringify(way.alterations)}`];
  const bust = body.bustGirth ?? 0;
  const [least = 0, most = 0] = [pattern.sizes[0], pattern.sizes.at(-1)].map((one) => one?.body.bustGirth);
  const byBust = house.id.startsWith('tee') && bust >= least && bust <= most;
  return [
    ...(byBust && Math.abs((size.body.bustGirth ?? 0) - bust) > 30 ? [`bust ${bust} in size ${size.id}`] : []),
    ...finishedGirths(altered.garment).flatMap(({ level, finished }) => {
      const foretold = way.ease.find((cell) => cell.level === level)?.finished ?? Number.NaN;
      // Lengthening draws the side seam anew from corner to corner, which moves a width a little.
      return Math.abs(finished - foretold) <= 3 ? [] : [`${level}: ${finished} where ${foretold} was foretold`];
    }),
    ...walkAll(altered.garment)
      .filter(({ meets }) => !meets)
      .map(({ seam }) => `${seam.id} does not walk`),
  ];
};

describe('what fit recommends, on every house pattern', () => {
  it
    .skipIf(sharedText('bodies/ansur2-women.csv') === null)
    .each(housePatterns.map((house) => ({ id: house.id, house })))(
    'can be done to the pieces and gives the ease foretold: $id',
    ({ house }) => {
      const cut = cutsOf(house);
      const found = bodiesFor(house).flatMap((body, index) =>
        complaints(house, body, cut(house.nearestCup(body))).map((complaint) => `body ${index}: ${complaint}`),
      );
      expect(found).toEqual([]);
    },
  );
});
