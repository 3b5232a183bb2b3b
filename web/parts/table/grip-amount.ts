import type { Point } from '../../../src/geometry/index.ts';
import type { Grip } from './laid.ts';

type Moving = Pick<Grip, 'perMillimetre' | 'least' | 'most' | 'stop'>;

/** An amount as a grip may have it: within its limits, and at a stop of its own. */
export const atStop = ({ least, most, stop }: Moving, amount: number): number => {
  const stopped = Math.round(amount / stop);
  return Math.min(Math.max(stopped, Math.ceil(least / stop)), Math.floor(most / stop)) * stop;
};

/**
 * The amount when a grip taken hold of at `from` mm has been drawn by `by` mm: how far that goes along the way the point
 * moves, for each millimetre it moves.
 */
export const drawnTo = (grip: Moving, from: number, by: Point): number => {
  const { x, y } = grip.perMillimetre;
  const square = x * x + y * y;
  return square === 0 ? from : atStop(grip, from + (by.x * x + by.y * y) / square);
};

/** The amount after a key, or null where the key is not one of a grip's. An arrow pushes the point the way it points, where it goes that way at all. */
export const keyedTo = (grip: Moving, amount: number, key: string, far: boolean): number | null => {
  const { x, y } = grip.perMillimetre;
  const one = grip.stop * (far ? 10 : 1);
  const ways: Readonly<Record<string, number>> = {
    ArrowRight: x < 0 && Math.abs(x) > Math.abs(y) ? -1 : 1,
    ArrowLeft: x < 0 && Math.abs(x) > Math.abs(y) ? 1 : -1,
    ArrowDown: Math.abs(y) >= Math.abs(x) && y > 0 ? 1 : -1,
    ArrowUp: Math.abs(y) >= Math.abs(x) && y > 0 ? -1 : 1,
    PageUp: 10,
    PageDown: -10,
  };
  if (key === 'Home') return atStop(grip, grip.least);
  if (key === 'End') return atStop(grip, grip.most);
  const way = ways[key];
  return way === undefined ? null : atStop(grip, amount + way * one);
};
