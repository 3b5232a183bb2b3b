import type { Alteration } from '../types.ts';
import { dartIntake } from './dart-intake.ts';
import { sideSeamsAlteration } from './side-seams.ts';

export const widthAlterations: readonly Alteration[] = [sideSeamsAlteration, dartIntake];
