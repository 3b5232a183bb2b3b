import { useEffect, useMemo, useState } from 'react';
import type { HouseChoice, HousePattern } from '../../src/drafting/index.ts';
import { type Pattern, readPattern } from '../../src/pattern/index.ts';
import { problemWords, sentence } from '../../src/words/index.ts';
import { type Asked, useDocument } from '../app/desk-context.ts';

/** `house:blouse` names a house pattern; anything else is a document. */
const houseName = (id: string): string | null => (id.startsWith('house:') ? id.slice('house:'.length) : null);

/** House patterns are drafted when first asked for, and each view and cup once a visit: every size takes some 30 ms in all. */
class HouseShelf {
  readonly #drafted = new Map<string, Pattern>();
  drafted(house: HousePattern, choice: HouseChoice): Pattern {
    const name = [house.id, choice.view ?? house.views[0]?.id, choice.cup].join(' ');
    const known = this.#drafted.get(name);
    if (known) return known;
    const pattern = house.pattern(choice);
    this.#drafted.set(name, pattern);
    return pattern;
  }
}
const shelf = new HouseShelf();

/** The house patterns; undefined until their room is loaded. Drafting is a room of its own, fetched when first needed. */
export const useHousePatterns = (): readonly HousePattern[] | undefined => {
  const [patterns, setPatterns] = useState<readonly HousePattern[]>();
  const [fault, setFault] = useState<unknown>(null);
  useEffect(() => {
    let current = true;
    import('../../src/drafting/index.ts').then(
      (room) => current && setPatterns(room.housePatterns),
      (reason) => current && setFault(reason),
    );
    return () => {
      current = false;
    };
  }, []);
  // Thrown while drawing, so that the page's own boundary says it.
  if (fault) throw fault;
  return patterns;
};

const notHere = problemWords['web.not-here'] ?? { message: '', remedy: '' };

/** A pattern as it was stored, read again through its own door: what is stored may be older than the program. */
const useStoredPattern = (id: string | null): Asked<Pattern> => {
  const asked = useDocument<unknown>(id ?? '');
  const body = asked.state === 'here' ? asked.value.body : null;
  const read = useMemo(() => (body === null ? null : readPattern(body)), [body]);
  if (id === null || asked.state === 'asking') return { state: 'asking' };
  if (asked.state === 'refused') return asked;
  if (!read) return { state: 'asking' };
  if (!read.ok) return { state: 'refused', words: sentence(read.problem, 'cm'), missing: false };
  return { state: 'here', value: read.value };
};

/** One of the house's patterns by its id (`house:blouse`); null where the id is not one of them, undefined until they are loaded. */
export const useHousePattern = (id: string): HousePattern | null | undefined => {
  const patterns = useHousePatterns();
  const name = houseName(id);
  if (name === null) return null;
  return patterns && (patterns.find((pattern) => pattern.id === name) ?? null);
};

/** A view that is not, or no longer, one of the pattern's is its first; a cup likewise its middle one. */
const ownChoice = (house: HousePattern, { view, cup }: HouseChoice): HouseChoice => ({
  ...(view !== undefined && house.views.some((one) => one.id === view) ? { view } : {}),
  ...(cup !== undefined && house.cups.includes(cup) ? { cup } : {}),
});

/** A pattern by its id, from the house's own (in one of its views and cups) or from what she brought in. */
export const usePattern = (id: string, choice: HouseChoice = {}): Asked<Pattern> => {
  const house = houseName(id);
  const patterns = useHousePatterns();
  const stored = useStoredPattern(house === null ? id : null);
  if (house === null) return stored;
  if (!patterns) return { state: 'asking' };
  const found = patterns.find((pattern) => pattern.id === house);
  return found
    ? { state: 'here', value: shelf.drafted(found, ownChoice(found, choice)) }
    : { state: 'refused', words: notHere, missing: true };
};
