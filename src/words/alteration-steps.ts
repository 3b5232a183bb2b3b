import type { Unit } from '../units/index.ts';
import { formatLength, lengthAsShown } from '../units/index.ts';

/** What one step of an alteration list needs to be said aloud. */
interface SpokenStep {
  readonly alteration: string;
  readonly params: Readonly<Record<string, number | string | boolean>>;
}

const amountOf = (step: SpokenStep): number => (typeof step.params['amount'] === 'number' ? step.params['amount'] : 0);

const places: Readonly<Record<string, string>> = {
  'above-waist': 'above the waist',
  'below-waist': 'below the waist',
  rise: 'in the rise',
  leg: 'in the leg',
  sleeve: 'on the sleeve',
};

/** One step as it is written on a printed pattern or read out: amounts for the trade's one word always both ways, each piece and in all. */
const sentences: Readonly<Record<string, (step: SpokenStep, say: (mm: number, times?: number) => string) => string>> = {
  'full-bust': (step, say) =>
    `full bust: ${say(amountOf(step))} more on each half of the front, ${say(amountOf(step), 2)} in all`,
  'small-bust': (step, say) =>
    `small bust: ${say(amountOf(step))} less on each half of the front, ${say(amountOf(step), 2)} in all`,
  'lengthen-shorten': (step, say) => {
    const amount = amountOf(step);
    const place = places[String(step.params['where'])] ?? String(step.params['where']);
    return `${amount < 0 ? 'shortened' : 'lengthened'} ${place} by ${say(Math.abs(amount))}`;
  },
};

export const sayStep = (step: SpokenStep, unit: Unit): string => {
  const sentence = sentences[step.alteration];
  return sentence
    ? sentence(step, (mm, times = 1) => {
        // What is in all is as often the printed amount as there are pieces: she marks the one and adds up the other.
        const each = lengthAsShown(mm, unit, { purpose: 'amount' });
        return formatLength(times * each, unit, { purpose: 'amount' });
      })
    : step.alteration;
};
