import type { Unit } from '../units/index.ts';
import { formatLength, lengthAsShown } from '../units/index.ts';
import { alterationWords, type SpokenStep } from './alterations/index.ts';

/** Where a step is done on one half of the body only, that is said first: on paper it decides which piece is cut. */
const half = (step: SpokenStep): string => {
  const side = step.params['side'];
  return side === 'right' || side === 'left' ? `on the ${side} half only, ` : '';
};

/** One step as it is written on a printed pattern or read out: amounts for the trade's one word always both ways, each piece and in all. */
export const sayStep = (step: SpokenStep, unit: Unit): string => {
  const words = alterationWords[step.alteration];
  if (!words?.sentence) return words?.name ?? step.alteration;
  const said = words.sentence(step, (mm, times = 1) => {
    // What is in all is as often the printed amount as there are pieces: she marks the one and adds up the other.
    const each = lengthAsShown(mm, unit, { purpose: 'amount' });
    return formatLength(times * each, unit, { purpose: 'amount' });
  });
  return `${half(step)}${said}`;
};
