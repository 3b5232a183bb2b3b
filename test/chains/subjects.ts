import type { Measures } from '../../src/body/index.ts';
import { housePatterns } from '../../src/drafting/index.ts';
import type { Garment } from '../../src/pattern/index.ts';

/** One garment there is: a house pattern in a view and size. */
export interface Subject {
  readonly pattern: string;
  readonly view: string;
  readonly size: string;
  readonly body: Measures;
  readonly garment: Garment;
}

const drafted = new Map<string, readonly Subject[]>();

/** Every size of one view, drafted once. */
export const sizesOf = (patternId: string, view: string): readonly Subject[] => {
  const key = `${patternId} ${view}`;
  const known = drafted.get(key);
  if (known) return known;
  const house = housePatterns.find(({ id }) => id === patternId);
  if (!house) throw new Error(`no house pattern ${patternId}`);
  const made = house
    .pattern({ view })
    .sizes.map(({ id, body, garment }) => ({ pattern: patternId, view, size: id, body, garment }));
  drafted.set(key, made);
  return made;
};

export const views: readonly { readonly pattern: string; readonly view: string }[] = housePatterns.flatMap((house) =>
  house.views.map((view) => ({ pattern: house.id, view: view.id })),
);
