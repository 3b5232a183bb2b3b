import type { AlterationStep, Garment } from '../pattern/index.ts';
import { bad, good, type Problem, type Result } from '../units/index.ts';
import { applyOne } from './apply-one.ts';
import type { AlterationCache } from './cache.ts';
import { alterationCatalogue } from './catalogue.ts';
import { type Combined, combine } from './halves/combine.ts';
import { levelCentre } from './halves/level-centre.ts';
import { largestThatHolds } from './largest.ts';
import { overall } from './overall.ts';
import { alterationFor } from './settle.ts';
import type { Alteration, Altered, Applied, Params, Refusal, StepOutcome } from './types.ts';

/** Problems that no smaller amount would cure: they are about what is there, not about how much. */
const notAboutAmount: ReadonlySet<string> = new Set([
  'alter.unknown',
  'alter.unknown-version',
  'alter.not-a-choice',
  'alter.not-an-amount',
  'alter.no-landmark',
  'alter.no-side-dart',
  'alter.no-piece',
  'alter.no-lengthen-line',
  'alter.no-centre',
  'alter.grain-not-along',
  'alter.cut-not-clear',
]);

/** Both halves of the body: one value while nothing was done to one of them alone. */
interface Halves {
  readonly right: Garment;
  readonly left: Garment;
}

const areAlike = ({ right, left }: Halves): boolean => right === left;

/** What a step made: the halves as they are now, and what was done to each. */
interface Done {
  readonly halves: Halves;
  readonly combined: Combined | null;
  readonly applied: Applied;
  readonly right: Applied | null;
  readonly left: Applied | null;
}

type ApplyTo = (garment: Garment, params: Params) => Result<Applied>;

/** What was done to both halves apart, told as one. */
const both = (right: Applied, left: Applied): Applied => ({
  ...right,
  held: [...right.held, ...left.held],
  changes: [...right.changes, ...left.changes],
  warnings: [...right.warnings, ...left.warnings],
  pieces: [...right.pieces, ...left.pieces],
  cuts: [...right.cuts, ...left.cuts],
});

/**
 * One step on both halves, or on one. What it makes of two halves that differ has to be one garment still: pieces
 * cut whole alike, folds equally long.
 */
const applyStep = (
  halves: Halves,
  params: Params,
  apply: ApplyTo,
  join: (halves: Halves) => Result<Combined>,
): Result<Done> => {
  const side = params['side'];
  if (side !== 'right' && side !== 'left' && areAlike(halves)) {
    const applied = apply(halves.right, params);
    if (!applied.ok) return applied;
    const { garment } = applied.value;
    return good({
      halves: { right: garment, left: garment },
      combined: null,
      applied: applied.value,
      right: applied.value,
      left: applied.value,
    });
  }
  const right = side === 'left' ? null : apply(halves.right, params);
  if (right && !right.ok) return right;
  const left = side === 'right' ? null : apply(halves.left, params);
  if (left && !left.ok) return left;
  const made: Halves = { right: right?.value.garment ?? halves.right, left: left?.value.garment ?? halves.left };
  const now: Halves = { right: levelCentre(made.right, made.left), left: levelCentre(made.left, made.right) };
  const combined = join(now);
  if (!combined.ok) return combined;
  const applied = right && left ? both(right.value, left.value) : ((right ?? left)?.value as Applied);
  return good({
    halves: now,
    combined: combined.value,
    applied,
    right: right?.value ?? null,
    left: left?.value ?? null,
  });
};

const refused = (
  step: AlterationStep,
  problem: Problem,
  alteration: Alteration | null,
  garment: Garment,
  holds: (params: Params) => boolean,
  cache: AlterationCache | undefined,
): Refusal => {
  const refusal = { step: step.id, alteration: step.alteration, problem };
  if (alteration?.amount == null || notAboutAmount.has(problem.code) || alteration.needs(garment)) return refusal;
  const find = () => largestThatHolds(alteration, step.params, holds);
  const amount = cache ? cache.largest(garment, alteration, step.params, find) : find();
  return amount === null ? refusal : { ...refusal, largest: { parameter: String(alteration.amount), amount } };
};

/** The side a step is done on, where its alteration can be done on one: a word of another alteration is none. */
const sideOf = (alteration: Alteration, { side }: Params): Result<'both' | 'right' | 'left'> => {
  if (side === undefined || side === 'both') return good('both');
  if (!('side' in alteration.params)) return bad('alter.not-one-sided', {});
  return side === 'right' || side === 'left'
    ? good(side)
    : bad('alter.not-a-choice', { parameter: 'side', given: String(side), choices: 'both, right, left' });
};

/**
 * Applies a list of alterations in order, steps switched off passed over. Stops at the first step that is refused and
 * says which, why, and the largest amount of it that would hold. The garment is then the one the steps before it made.
 *
 * A step may be done on one half of the body only. The two halves are then altered apart, each as a garment that is alike
 * on both sides, and the garment told with pieces of their own for right and left wherever they differ.
 *
 * With a cache the steps done before on the same garment are not done again; the result is the same either way.
 */
export const applyAlterations = (
  garment: Garment,
  steps: readonly AlterationStep[],
  cache?: AlterationCache,
  catalogue: readonly Alteration[] = alterationCatalogue,
): Altered => {
  let halves: Halves = { right: garment, left: garment };
  let combined: Combined | null = null;
  let refusal: Refusal | null = null;
  const outcomes: StepOutcome[] = [];
  const done: { readonly right: Applied | null; readonly left: Applied | null }[] = [];
  const join = (now: Halves): Result<Combined> =>
    cache
      ? cache.combined(now.right, now.left, garment, () => combine(now.right, now.left, garment))
      : combine(now.right, now.left, garment);
  for (const step of steps) {
    if (!step.on) continue;
    const found = alterationFor(step, catalogue);
    if (!found.ok) {
      refusal = { step: step.id, alteration: step.alteration, problem: found.problem };
      break;
    }
    const alteration = found.value;
    const side = sideOf(alteration, step.params);
    if (!side.ok) {
      refusal = { step: step.id, alteration: step.alteration, problem: side.problem };
      break;
    }
    const at = halves;
    const apply: ApplyTo = (half, params) =>
      cache
        ? cache.applied(half, alteration, { ...params, side: 'both' }, () => applyOne(alteration, half, params))
        : applyOne(alteration, half, params);
    const made = applyStep(at, step.params, apply, join);
    if (!made.ok) {
      const uncached: ApplyTo = (half, params) => applyOne(alteration, half, params);
      const holds = (params: Params): boolean => applyStep(at, params, uncached, join).ok;
      const half = side.value === 'left' ? at.left : at.right;
      refusal = refused(step, made.problem, alteration, half, holds, areAlike(at) ? cache : undefined);
      break;
    }
    outcomes.push({ step, applied: made.value.applied });
    done.push(made.value);
    halves = made.value.halves;
    combined = made.value.combined ?? (areAlike(halves) ? null : combined);
  }
  const after = combined?.garment ?? halves.right;
  return {
    garment: after,
    before: combined?.before ?? garment,
    apart: combined !== null,
    outcomes,
    held: outcomes.flatMap(({ applied }) => applied.held),
    warnings: outcomes.flatMap(({ applied }) => applied.warnings),
    pieces: overall(garment, after, combined, done),
    refusal,
  };
};
