import { type Generic, genericGarments } from '../../fit/index.ts';
import type { Garment } from '../../pattern/index.ts';
import { bad, good, type Problem, type Result } from '../../units/index.ts';
import { applyOne } from '../apply-one.ts';
import type { Alteration, Applied, Change, Held, Params, PieceCut } from '../types.ts';
import type { CardPicture, CardRequest } from './types.ts';

/** An alteration of the catalogue and what a card asks of it. */
export interface CardStep {
  readonly alteration: Alteration;
  readonly params: Params;
}

/** Steps carried out on the first generic garment that bears them, told together. */
export interface CarriedOut {
  readonly generic: Generic;
  readonly before: Garment;
  readonly after: Garment;
  readonly changes: readonly Change[];
  readonly cuts: readonly PieceCut[];
  readonly held: readonly Held[];
}

/** The steps done on one garment. The largest amount that would hold is not looked for: a card says only why it is not drawn. */
const doneOn = (garment: Garment, steps: readonly CardStep[]): Result<readonly Applied[]> => {
  const done: Applied[] = [];
  for (const { alteration, params } of steps) {
    const applied = applyOne(alteration, done.at(-1)?.garment ?? garment, params);
    if (!applied.ok) return applied;
    done.push(applied.value);
  }
  return good(done);
};

/**
 * Alterations of the catalogue, one after the other, on the likest generic garment that they work on, once that is
 * `prepared`; else why they cannot be drawn: that a garment made for them does not bear the amount outranks that another
 * lacks what they work on.
 */
export const carriedOut = (
  request: CardRequest,
  steps: readonly CardStep[],
  prepared: (garment: Garment) => Garment = (garment) => garment,
): { readonly done: CarriedOut } | { readonly done: null; readonly problem: Problem } => {
  let refused: Problem | null = null;
  let lacked: Problem | null = null;
  for (const generic of genericGarments(request.envelope, request.view, request.size)) {
    const before = prepared(generic.garment);
    const lacks = steps.map(({ alteration }) => alteration.needs(before)).find((one) => one !== null);
    if (lacks) {
      lacked ??= lacks;
      continue;
    }
    const done = doneOn(before, steps);
    if (!done.ok) {
      refused ??= done.problem;
      continue;
    }
    const applied = done.value;
    return {
      done: {
        generic,
        before,
        after: applied.at(-1)?.garment ?? before,
        changes: applied.flatMap(({ changes }) => changes),
        cuts: applied.flatMap(({ cuts }) => cuts),
        held: applied.flatMap(({ held }) => held),
      },
    };
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
