import {
  alterationCatalogue,
  type Change,
  type Held,
  type Parameter,
  type Refusal,
  type StepOutcome,
} from '../../src/alter/index.ts';
import { sayEdge, sayEdgeOf, sayNamed, saySeam } from '../../src/draw/index.ts';
import type { AlterationStep, Garment } from '../../src/pattern/index.ts';
import { lengthAsShown, type Problem } from '../../src/units/index.ts';
import { type AlterationWords, alterWords, webWords } from '../../src/words/index.ts';
import type { Say } from '../app/settings.tsx';
import { levelName } from '../parts/level-name.ts';

const words = webWords.make.alterations;

/** The word of a list, or the id itself read as words. */
const wordIn = (list: Readonly<Record<string, string>>, id: string): string => list[id] ?? levelName(id);

const spoken: Readonly<Record<string, AlterationWords>> = alterWords.alterations;

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** What an alteration is called. */
export const alterationName = (id: string): string => spoken[id]?.name ?? levelName(id);

/** What an alteration is for. */
export const alterationAbout = (id: string): string => spoken[id]?.about ?? '';

export const alterationCaution = (id: string): string => spoken[id]?.caution ?? '';

/** What a parameter is called in its alteration, or in all of them. */
export const parameterName = (name: string, alteration = ''): string =>
  spoken[alteration]?.parameters?.[name] ?? wordIn(alterWords.parameters, name);

export const choiceName = (choice: string, alteration = ''): string =>
  spoken[alteration]?.choices?.[choice] ?? wordIn(alterWords.choices, choice);

/** The two ways an amount may go, as verbs: what more than nothing does, and what less. */
export const waysOf = (alteration: string): { readonly more: string; readonly less: string } => ({
  more: spoken[alteration]?.more ?? words.more,
  less: spoken[alteration]?.less ?? words.less,
});

/** How many times an amount is put in on the whole garment, so that both amounts can be shown. */
export const timesInAll = (alteration: string): 1 | 2 | 4 =>
  alterationCatalogue.find(({ id }) => id === alteration)?.inAll ?? 1;

type Done = Pick<AlterationStep, 'alteration' | 'params'>;

/** The half of the body a step is done on alone; null where it is done on both. */
const oneHalf = ({ params }: Done): 'right' | 'left' | null =>
  params['side'] === 'right' || params['side'] === 'left' ? params['side'] : null;

/** How many times the amount of a step is put in: on one half of the body half as often. */
export const timesPutIn = (step: Done): 1 | 2 | 4 => {
  // What says itself what it is on is not counted up besides.
  if (spoken[step.alteration]?.per !== undefined) return 1;
  const times = timesInAll(step.alteration);
  return oneHalf(step) === null || times === 1 ? times : times === 4 ? 2 : 1;
};

/** What one of several equal amounts is on: a half or a quarter of the garment, or of the half it is done on. */
export const partWords = (step: Done) => {
  const half = oneHalf(step);
  const field = half === 'right' ? words.rightHalf : half === 'left' ? words.leftHalf : null;
  if (timesInAll(step.alteration) === 4) {
    return { field: words.eachQuarter, both: half === null ? words.amountQuarter : words.amountEachEdge };
  }
  const bust = alterationCatalogue.find(({ id }) => id === step.alteration)?.family === 'bust';
  if (field !== null) return { field, both: half === 'right' ? words.amountRight : words.amountLeft };
  return bust ? { field: words.eachFront, both: words.amountBoth } : { field: words.eachHalf, both: words.amountHalf };
};

/** An amount with what it is on: `1.5 cm on each half, 3.0 cm in all`, `2.0 cm on each sleeve`, `1.2 cm on the right half only`. */
const amountOn = (step: Done, mm: number, say: Say): string => {
  const length = (one: number) => say.length(one, { purpose: 'amount' });
  // What is in all is as often the amount she marks as there are pieces, never a finer sum than that.
  const marked = lengthAsShown(Math.abs(mm), say.unit, { purpose: 'amount' });
  const values = { each: length(Math.abs(mm)), all: length(marked * timesPutIn(step)) };
  const { per, perOne } = spoken[step.alteration] ?? {};
  if (per === undefined) {
    const plain = timesInAll(step.alteration) === 1;
    return say.words(plain ? words.amountOnly : partWords(step).both, values);
  }
  const on = say.words(oneHalf(step) === null ? per : (perOne ?? per), { twice: length(marked * 2) });
  return say.words(words.amountPer, { ...values, per: on });
};

/** An amount of a step in words: which way it goes where it may go either, on each part and in all. */
export const sayAmount = (step: AlterationStep, name: string, say: Say): string => {
  const alteration = alterationCatalogue.find(({ id }) => id === step.alteration);
  const parameter = alteration?.params[name];
  const given = step.params[name];
  const amount = typeof given === 'number' ? given : 0;
  const said =
    alteration?.amount === name
      ? amountOn(step, amount, say)
      : say.words(words.amountOnly, { each: say.length(Math.abs(amount), { purpose: 'amount' }) });
  if (parameter?.unit !== 'mm' || parameter.min >= 0 || parameter.max <= 0) return said;
  if (amount === 0) return words.amountNone;
  const ways = waysOf(step.alteration);
  return say.words(words.amountWay, { way: amount < 0 ? ways.less : ways.more, amount: said });
};

