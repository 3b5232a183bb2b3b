import { type Alteration, applyAlterations } from '../../src/alter/index.ts';
import { drawParams, randomFrom } from './draw-steps.ts';
import { sizesOf, views } from './subjects.ts';

/** How many single steps of usual amounts were tried on a pattern, and how many refused, with the reasons. */
export interface Rate {
  readonly tried: number;
  readonly refused: number;
  readonly reasons: Readonly<Record<string, number>>;
}

/** One alteration by itself on every view and size of a pattern, so many random steps each, amounts in the usual range. */
export const singleSteps = (alteration: Alteration, pattern: string, each = 8): Rate => {
  const random = randomFrom(20261);
  const reasons: Record<string, number> = {};
  let [tried, refused] = [0, 0];
  for (const { view } of views.filter((one) => one.pattern === pattern)) {
    for (const { garment } of sizesOf(pattern, view)) {
      if (alteration.needs(garment) !== null) continue;
      for (let i = 0; i < each; i += 1) {
        const params = drawParams(random, alteration, garment, 'usual');
        const step = { id: 's1', alteration: alteration.id, version: alteration.version, on: true, params };
        const { refusal } = applyAlterations(garment, [step], undefined, [alteration]);
        tried += 1;
        if (!refusal) continue;
        refused += 1;
        reasons[refusal.problem.code] = (reasons[refusal.problem.code] ?? 0) + 1;
      }
    }
  }
  return { tried, refused, reasons };
};
