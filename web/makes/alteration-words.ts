import type { Change, Held, Refusal, StepOutcome } from '../../src/alter/index.ts';
import { alterWords, webWords } from '../../src/words/index.ts';
import type { Say } from '../app/settings.tsx';
import { levelName } from '../parts/level-name.ts';

const words = webWords.make.alterations;

/** The word of a list, or the id itself read as words. */
const wordIn = (list: Readonly<Record<string, string>>, id: string): string => list[id] ?? levelName(id);

const spoken: Readonly<Record<string, { readonly name: string; readonly about: string }>> = alterWords.alterations;

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

const where = (at: {
  readonly piece?: string;
  readonly edge?: string;
  readonly level?: string;
  readonly seam?: string;
}) => [at.edge, at.level, at.seam, at.piece].flatMap((id) => (id ? [levelName(id).toLowerCase()] : [])).join(', ');

const sayHeld = (held: Held, say: Say): string =>
  say.words(words.heldLine, {
    what: wordIn(alterWords.held, held.what),
    where: where(held),
    by: say.length(Math.abs(held.by), { purpose: 'fine' }),
  });

const sayChange = (change: Change, say: Say): string =>
  say.words(words.changeLine, {
    what: wordIn(alterWords.changed, change.what),
    where: where(change),
    by: say.length(change.by, { purpose: 'amount', signed: true }),
    now: say.length(change.now, { purpose: 'amount' }),
  });

const unique = (lines: readonly string[]): readonly string[] => [...new Set(lines)];

/** What one step did: that all it holds was checked, and what it changed. */
export const sayOutcome = ({ applied }: StepOutcome, say: Say) => ({
  summary: say.words(words.summary, { held: applied.held.length, changes: applied.changes.length }),
  held: unique(applied.held.map((held) => sayHeld(held, say))),
  changes: unique(applied.changes.map((change) => sayChange(change, say))),
});

export const sayWarnings = ({ applied }: StepOutcome, say: Say): readonly string[] =>
  unique(
    applied.warnings.map((warning) => {
      const { message, remedy } = say.problem(warning);
      return `${message} ${remedy}`;
    }),
  );

export const sayRefusal = (refusal: Refusal, say: Say): string => {
  const { message, remedy } = say.problem(refusal.problem);
  return `${message} ${remedy}`;
};
