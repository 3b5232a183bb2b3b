import type { AlterationStep, Garment } from '../pattern/index.ts';
import { bad, good, type Problem, type Result } from '../units/index.ts';
import type { AlterationCache } from './cache.ts';
import { alterationCatalogue } from './catalogue.ts';
import { reportOf } from './checks.ts';
import { largestThatHolds } from './largest.ts';
import { createTape } from './tape.ts';
import type { Alteration, Altered, Applied, Params, PieceReport, Refusal, StepOutcome } from './types.ts';

const alterationFor = (step: AlterationStep, catalogue: readonly Alteration[]): Result<Alteration> => {
  const versions = catalogue.filter(({ id }) => id === step.alteration);
  if (versions.length === 0) return bad('alter.unknown', { alteration: step.alteration });
  const found = versions.find(({ version }) => version === step.version);
  return found ? good(found) : bad('alter.unknown-version', { alteration: step.alteration, version: step.version });
};

/** Parameters as the alteration wants them: choices left out are the usual ones; amounts are numbers within limits. */
const settledParams = (alteration: Alteration, garment: Garment, params: Params): Result<Params> => {
  const settled: Record<string, number | string> = {};
  for (const [name, parameter] of Object.entries(alteration.params)) {
    const given = params[name];
    if (parameter.unit === 'named') {
      const options = alteration.options?.(garment, name) ?? [];
      const named = given ?? options[0];
      if (typeof named !== 'string' || !options.includes(named)) {
        return bad('alter.not-a-choice', { parameter: name, given: String(named ?? ''), choices: options.join(', ') });
      }
      settled[name] = named;
      continue;
    }
    if (parameter.unit === 'share' && given === undefined) {
      settled[name] = (parameter.usual[0] + parameter.usual[1]) / 2;
      continue;
    }
    if (parameter.unit === 'choice') {
      const choice = given ?? parameter.usual;
      if (typeof choice !== 'string' || !parameter.choices.includes(choice)) {
        return bad('alter.not-a-choice', {
          parameter: name,
          given: String(choice),
          choices: parameter.choices.join(', '),
        });
      }
      settled[name] = choice;
    } else {
      if (typeof given !== 'number' || !Number.isFinite(given)) return bad('alter.not-an-amount', { parameter: name });
      if (given < parameter.min || given > parameter.max) {
        if (parameter.unit === 'share') return bad('alter.not-a-share', { parameter: name, given: String(given) });
        return bad('alter.out-of-range', {
          parameter: name,
          amount: { mm: given },
          least: { mm: parameter.min },
          most: { mm: parameter.max },
        });
      }
      settled[name] = given;
    }
  }
  return good(settled);
};

/** The problem there is when something does not hold. */
const notHeld: Readonly<Record<string, string>> = {
  'edge-length': 'alter.edge-changes',
  'centre-drop': 'alter.edge-changes',
  'seam-walks': 'alter.seam-does-not-walk',
  'armhole-smooth': 'alter.armhole-kinks',
  'dart-legs': 'alter.dart-legs-differ',
  'dart-angle': 'alter.dart-legs-differ',
  'width-grows': 'alter.width-off',
  'width-kept': 'alter.width-changes',
  'grain-straight': 'alter.grain-bends',
};

/** One alteration applied and everything it holds checked: what does not hold is a problem. */
const applyOne = (alteration: Alteration, garment: Garment, params: Params): Result<Applied> => {
  const lacking = alteration.needs(garment);
  if (lacking) return { ok: false, problem: lacking };
  const settled = settledParams(alteration, garment, params);
  if (!settled.ok) return settled;
  const applied = alteration.apply(garment, settled.value);
  if (!applied.ok) return applied;
  const broken = applied.value.held.find(({ ok }) => !ok);
  if (!broken) return applied;
  const where = broken.seam ?? broken.edge ?? broken.level ?? broken.piece ?? '';
  return bad(notHeld[broken.what] ?? 'alter.does-not-hold', {
    what: broken.what,
    where,
    by: { mm: Math.abs(broken.by) },
  });
};

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

const refused = (
  garment: Garment,
  step: AlterationStep,
  problem: Problem,
  alteration: Alteration | null,
  cache: AlterationCache | undefined,
): Refusal => {
  const refusal = { step: step.id, alteration: step.alteration, problem };
  if (alteration?.amount == null || notAboutAmount.has(problem.code) || alteration.needs(garment)) return refusal;
  const find = () => largestThatHolds(alteration, step.params, (params) => applyOne(alteration, garment, params).ok);
  const amount = cache ? cache.largest(garment, alteration, step.params, find) : find();
  return amount === null ? refusal : { ...refusal, largest: { parameter: String(alteration.amount), amount } };
};

/** Each piece from before the first step to after the last, truing summed over the steps. */
const overall = (before: Garment, after: Garment, outcomes: readonly StepOutcome[]): readonly PieceReport[] => {
  const tape = createTape();
  const reports = outcomes.flatMap(({ applied }) => applied.pieces);
  return before.pieces.map((piece, i) => {
    const puts = reports.filter((report) => report.piece === piece.id).flatMap((report) => report.puts);
    return reportOf(tape, piece, after.pieces[i] ?? piece, puts);
  });
};

/**
 * Applies a list of alterations in order, steps switched off passed over. Stops at the first step that is refused and
 * says which, why, and the largest amount of it that would hold. The garment is then the one the steps before it made.
 *
 * With a cache the steps done before on the same garment are not done again; the result is the same either way.
 */
export const applyAlterations = (
  garment: Garment,
  steps: readonly AlterationStep[],
  cache?: AlterationCache,
  catalogue: readonly Alteration[] = alterationCatalogue,
): Altered => {
  let current = garment;
  let refusal: Refusal | null = null;
  const outcomes: StepOutcome[] = [];
  for (const step of steps) {
    if (!step.on) continue;
    const found = alterationFor(step, catalogue);
    if (!found.ok) {
      refusal = refused(current, step, found.problem, null, cache);
      break;
    }
    const alteration = found.value;
    const at = current;
    const applied = cache
      ? cache.applied(at, alteration, step.params, () => applyOne(alteration, at, step.params))
      : applyOne(alteration, at, step.params);
    if (!applied.ok) {
      refusal = refused(at, step, applied.problem, alteration, cache);
      break;
    }
    outcomes.push({ step, applied: applied.value });
    current = applied.value.garment;
  }
  return {
    garment: current,
    outcomes,
    held: outcomes.flatMap(({ applied }) => applied.held),
    warnings: outcomes.flatMap(({ applied }) => applied.warnings),
    pieces: overall(garment, current, outcomes),
    refusal,
  };
};
