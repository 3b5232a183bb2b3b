import { alterationCatalogue, suits } from '../../src/alter/index.ts';
import type { UsualAlteration, Wearer } from '../../src/body/index.ts';
import type { AlterationStep, Garment, Pattern } from '../../src/pattern/index.ts';
import { freshId } from '../app/documents.ts';

/** Kinds of garment that lie on the same part of the body: what is usual on one is offered on the others. */
const alike: readonly (readonly Pattern['kind'][])[] = [
  ['top', 'dress', 'jacket', 'coat'],
  ['trousers', 'skirt', 'dress'],
];

export const similar = (a: Pattern['kind'], b: Pattern['kind']): boolean =>
  a === b || alike.some((kinds) => kinds.includes(a) && kinds.includes(b));

/**
 * What is usual for the wearer and can be done to this garment, the newest first; what the list already holds of it is
 * not offered again, nor is what was kept on this very make.
 */
export const usualHere = (
  wearer: Wearer,
  make: string,
  kind: Pattern['kind'],
  garment: Garment,
  steps: readonly AlterationStep[],
): readonly UsualAlteration[] =>
  (wearer.usual ?? [])
    .filter((one) => {
      const alteration = alterationCatalogue.find(
        ({ id, version }) => id === one.alteration && version === one.version,
      );
      return (
        one.make !== make &&
        similar(one.kind, kind) &&
        alteration !== undefined &&
        suits(alteration, garment) &&
        !steps.some((step) => step.alteration === one.alteration)
      );
    })
    .toSorted((a, b) => (a.date < b.date ? 1 : a.date > b.date ? -1 : 0));

/** A wearer with one more usual alteration; kept again from the same make, the later stands for the former. */
export const keepUsual = (wearer: Wearer, kept: Omit<UsualAlteration, 'id'>): Wearer => {
  const others = (wearer.usual ?? []).filter(
    (one) => one.alteration !== kept.alteration || one.make !== kept.make || one.kind !== kept.kind,
  );
  const id = freshId(
    'u',
    (wearer.usual ?? []).map((one) => one.id),
  );
  return { ...wearer, usual: [...others, { id, ...kept }] };
};

export const forgetUsual = (wearer: Wearer, id: string): Wearer => ({
  ...wearer,
  usual: (wearer.usual ?? []).filter((one) => one.id !== id),
});
