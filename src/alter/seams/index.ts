import type { Alteration } from '../types.ts';
import { moveNotch } from './move-notch.ts';
import { sewSeam } from './sew-seam.ts';
import { trueSeam } from './true-seam.ts';

export const seamsAlterations: readonly Alteration[] = [trueSeam, sewSeam, moveNotch];
