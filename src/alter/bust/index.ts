import { fullBust } from '../full-bust.ts';
import { smallBust } from '../small-bust.ts';
import type { Alteration } from '../types.ts';
import { dartTo } from './dart-to.ts';
import { moveDart } from './move-dart.ts';
import { shortenDart } from './shorten-dart.ts';

export const bustAlterations: readonly Alteration[] = [fullBust, smallBust, moveDart, dartTo, shortenDart];
