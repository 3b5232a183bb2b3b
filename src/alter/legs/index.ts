import type { Alteration } from '../types.ts';
import { crotchCurve } from './crotch-curve.ts';
import { crotchLength } from './crotch-length.ts';
import { crotchPoint } from './crotch-point.ts';
import { legWidth } from './leg-width.ts';

export const legsAlterations: readonly Alteration[] = [crotchLength, crotchPoint, crotchCurve, legWidth];
