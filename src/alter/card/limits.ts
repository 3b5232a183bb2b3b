import type { AmountParameter } from '../types.ts';

/** Round each arm: beyond this even a high cap lies flat. */
export const upperArmAmount: AmountParameter = { unit: 'mm', min: 1, max: 120, usual: [10, 30] };

/** At the centre back. */
export const swayBackAmount: AmountParameter = { unit: 'mm', min: 1, max: 60, usual: [10, 25] };
