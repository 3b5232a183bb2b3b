import type { Alteration } from '../types.ts';
import { fullUpperArm } from './full-upper-arm.ts';
import { sleeveHead } from './sleeve-head.ts';
import { sleeveHem } from './sleeve-hem.ts';

export const sleeveAlterations: readonly Alteration[] = [fullUpperArm, sleeveHem, sleeveHead];
