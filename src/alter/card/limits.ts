import { mostRoundArm } from '../../fit/index.ts';
import type { AmountParameter } from '../types.ts';

/** Round each arm. */
export const upperArmAmount: AmountParameter = { unit: 'mm', min: 1, max: mostRoundArm, usual: [10, 30] };

/** At the centre back. */
export const swayBackAmount: AmountParameter = { unit: 'mm', min: 1, max: 60, usual: [10, 25] };
