import { type Generic, genericGarments } from '../../fit/index.ts';
import type { AlterationStep, Garment } from '../../pattern/index.ts';
import { bad, type Problem } from '../../units/index.ts';
import { applyAlterations } from '../apply.ts';
import type { Applied, Change } from '../types.ts';
import type { CardPicture, CardRequest } from './types.ts';

/** One step carried out on the first generic garment that bears it. */
export interface CarriedOut {
  readonly generic: Generic;
  readonly before: Garment;
  readonly applied: Applied;
}

/** The alteration itself, on the likest generic garment that it works on, once that is `prepared`; else why it cannot be drawn. */
export const carriedOut = (
  request: CardRequest,
  step: AlterationStep,
  prepared: (garment: Garment) => Garment = (garment) => garment,
): { readonly done: CarriedOut } | { readonly done: null; readonly problem: Problem } => {
  let problem: Problem | null = null;
  for (const generic of genericGarments(request.envelope, request.view, request.size)) {
    const before = prepared(generic.garment);
    const { outcomes, refusal } = applyAlterations(before, [{ ...step, on: true }]);
    const applied = outcomes[0]?.applied;
    if (applied) return { done: { generic, before, applied } };
    problem ??= refusal?.problem ?? null;
  }
  return { done: null, problem: problem ?? bad('alter.no-generic', { kind: request.envelope.kind }).problem };
};

/** Girths by level as the alteration reports them, mm. */
export const girthsChanged = (changes: readonly Change[]): Readonly<Record<string, number>> =>
  Object.fromEntries(changes.flatMap(({ what, level, by }) => (what === 'girth' && level ? [[level, by]] : [])));

export const pictureOf = (
  { generic, before, applied }: CarriedOut,
  dimensions: CardPicture['dimensions'],
): CardPicture => ({
  house: generic.house.id,
  houseName: generic.house.name,
  draftedFor: generic.draftedFor,
  before,
  after: applied.garment,
  cuts: applied.cuts,
  dimensions,
  nested: [],
  held: applied.held,
});
