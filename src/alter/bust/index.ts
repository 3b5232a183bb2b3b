import { fullBust } from '../full-bust.ts';
import { smallBust } from '../small-bust.ts';
import type { Alteration } from '../types.ts';

export const bustAlterations: readonly Alteration[] = [fullBust, smallBust];
