import { type Generic, genericGarments } from '../../fit/index.ts';
import type { AlterationStep, Garment } from '../../pattern/index.ts';
import { bad, type Problem } from '../../units/index.ts';
import { applyAlterations } from '../apply.ts';
import { alterationCatalogue } from '../catalogue.ts';
import type { Change, Held, PieceCut } from '../types.ts';
import type { CardPicture, CardRequest } from './types.ts';

/** Steps carried out on the first generic garment that bears them, told together. */
export interface CarriedOut {
  readonly generic: Generic;
  readonly before: Garment;
  readonly after: Garment;
  readonly changes: readonly Change[];
  readonly cuts: readonly PieceCut[];
  readonly held: readonly Held[];
}

/** What a garment lacks for some of these steps. */
const lacking = (garment: Garment, steps: readonly AlterationStep[]): Problem | null => {
  for (const { alteration } of steps) {
    const needed = alterationCatalogue.find(({ id }) => id === alteration)?.needs(garment);
    if (needed) return needed;
  }
  return null;
};

/**
 * Alterations of the catalogue, one after the other, on the likest generic garment that they work on, once that is
 * `prepared`; else why they cannot be drawn: that a garment made for them does not bear the amount outranks that another
 * lacks what they work on.
 */
export const carriedOut = (
  request: CardRequest,
  steps: readonly AlterationStep[],
  prepared: (garment: Garment) => Garment = (garment) => garment,
): { readonly done: CarriedOut } | { readonly done: null; readonly problem: Problem } => {
  let refused: Problem | null = null;
  let lacked: Problem | null = null;
  for (const generic of genericGarments(request.envelope, request.view, request.size)) {
    const before = prepared(generic.garment);
    const lacks = lacking(before, steps);
    if (lacks) {
      lacked ??= lacks;
      continue;
    }
    const { garment, outcomes, held, refusal } = applyAlterations(
      before,
      steps.map((step) => ({ ...step, on: true })),
    );
    if (!refusal) {
      const changes = outcomes.flatMap(({ applied }) => applied.changes);
      const cuts = outcomes.flatMap(({ applied }) => applied.cuts);
      return { done: { generic, before, after: garment, changes, cuts, held } };
    }
    refused ??= refusal.problem;
  }
  const problem = refused ?? lacked ?? bad('alter.no-generic', { kind: request.envelope.kind }).problem;
  return { done: null, problem };
};

/** By how much finished girths grew, by level, over all the steps, mm. */
export const girthsChanged = ({ changes }: CarriedOut): Readonly<Record<string, number>> => {
  const grown: Record<string, number> = {};
  for (const { what, level, by } of changes) {
    if (what === 'girth' && level) grown[level] = (grown[level] ?? 0) + by;
  }
  return grown;
};

export const pictureOf = (
  { generic, before, after, cuts, held }: CarriedOut,
  dimensions: CardPicture['dimensions'],
): CardPicture => ({
  house: generic.house.id,
  houseName: generic.house.name,
  draftedFor: generic.draftedFor,
  before,
  after,
  cuts,
  dimensions,
  nested: [],
  held,
});