/** Whether a choice or share is what is usual. */
export const isUsual = (step: AlterationStep, name: string, parameter: Parameter): boolean => {
  const given = step.params[name];
  if (given === undefined) return true;
  if (parameter.unit === 'choice') return given === parameter.usual;
  if (parameter.unit === 'share') return given === (parameter.usual[0] + parameter.usual[1]) / 2;
  return false;
};

/** A choice or share that is folded away, in words. */
export const sayFolded = (step: AlterationStep, name: string, parameter: Parameter, say: Say): string => {
  const given = step.params[name];
  if (parameter.unit === 'choice') return lowerFirst(choiceName(String(given ?? parameter.usual), step.alteration));
  if (parameter.unit !== 'share') return '';
  const share = typeof given === 'number' ? given : (parameter.usual[0] + parameter.usual[1]) / 2;
  return `${lowerFirst(parameterName(name, step.alteration))} ${say.words(words.shareSaid, { percent: Math.round(share * 100) })}`;
};

/** Where on the garment something holds or changes, as the trade names it. */
const where = (
  at: { readonly piece?: string; readonly edge?: string; readonly level?: string; readonly seam?: string },
  garment: Garment,
): string => {
  const seam = garment.seams.find(({ id }) => id === at.seam);
  if (seam) return lowerFirst(saySeam(garment, seam));
  const piece = garment.pieces.find(({ id }) => id === at.piece);
  if (piece && at.edge) return lowerFirst(sayEdgeOf(piece, at.edge));
  const rest = [at.edge, at.level, at.seam].flatMap((id) => (id ? [levelName(id).toLowerCase()] : []));
  return [...(piece ? [lowerFirst(piece.name)] : []), ...rest].join(', ');
};

/** Less than this, mm, is nothing at a table: no tape shows it. */
const worthSaying = 0.25;

const sayHeld = (held: Held, garment: Garment, say: Say): string =>
  say.words(Math.abs(held.by) < worthSaying ? words.heldLine : words.heldOff, {
    what: wordIn(alterWords.held, held.what),
    where: where(held, garment),
    by: say.length(Math.abs(held.by), { purpose: 'fine' }),
  });

const sayChange = (change: Change, garment: Garment, say: Say): string =>
  say.words(words.changeLine, {
    what: wordIn(alterWords.changed, change.what),
    where: where(change, garment),
    by: say.length(change.by, { purpose: 'amount', signed: true }),
    now: say.length(change.now, { purpose: 'amount' }),
  });

const unique = (lines: readonly string[]): readonly string[] => [...new Set(lines)];

/** What one step did: that all it holds was checked, and what it changed. */
export const sayOutcome = ({ applied }: StepOutcome, say: Say) => {
  const held = unique(applied.held.map((one) => sayHeld(one, applied.garment, say)));
  const changes = unique(
    applied.changes
      .filter(({ by }) => Math.abs(by) >= worthSaying)
      .map((change) => sayChange(change, applied.garment, say)),
  );
  return { summary: say.words(words.summary, { held: held.length, changes: changes.length }), held, changes };
};

export const sayWarnings = ({ applied }: StepOutcome, say: Say): readonly string[] =>
  unique(
    applied.warnings.map((warning) => {
      const { message, remedy } = say.problem(warning);
      return `${message} ${remedy}`;
    }),
  );

/** A dart, seam or notch the step means and the garment it is done to has not. */
const namedGone = ({ alteration, problem }: Refusal, garment: Garment): Problem | null => {
  const { parameter, given } = problem.values ?? {};
  if (problem.code !== 'alter.not-a-choice' || typeof given !== 'string' || typeof parameter !== 'string') return null;
  const named = alterationCatalogue.find(({ id }) => id === alteration)?.params[parameter];
  if (named?.unit !== 'named') return null;
  return { code: 'web.named-gone', values: { named: sayNamed(garment, named.of, given) } };
};

/** A problem tells of seams, edges, levels and choices by their ids; here they get their names. */
const withNames = ({ code, values }: Problem, garment: Garment): Problem => {
  const named = (name: string, value: string): string => {
    const seam = garment.seams.find(
      ({ id }) => name === 'where' && code === 'alter.seam-does-not-walk' && id === value,
    );
    if (seam) return `“${lowerFirst(saySeam(garment, seam))}”`;
    if (name === 'where' && code === 'alter.no-lengthen-line') return lowerFirst(choiceName(value));
    if (name === 'where' && code === 'alter.edge-changes') return `“${lowerFirst(sayEdge(value))}”`;
    return ['where', 'landmark', 'dart', 'role'].includes(name) ? levelName(value).toLowerCase() : value;
  };
  return {
    code,
    values: Object.fromEntries(
      Object.entries(values ?? {}).map(([name, value]) => [
        name,
        typeof value === 'string' ? named(name, value) : value,
      ]),
    ),
  };
};

export const sayRefusal = (refusal: Refusal, garment: Garment, say: Say): string => {
  const { message, remedy } = say.problem(namedGone(refusal, garment) ?? withNames(refusal.problem, garment));
  return `${message} ${remedy}`;
};
