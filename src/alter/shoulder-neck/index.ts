import type { Alteration } from '../types.ts';
import { necklineDepth } from './neckline-depth.ts';
import { necklineWidth } from './neckline-width.ts';

export const shoulderNeckAlterations: readonly Alteration[] = [necklineDepth, necklineWidth];
