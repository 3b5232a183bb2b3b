import type { Alteration } from '../types.ts';
import { abdomen, seat } from './abdomen-seat.ts';
import { dartIntake } from './dart-intake.ts';
import { flare } from './flare.ts';
import { sideSeamsAlteration } from './side-seams.ts';

export const widthAlterations: readonly Alteration[] = [sideSeamsAlteration, dartIntake, flare, abdomen, seat];
