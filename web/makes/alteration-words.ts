import {
  alterationCatalogue,
  type Change,
  type Held,
  type NamedParameter,
  type Parameter,
  type Refusal,
  type StepOutcome,
} from '../../src/alter/index.ts';
import { sayEdge, sayEdgeOf, saySeam } from '../../src/draw/index.ts';
import type { AlterationStep, Garment } from '../../src/pattern/index.ts';
import { lengthAsShown, type Problem } from '../../src/units/index.ts';
import { type AlterationWords, alterWords, fill, webWords } from '../../src/words/index.ts';
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

/** What one of several equal amounts is on: a front's half, a half or a quarter of the garment. */
export const partWords = (alteration: string) => {
  const times = timesInAll(alteration);
  if (times === 4) return { field: words.eachQuarter, both: words.amountQuarter };
  const bust = alterationCatalogue.find(({ id }) => id === alteration)?.family === 'bust';
  return bust ? { field: words.eachFront, both: words.amountBoth } : { field: words.eachHalf, both: words.amountHalf };
};

/** `3.0 cm in all, 1.5 cm on each front`. */
export const amountBoth = (
  one: { readonly alteration: string; readonly total: number; readonly perPiece: number },
  say: Say,
): string =>
  say.words(timesInAll(one.alteration) === 1 ? words.amountEach : partWords(one.alteration).both, {
    each: say.length(Math.abs(one.perPiece), { purpose: 'amount' }),
    all: say.length(Math.abs(one.total), { purpose: 'amount' }),
  });

/** An amount of a step in words: which way it goes where it may go either, on each part and in all. */
export const sayAmount = (step: AlterationStep, name: string, say: Say): string => {
  const alteration = alterationCatalogue.find(({ id }) => id === step.alteration);
  const parameter = alteration?.params[name];
  const given = step.params[name];
  const amount = typeof given === 'number' ? given : 0;
  const main = alteration?.amount === name;
  const times = main ? timesInAll(step.alteration) : 1;
  const marked = lengthAsShown(Math.abs(amount), say.unit, { purpose: 'amount' });
  const length = (mm: number) => say.length(mm, { purpose: 'amount' });
  const said = say.words(times === 1 ? words.amountOnly : partWords(step.alteration).both, {
    each: length(Math.abs(amount)),
    all: length(marked * times),
  });
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

/** One of what a named parameter may name, as the trade names it; `piece/id` where it lies on a piece. */
export const sayNamed = (garment: Garment, of: NamedParameter['of'], id: string): string => {
  if (of === 'seam') {
    const seam = garment.seams.find((one) => one.id === id);
    return seam ? saySeam(garment, seam) : levelName(id);
  }
  const cut = id.indexOf('/');
  const piece = garment.pieces.find((one) => one.id === (cut < 0 ? id : id.slice(0, cut)));
  if (!piece) return levelName(id);
  if (cut < 0) return piece.name;
  const own = id.slice(cut + 1);
  if (of === 'edge') return sayEdgeOf(piece, own);
  const notch = of === 'notch' ? piece.notches.find((one) => one.id === own) : undefined;
  const what = notch
    ? inWords(words.notchOn, { edge: lowerFirst(sayEdge(notch.edge)), name: levelName(own) })
    : levelName(own);
  return `${piece.name}: ${lowerFirst(what)}`;
};

const inWords = (template: string, values: Readonly<Record<string, string>>): string => fill(template, values, 'cm');

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
const worthSaying = 0.05;

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
export const sayOutcome = ({ applied }: StepOutcome, say: Say) => ({
  summary: say.words(words.summary, { held: applied.held.length, changes: applied.changes.length }),
  held: unique(applied.held.map((held) => sayHeld(held, applied.garment, say))),
  changes: unique(applied.changes.map((change) => sayChange(change, applied.garment, say))),
});

export const sayWarnings = ({ applied }: StepOutcome, say: Say): readonly string[] =>
  unique(
    applied.warnings.map((warning) => {
      const { message, remedy } = say.problem(warning);
      return `${message} ${remedy}`;
    }),
  );

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
  const { message, remedy } = say.problem(withNames(refusal.problem, garment));
  return `${message} ${remedy}`;
};
