import type { Problem, Unit } from '../units/index.ts';
import { bodyWords } from './body.ts';
import { fill } from './fill.ts';
import { fitWords } from './fit.ts';

const named = (names: Readonly<Record<string, string>>, id: unknown): string =>
  typeof id === 'string' ? (names[id] ?? id) : '';

/** One reason of a fit as a sentence, its lengths in the reader's unit; measures and levels by their names. */
export const reasonSentence = (reason: Problem, unit: Unit, locale = 'en'): string => {
  const templates: Readonly<Record<string, string>> = fitWords.reasons;
  const template = templates[reason.code] ?? reason.code;
  const values = { ...reason.values };
  if (values.level !== undefined) values.level = named(fitWords.levels, values.level);
  const measure = values.measure;
  if (typeof measure === 'string' && measure in bodyWords.measures) {
    values.measure = bodyWords.measures[measure as keyof typeof bodyWords.measures].name;
  }
  return fill(template, values, unit, locale);
};
