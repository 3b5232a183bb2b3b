import type { Change, Held, Refusal, StepOutcome } from '../../src/alter/index.ts';
import { sayEdge, sayEdgeOf, saySeam } from '../../src/draw/index.ts';
import type { Garment } from '../../src/pattern/index.ts';
import type { Problem } from '../../src/units/index.ts';
import { alterWords, webWords } from '../../src/words/index.ts';
import type { Say } from '../app/settings.tsx';
import { levelName } from '../parts/level-name.ts';

const words = webWords.make.alterations;

/** The word of a list, or the id itself read as words. */
const wordIn = (list: Readonly<Record<string, string>>, id: string): string => list[id] ?? levelName(id);

const spoken: Readonly<Record<string, { readonly name: string; readonly about: string }>> = alterWords.alterations;

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** What an alteration is called. */
export const alterationName = (id: string): string => spoken[id]?.name ?? levelName(id);

/** What an alteration is for. */
export const alterationAbout = (id: string): string => spoken[id]?.about ?? '';

export const parameterName = (name: string): string => wordIn(alterWords.parameters, name);

export const choiceName = (choice: string): string => wordIn(alterWords.choices, choice);

/** How many halves of the body an amount on each piece is put in on, so that both amounts can be shown. */
export const inAllFactor = (alteration: string): number =>
  alteration === 'full-bust' || alteration === 'small-bust' ? 2 : 1;

/** `3.0 cm in all, 1.5 cm on each front`. */
export const amountBoth = (
  one: { readonly alteration: string; readonly total: number; readonly perPiece: number },
  say: Say,
): string =>
  say.words(inAllFactor(one.alteration) === 1 ? words.amountEach : words.amountBoth, {
    each: say.length(Math.abs(one.perPiece), { purpose: 'amount' }),
    all: say.length(Math.abs(one.total), { purpose: 'amount' }),
  });

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
