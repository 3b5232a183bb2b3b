import type { Altered, Handle } from '../../src/alter/index.ts';
import { leftHalfOf } from '../../src/draw/index.ts';
import type { Point } from '../../src/geometry/index.ts';
import type { AlterationStep, Garment } from '../../src/pattern/index.ts';
import { fill, webWords } from '../../src/words/index.ts';
import type { Say } from '../app/settings.tsx';
import { atStop } from '../parts/table/grip-amount.ts';
import type { Grip } from '../parts/table/laid.ts';
import { alterationName, sayAmount } from './alteration-words.ts';
import { alterationOf, sliderStop } from './steps.ts';

const words = webWords.make.alterations;

/** The garment a step is done to: as bought, or as the steps before it that are counted in left it. */
export const garmentBefore = (
  bought: Garment,
  altered: Altered,
  steps: readonly AlterationStep[],
  id: string,
): Garment => {
  const place = steps.findIndex((step) => step.id === id);
  const earlier = new Set(steps.slice(0, place).map((step) => step.id));
  return altered.outcomes.findLast(({ step }) => earlier.has(step.id))?.applied.garment ?? bought;
};

export interface GripAsked {
  readonly step: AlterationStep;
  /** The garment the step is done to. */
  readonly before: Garment;
  /** The garment as it lies on the table, right and left in pieces of their own where they differ. */
  readonly told: Garment;
  readonly placeOf: (piece: string) => Point | null;
  readonly say: Say;
  readonly onMove: (amount: number) => void;
}

/** The garment a step added to the list would be done to: where right and left differ, one half of it, alike on both sides. */
export const garmentNext = (bought: Garment, altered: Altered): Garment =>
  altered.outcomes.at(-1)?.applied.garment ?? bought;

/** A handle stands on the half its step is done on: on the left one it is mirrored, as that half is. */
const onItsHalf = (handle: Handle | null, step: AlterationStep, told: Garment, half: Garment): Handle | null => {
  const left = handle && step.params['side'] === 'left' ? leftHalfOf(handle.piece, told, half) : null;
  if (!handle || !left) return handle;
  const { at, perMillimetre } = handle;
  return {
    piece: left.piece,
    at: { x: 2 * left.atX - at.x, y: at.y },
    perMillimetre: { x: -perMillimetre.x, y: perMillimetre.y },
  };
};

/** The point of a step that can be dragged, where it lies on the table; null where it has none. */
export const gripOf = ({ step, before, told, placeOf, say, onMove }: GripAsked): Grip | null => {
  const alteration = alterationOf(step);
  const parameter = alteration?.amount ? alteration.params[alteration.amount] : undefined;
  if (!step.on || !alteration?.amount || !alteration.handle || parameter?.unit !== 'mm') return null;
  if (alteration.needs(before) !== null) return null;
  const handle = onItsHalf(alteration.handle(before, step.params), step, told, before);
  const place = handle && placeOf(handle.piece);
  const { x, y } = handle?.perMillimetre ?? { x: 0, y: 0 };
  if (!handle || !place || (x === 0 && y === 0)) return null;
  const given = step.params[alteration.amount];
  const range = { least: parameter.min, most: parameter.max, stop: sliderStop(say.unit), perMillimetre: { x, y } };
  return {
    ...range,
    label: fill(words.grip, { alteration: alterationName(step.alteration) }, say.unit),
    at: { x: handle.at.x + place.x, y: handle.at.y + place.y },
    amount: typeof given === 'number' ? given : atStop(range, 0),
    said: sayAmount(step, alteration.amount, say),
    figure: say.length(typeof given === 'number' ? given : 0, { purpose: 'amount', signed: true }),
    onMove,
  };
};
