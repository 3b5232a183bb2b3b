import { fullBust } from './full-bust.ts';
import { lengthenShorten } from './lengthen-shorten.ts';
import { smallBust } from './small-bust.ts';
import type { Alteration } from './types.ts';

/** Every alteration there is. A new one is a file of its own and a line here. */
export const alterationCatalogue: readonly Alteration[] = [lengthenShorten, fullBust, smallBust];
