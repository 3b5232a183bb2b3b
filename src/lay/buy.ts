import type { Cloth } from '../cloth/index.ts';
import type { Layout } from './types.ts';

/** What a plan needs of a cloth, and whether the cloth in hand is long enough. Millimetres. */
export interface ClothNeeded {
  /** Washed cloth the plan takes. */
  readonly length: number;
  /** Added to square the ends. */
  readonly squaring: number;
  /** What the first wash takes of the length to buy; 0 for washed cloth. */
  readonly shrinkage: number;
  /** To buy, before rounding. */
  readonly exact: number;
  /** To buy, to the next 0.1 m. */
  readonly toBuyMetric: number;
  /** To buy, to the next ⅛ yd. */
  readonly toBuyYards: number;
  /** The length in hand as it will be after washing; null when there is none yet. */
  readonly inHand: number | null;
  /** In hand less the plan's length: negative when it does not fit; null when there is none yet. */
  readonly spare: number | null;
  /** `tight` when it fits only if the ends are square already. */
  readonly fits: 'yes' | 'tight' | 'no' | null;
}

/** Trade: 50 to 100 mm to square the ends. Knits are cut from the roll the least straight. */
const squaringOf = (cloth: Cloth): number => (cloth.structure === 'knit' ? 100 : 50);

const eighthYard = 914.4 / 8;
const tenthMetre = 100;

/** Rounds up to whole steps; a length that is a whole number of steps but for rounding is not put up another. */
const nextStep = (length: number, step: number): number => Math.ceil(length / step - 1e-9) * step;

/**
 * What to buy for a plan: its length before the first wash, L / (1 − s), and enough to square the ends.
 * Cloth that has been washed has shrunk already, and nothing is added for it a second time.
 */
export const buyLength = (layout: Layout, cloth: Cloth): ClothNeeded => {
  const shrink = cloth.washed ? 0 : cloth.shrinkAlong;
  const squaring = squaringOf(cloth);
  const unwashed = layout.length / (1 - shrink);
  const exact = unwashed + squaring;
  const inHand = cloth.length === null ? null : cloth.length * (1 - shrink);
  const spare = inHand === null ? null : inHand - layout.length;
  return {
    length: layout.length,
    squaring,
    shrinkage: unwashed - layout.length,
    exact,
    toBuyMetric: nextStep(exact, tenthMetre),
    toBuyYards: nextStep(exact, eighthYard),
    inHand,
    spare,
    fits: spare === null ? null : spare < 0 ? 'no' : spare < squaring ? 'tight' : 'yes',
  };
};
