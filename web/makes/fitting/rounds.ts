import type { Alteration, Params, Sign } from '../../../src/alter/index.ts';
import type { Fitting, Make } from '../../../src/make/index.ts';
import { freshId } from '../../app/documents.ts';
import { addStep } from '../steps.ts';

export const roundsOf = (make: Make): readonly Fitting[] => make.fittings ?? [];

/** A new round of fitting, cut by the alterations as they stand: a second toile starts from what the first one gave. */
export const beginRound = (make: Make, garment: Fitting['garment'], date: string): Make => {
  const rounds = roundsOf(make);
  const id = freshId(
    'f',
    rounds.map((round) => round.id),
  );
  return {
    ...make,
    fittings: [...rounds, { id, date, garment, steps: make.steps, signs: [], notes: '', taken: [] }],
  };
};

export const changeRound = (make: Make, id: string, change: (round: Fitting) => Fitting): Make => ({
  ...make,
  fittings: roundsOf(make).map((round) => (round.id === id ? change(round) : round)),
});

export const addSign = (make: Make, id: string, sign: Sign): Make =>
  changeRound(make, id, (round) => ({ ...round, signs: [...round.signs, sign] }));

export const removeSign = (make: Make, id: string, place: number): Make =>
  changeRound(make, id, (round) => ({ ...round, signs: round.signs.filter((_, at) => at !== place) }));

/** Puts a suggestion into the alteration list, and keeps in the round that it came from there. */
export const takeSuggestion = (make: Make, id: string, alteration: Alteration, params: Params): Make => {
  const added = addStep(make, alteration, params);
  const step = added.steps.at(-1);
  return step ? changeRound(added, id, (round) => ({ ...round, taken: [...round.taken, step.id] })) : added;
};
