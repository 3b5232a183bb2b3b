import { bodyWords, envelopePageWords, webWords } from '../../src/words/index.ts';
import type { Say } from '../app/settings.tsx';
import type { Difference } from '../documents/differences.ts';
import { alterationName, choiceName } from '../makes/alteration-words.ts';

const words = webWords.saving;

const wordIn = (list: object, name: string): string | undefined => {
  const found = (list as Readonly<Record<string, unknown>>)[name];
  return typeof found === 'string' ? found : undefined;
};

const isDay = (part: string) => /^\d{4}-\d\d-\d\d( \(\d+\))?$/.test(part);

const measureName = (part: string): string | undefined => {
  const [id, again] = part.split(' ');
  const name = (bodyWords.measures as Readonly<Record<string, { readonly name: string } | undefined>>)[id ?? '']?.name;
  return name && again ? `${name} ${again}` : name;
};

/** What an alteration of a list is called; `full-bust (2)` is the second of its kind. */
const stepName = (part: string): string => part.replace(/^[a-z-]+/, alterationName);

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** Parts of a document that only hold others together: nobody calls them anything. */
const silent = new Set(['sets', 'readings', 'steps', 'params', 'mm', 'page', 'owned']);

/** What is told by the row of its length, or by the row of what it belongs to. */
const toldElsewhere = (path: readonly string[]): boolean => {
  const last = path.at(-1) ?? '';
  if (path.includes('readings')) return last !== 'mm';
  if (path.includes('steps')) return last === 'alteration' || last === 'version';
  return last === 'id';
};

/** What a field is called on the page of its document; what she owns of a pattern has names of its own. */
const fieldName = (path: readonly string[], part: string): string | undefined => {
  const lists = [words.fields, envelopePageWords.fields];
  const found = (path[0] === 'owned' ? lists.toReversed() : lists).map((list) => wordIn(list, part));
  return found.find((name) => name !== undefined);
};

/** What differs, by the names it has on the page: “Bust girth on 14 March 2026”. */
const nameOf = (path: readonly string[], say: Say): string => {
  const day = path.find(isDay);
  const names = path
    .filter((part) => !silent.has(part) && !isDay(part))
    .map((part, place) =>
      path[0] === 'steps' && place === 0 ? stepName(part) : (measureName(part) ?? fieldName(path, part) ?? part),
    );
  const name = capital(names.join(', '));
  return day ? say.words(words.onDay, { what: name, day: say.date(day.slice(0, 10)) }) : name;
};

const lengths = new Set([
  ...['mm', 'amount', 'gap', 'width', 'length'],
  ...['allowance', 'draftedCup', 'draftedStature', 'allowances', 'takenOut'],
]);
const shares = new Set(['stretchAcross', 'stretchAlong', 'shrinkAlong', 'shrinkAcross']);

const sayValue = (path: readonly string[], value: string | null, say: Say, called: (id: string) => string): string => {
  const last = path.at(-1) ?? '';
  if (value === null || value === '') return words.nothing;
  const number = Number(value);
  if (path.includes('figures') && Number.isFinite(number))
    return say.length(number, { purpose: path[0] === 'clothNeeded' ? 'cloth' : 'measure' });
  if (lengths.has(last) && Number.isFinite(number))
    return say.length(number, { purpose: last === 'length' ? 'cloth' : last === 'amount' ? 'amount' : 'measure' });
  if (shares.has(last) && Number.isFinite(number)) return `${Math.round(number * 1000) / 10}\u00a0%`;
  if (last === 'on') return value === 'true' ? webWords.make.alterations.on : webWords.make.alterations.off;
  if (value === 'true' || value === 'false') return value === 'true' ? words.yes : words.no;
  if (last === 'date') return say.date(value);
  if (last === 'where' && path[0] !== 'owned') return choiceName(value);
  if (last === 'waistAt') return wordIn(bodyWords.waistAt, value) ?? value;
  if (last === 'state') return wordIn(webWords.make.states, value) ?? value;
  if (last === 'fold') return wordIn(webWords.make.layout.folds, value) ?? value;
  if (last === 'paper') return wordIn(webWords.make.print.papers, value) ?? value;
  if (last === 'terms') return wordIn(webWords.cloths.termsNames, value) ?? value;
  if (last === 'wearer' || last === 'cloth' || last === 'pattern') return called(value);
  return value;
};

interface SaidDifference {
  readonly what: string;
  readonly mine: string;
  readonly theirs: string;
}

/** Differences in words and in her unit, each told once. `called` gives the name of a kept document. */
export const sayDifferences = (
  rows: readonly Difference[],
  say: Say,
  called: (id: string) => string,
): readonly SaidDifference[] =>
  rows
    .filter((row) => !toldElsewhere(row.path))
    .map((row) => ({
      what: nameOf(row.path, say),
      mine: sayValue(row.path, row.mine, say, called),
      theirs: sayValue(row.path, row.theirs, say, called),
    }));
