import type { Measures } from '../../src/body/index.ts';
import { sayNotion } from '../../src/draw/index.ts';
import { type Garment, notionsOf, type Pattern } from '../../src/pattern/index.ts';
import type { Unit } from '../../src/units/index.ts';
import { locale } from '../app/settings.tsx';

/** What to buy beside the cloth for a garment of this pattern, lengths read off its pieces and off whom it is for. */
export const sayNotions = (pattern: Pattern, garment: Garment, body: Measures, unit: Unit): readonly string[] =>
  pattern.notions.flatMap((notion) =>
    typeof notion === 'string'
      ? [notion]
      : notionsOf(garment, [notion], body).map((one) => sayNotion(one, unit, locale)),
  );
