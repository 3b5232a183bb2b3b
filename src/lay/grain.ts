import { type Point, tolerance } from '../geometry/index.ts';
import type { Turn } from './polygon.ts';

const positive = (degrees: number): number => ((degrees % 360) + 360) % 360;

/**
 * The turns that lay a grain line along the cloth (x), as drawn and mirrored. Without nap the piece may also
 * be turned end for end. With nap all pieces lie the same way: what is down on the wearer (y) points along x;
 * for a piece whose grain runs straight across it, the arrow itself says which way.
 */
export const grainTurns = (grain: { readonly from: Point; readonly to: Point }, oneWay: boolean): readonly Turn[] => {
  const snap = (value: number): number => (Math.abs(value) <= tolerance.same ? 0 : value);
  const [dx, dy] = [snap(grain.to.x - grain.from.x), snap(grain.to.y - grain.from.y)];
  const upward = dy < 0;
  const angle =
    dy === 0 ? (dx < 0 ? 180 : 0) : dx === 0 ? 90 : (Math.atan2(upward ? -dy : dy, upward ? -dx : dx) * 180) / Math.PI;
  const plain = positive(-angle);
  // Mirrored, the direction at `angle` points to 180 − angle.
  const mirrored = positive(angle - 180);
  const turns: Turn[] = [
    { rotation: plain, mirrored: false },
    { rotation: mirrored, mirrored: true },
  ];
  if (oneWay) return turns;
  return turns.flatMap((turn) => [turn, { ...turn, rotation: positive(turn.rotation + 180) }]);
};
