/** One place where two versions of a document differ. */
export interface Difference {
  /** Names from the outside in; things in a list go by what they are called, not by their number. */
  readonly path: readonly string[];
  readonly mine: string | null;
  readonly theirs: string | null;
}

type Leaves = ReadonlyMap<string, { readonly path: readonly string[]; readonly value: string }>;

const nameOf = (item: unknown, index: number): string => {
  if (typeof item !== 'object' || item === null) return String(index + 1);
  const named = item as Readonly<Record<string, unknown>>;
  for (const key of ['measure', 'date', 'alteration', 'name', 'label', 'id']) {
    const value = named[key];
    if (typeof value === 'string' && value !== '') return value;
  }
  return String(index + 1);
};

const leavesOf = (value: unknown): Leaves => {
  const leaves = new Map<string, { path: readonly string[]; value: string }>();
  const walk = (part: unknown, path: readonly string[], place: string) => {
    if (Array.isArray(part)) {
      const seen = new Map<string, number>();
      for (const [index, item] of part.entries()) {
        const name = nameOf(item, index);
        const count = (seen.get(name) ?? 0) + 1;
        seen.set(name, count);
        walk(item, [...path, count > 1 ? `${name} (${count})` : name], `${place}/${name}#${count}`);
      }
    } else if (typeof part === 'object' && part !== null) {
      for (const [key, inner] of Object.entries(part)) {
        if (key !== 'format' && key !== 'id') walk(inner, [...path, key], `${place}/${key}`);
      }
    } else leaves.set(place, { path, value: part === null ? '' : String(part) });
  };
  walk(value, [], '');
  return leaves;
};

/** Where two versions of a document differ, in the order of the first. */
export const differences = (mine: unknown, theirs: unknown): readonly Difference[] => {
  const a = leavesOf(mine);
  const b = leavesOf(theirs);
  return [...new Set([...a.keys(), ...b.keys()])].flatMap((place): Difference[] => {
    const left = a.get(place);
    const right = b.get(place);
    if (left?.value === right?.value) return [];
    return [{ path: (left ?? right)?.path ?? [], mine: left?.value ?? null, theirs: right?.value ?? null }];
  });
};
