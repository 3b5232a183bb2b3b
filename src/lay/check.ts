import type { Point } from '../geometry/index.ts';
import { bad, type Problem } from '../units/index.ts';
import { laidOutline } from './place.ts';
import { type Polygon, polygonArea } from './polygon.ts';
import { leastAcross } from './stretches.ts';
import type { LayoutItem, LayoutProblem } from './types.ts';

const problem = (...about: Parameters<typeof bad>): Problem => bad(...about).problem;

/** Whether two sides of the polygon cross; sides that only touch do not. */
const crossesItself = (polygon: Polygon): boolean => {
  const side = (a: Point, b: Point, p: Point): number => (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
  const n = polygon.length;
  const at = (i: number): Point => polygon[i % n] as Point;
  for (let i = 0; i < n; i++) {
    for (let j = i + 2; j < n; j++) {
      const [a, b, p, q] = [at(i), at(i + 1), at(j), at(j + 1)];
      if (side(a, b, p) * side(a, b, q) < 0 && side(p, q, a) * side(p, q, b) < 0) return true;
    }
  }
  return false;
};

const itemProblem = (item: LayoutItem, width: number): Problem | null => {
  const values = { piece: item.name };
  if (item.outline.length < 3 || !(Math.abs(polygonArea(item.outline)) > 0)) return problem('lay.no-outline', values);
  if (crossesItself(item.outline)) return problem('lay.crossed-outline', values);
  const counts = [item.plain, item.mirrored];
  if (!counts.every((count) => Number.isInteger(count) && count >= 0)) return problem('lay.bad-count', values);
  const hands = [...(item.plain > 0 ? [false] : []), ...(item.mirrored > 0 ? [true] : [])];
  for (const mirrored of hands) {
    const turns = item.turns.filter((turn) => turn.mirrored === mirrored);
    if (turns.length === 0) return problem('lay.no-turn', values);
    const across = leastAcross(laidOutline(item, item.fold !== null), turns);
    if (across > width) {
      return problem('lay.wider-than-cloth', { ...values, width: { mm: across }, cloth: { mm: width } });
    }
  }
  return null;
};

/** What makes a layout problem unanswerable, or null. */
export const layoutProblemFault = ({ cloth, items }: LayoutProblem): Problem | null => {
  if (!(cloth.width > 0) || !Number.isFinite(cloth.width)) return problem('lay.no-width');
  if (!(cloth.gap >= 0) || !Number.isFinite(cloth.gap)) return problem('lay.bad-gap');
  if (!items.some(({ plain, mirrored }) => plain + mirrored > 0)) return problem('lay.nothing');
  for (const item of items) {
    const fault = itemProblem(item, cloth.width);
    if (fault) return fault;
  }
  return null;
};
