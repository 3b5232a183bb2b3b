import { backAlterations } from './back/index.ts';
import { bustAlterations } from './bust/index.ts';
import { legsAlterations } from './legs/index.ts';
import { lengthAlterations } from './length/index.ts';
import { seamsAlterations } from './seams/index.ts';
import { shoulderNeckAlterations } from './shoulder-neck/index.ts';
import { sleeveAlterations } from './sleeve/index.ts';
import { structureAlterations } from './structure/index.ts';
import type { Alteration } from './types.ts';
import { widthAlterations } from './width/index.ts';

/** Every alteration there is, in the order a fitter works. A new one is a file of its own and a line in its family's list. */
export const alterationCatalogue: readonly Alteration[] = [
  ...lengthAlterations,
  ...bustAlterations,
  ...shoulderNeckAlterations,
  ...backAlterations,
  ...sleeveAlterations,
  ...widthAlterations,
  ...legsAlterations,
  ...structureAlterations,
  ...seamsAlterations,
];
