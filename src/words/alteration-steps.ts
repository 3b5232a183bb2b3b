import type { Unit } from '../units/index.ts';
import { formatLength, lengthAsShown } from '../units/index.ts';
import { alterationWords, type SayNamed, type SpokenStep } from './alterations/index.ts';

/** Where a step is done on one half of the body only, that is said first: on paper it decides which piece is cut. */
const half = (step: SpokenStep): string => {
  const side = step.params['side'];
  return side === 'right' || side === 'left' ? `on the ${side} half only, ` : '';
};

/** A name read off an id, where no garment is at hand to ask: `front/bust` is the front bust dart. */
const readOff: SayNamed = (of, id) => {
  const said = id.replaceAll(/[/-]/g, ' ');
  return of === 'dart' && !said.endsWith('dart') ? `${said} dart` : said;
};

/**
 * One step as it is written on a printed pattern or read out: amounts for the trade's one word always both ways, each piece
 * and in all. `name` says what the step names by its id, as the garment has it.
 */
export const sayStep = (step: SpokenStep, unit: Unit, name: SayNamed = readOff): string => {
  const words = alterationWords[step.alteration];
  if (!words?.sentence) return words?.name ?? step.alteration;
  const sayAmount = (mm: number, times = 1): string => {
    // What is in all is as often the printed amount as there are pieces: she marks the one and adds up the other.
    const each = lengthAsShown(mm, unit, { purpose: 'amount' });
    return formatLength(times * each, unit, { purpose: 'amount' });
  };
  const said = words.sentence(step, sayAmount, name);
  return `${half(step)}${said}`;
};
