import { blouse } from './blouse.ts';
import { tee, teeMen } from './tee.ts';
import type { HousePattern } from './types.ts';

/** Every pattern of our own. */
export const housePatterns: readonly HousePattern[] = [blouse, tee, teeMen];

/** The house pattern of that id; undefined where there is none. */
export const housePattern = (id: string): HousePattern | undefined =>
  housePatterns.find((candidate) => candidate.id === id);
