import type { Problem } from '../../src/units/index.ts';

const inch = 25.4;

/** Bust less upper bust as pattern making letters it, an inch a letter from A; a custom, not a standard. */
const letters: readonly string[] = ['A', 'B', 'C', 'D'];

/** A cup typed as a letter, `B` or `B cup`: what it mostly stands for on an envelope, to be written as a length. Null where it is none. */
export const cupLetter = (typed: string): Problem | null => {
  const found = /^(?:cup\s+)?([a-d])(?:[\s-]*cup)?\.?$/i.exec(typed.trim())?.[1]?.toUpperCase();
  const index = letters.indexOf(found ?? '');
  return found === undefined || index < 0
    ? null
    : { code: 'web.cup-letter', values: { letter: found, likely: { mm: (index + 1) * inch, purpose: 'amount' } } };
};
