import { latestMeasures, type Wearer } from '../../src/body/index.ts';
import type { HouseChoice, HousePattern } from '../../src/drafting/index.ts';
import type { Make } from '../../src/make/index.ts';
import type { Pattern } from '../../src/pattern/index.ts';

/** The view and cup a make is cut in: as chosen, else the first view and the cup nearest to the wearer's. */
export const choiceFor = (
  { view, cup }: Pick<Make, 'view' | 'cup'>,
  house: HousePattern | null | undefined,
  wearer: Wearer | null,
): HouseChoice => {
  const cut = cup ?? (house && wearer ? house.nearestCup(latestMeasures(wearer)) : undefined);
  return { ...(view === undefined ? {} : { view }), ...(cut === undefined ? {} : { cup: cut }) };
};

/**
 * A make whose size is taken keeps the cup its pieces were shown in: a later measuring of the wearer then changes
 * what is advised, and not the pieces she may have cut.
 */
export const withCupTaken = (make: Make, shown: Pick<Pattern, 'draftedCup'>): Make =>
  make.size === null || make.cup !== undefined || shown.draftedCup === undefined || !make.pattern.startsWith('house:')
    ? make
    : { ...make, cup: shown.draftedCup };
