import { latestMeasures, type Wearer } from '../../src/body/index.ts';
import type { HouseChoice, HousePattern } from '../../src/drafting/index.ts';
import type { Make } from '../../src/make/index.ts';

/** The view and cup a make is cut in: as chosen, else the first view and the cup nearest to the wearer's. */
export const choiceFor = (
  { view, cup }: Pick<Make, 'view' | 'cup'>,
  house: HousePattern | null | undefined,
  wearer: Wearer | null,
): HouseChoice => {
  const cut = cup ?? (house && wearer ? house.nearestCup(latestMeasures(wearer)) : undefined);
  return { ...(view === undefined ? {} : { view }), ...(cut === undefined ? {} : { cup: cut }) };
};
