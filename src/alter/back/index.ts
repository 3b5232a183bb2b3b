import type { Alteration } from '../types.ts';
import { backWidth } from './back-width.ts';
import { roundBack } from './round-back.ts';
import { swayBack } from './sway-back.ts';

export const backAlterations: readonly Alteration[] = [swayBack, backWidth, roundBack];
