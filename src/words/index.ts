import type { Problem, Unit } from '../units/index.ts';
import { alterProblems } from './alter.ts';
import { bodyProblems } from './body.ts';
import type { ProblemCatalogue, ProblemWords } from './catalogue.ts';
import { cautionProblems } from './caution.ts';
import { cliProblems } from './cli.ts';
import { clothProblems } from './cloth.ts';
import { draftingProblems } from './drafting.ts';
import { drawProblems } from './draw.ts';
import { envelopeProblems } from './envelope.ts';
import { fill } from './fill.ts';
import { fitProblems } from './fit.ts';
import { formatsProblems } from './formats.ts';
import { geometryProblems } from './geometry.ts';
import { jobsProblems } from './jobs.ts';
import { layProblems } from './lay.ts';
import { makeProblems } from './make.ts';
import { patternProblems } from './pattern.ts';
import { serverProblems } from './server.ts';
import { storeProblems } from './store.ts';
import { unitsProblems } from './units.ts';
import { webEnvelopeProblems } from './web-envelopes.ts';
import { webProblems } from './web-problems.ts';

export * from './alter.ts';
export * from './alteration-steps.ts';
export * from './body.ts';
export * from './card.ts';
export * from './card-sentence.ts';
export * from './catalogue.ts';
export * from './caution.ts';
export * from './cli.ts';
export * from './cloth.ts';
export * from './drafting.ts';
export * from './draw.ts';
export * from './envelope.ts';
export * from './fill.ts';
export * from './fit.ts';
export * from './fitting.ts';
export * from './formats.ts';
export * from './geometry.ts';
export * from './house/index.ts';
export * from './jobs.ts';
export * from './lay.ts';
export * from './make.ts';
export * from './notions.ts';
export * from './pattern.ts';
export * from './reason.ts';
export * from './server.ts';
export * from './store.ts';
export * from './units.ts';
export * from './web.ts';
export * from './web-envelopes.ts';
export { webHouseWords } from './web-patterns.ts';
export * from './web-problems.ts';

/** Every room's problem sentences. Codes begin with their room's name, so none can hide another. */
export const problemWords: ProblemCatalogue = {
  ...unitsProblems,
  ...geometryProblems,
  ...bodyProblems,
  ...clothProblems,
  ...patternProblems,
  ...envelopeProblems,
  ...draftingProblems,
  ...fitProblems,
  ...alterProblems,
  ...layProblems,
  ...drawProblems,
  ...cautionProblems,
  ...makeProblems,
  ...formatsProblems,
  ...jobsProblems,
  ...storeProblems,
  ...serverProblems,
  ...cliProblems,
  ...webProblems,
  ...webEnvelopeProblems,
};

/** Only met when a code was used that no room has words for; a test keeps that from happening. */
const unworded: ProblemWords = {
  message: 'Something was not right, and there are no words for it yet: {code}.',
  remedy: 'Nothing was changed. Try again with what you gave looked over once more.',
};

/** What a problem says to a person, its lengths in her unit. */
export const sentence = (problem: Problem, unit: Unit, locale = 'en'): ProblemWords => {
  const words = problemWords[problem.code];
  const values = words ? (problem.values ?? {}) : { code: problem.code };
  const { message, remedy } = words ?? unworded;
  return { message: fill(message, values, unit, locale), remedy: fill(remedy, values, unit, locale) };
};
