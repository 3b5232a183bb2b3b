import { laidOutline } from './place.ts';
import { movePolygon, type Polygon, polygonBounds, rounding, samePolygon, type Turn, turnPolygon } from './polygon.ts';
import type { Strip, StripItem } from './table.ts';
import type { LayoutItem, LayoutProblem } from './types.ts';

/** A strip to be searched, and which of the problem's items each of the strip's items is. */
export interface PlannedStretch {
  readonly kind: 'single' | 'folded';
  readonly strip: Strip;
  readonly sources: readonly { readonly item: LayoutItem; readonly opened: boolean }[];
}

/** One way to divide the work over the cloth. */
export interface StretchPlan {
  readonly stretches: readonly PlannedStretch[];
  readonly spare: readonly { readonly id: string; readonly copies: number }[];
}

interface Laid {
  readonly item: LayoutItem;
  readonly opened: boolean;
  readonly count: number;
  readonly turns: readonly Turn[];
  readonly onFold: boolean;
}

const boxed = (polygon: Polygon, turn: Turn): Polygon => {
  const turned = turnPolygon(polygon, turn);
  const bounds = polygonBounds(turned);
  return movePolygon(turned, -bounds.minX, -bounds.minY);
};

/** Whether the copies as drawn and the mirrored ones cover the same shapes, so that either will do for both. */
export const eitherHand = (item: LayoutItem): boolean => {
  const { outline } = item;
  const bounds = polygonBounds(outline);
  const near = rounding * Math.max(bounds.maxX - bounds.minX, bounds.maxY - bounds.minY);
  const plain = item.turns.filter((turn) => !turn.mirrored).map((turn) => boxed(outline, turn));
  const mirrored = item.turns.filter((turn) => turn.mirrored).map((turn) => boxed(outline, turn));
  return plain.some((p) => mirrored.some((q) => samePolygon(p, q, near)));
};

/** How far across the cloth the item reaches at least, over its turns. */
export const leastAcross = (outline: Polygon, turns: readonly Turn[]): number =>
  Math.min(
    ...turns.map((turn) => {
      const bounds = polygonBounds(turnPolygon(outline, turn));
      return bounds.maxY - bounds.minY;
    }),
  );

/** The turns in which a half's fold edge is its lowest line, so that it can lie on the fold at y = 0. */
const foldTurns = (item: LayoutItem): readonly Turn[] => {
  const [a, b] = item.fold as NonNullable<LayoutItem['fold']>;
  return item.turns.filter((turn) => {
    const outline = turnPolygon(item.outline, turn);
    const edge = turnPolygon([a, b], turn);
    const bounds = polygonBounds(outline);
    const near = rounding * (bounds.maxX - bounds.minX + bounds.maxY - bounds.minY);
    return edge.every(({ y }) => y - bounds.minY <= near);
  });
};

const singleLaid = (item: LayoutItem, plain: number, mirrored: number): Laid[] => {
  const common = { item, opened: item.fold !== null, onFold: false };
  return [
    { ...common, count: plain, turns: item.turns.filter((turn) => !turn.mirrored) },
    { ...common, count: mirrored, turns: item.turns.filter((turn) => turn.mirrored) },
  ];
};

const plannedStretch = (
  kind: PlannedStretch['kind'],
  height: number,
  gap: number,
  laid: readonly Laid[],
): PlannedStretch => {
  const wanted = laid.filter(({ count }) => count > 0);
  const items: StripItem[] = wanted.map(({ item, opened, count, turns, onFold }) => ({
    outline: laidOutline(item, opened),
    count,
    turns,
    onFold,
  }));
  return { kind, strip: { height, gap, items }, sources: wanted.map(({ item, opened }) => ({ item, opened })) };
};

const foldedPlan = (problem: LayoutProblem, oddOnSingle: boolean): StretchPlan => {
  const { width, gap } = problem.cloth;
  const half = width / 2;
  const folded: Laid[] = [];
  const single: Laid[] = [];
  const spare: { id: string; copies: number }[] = [];
  for (const item of problem.items) {
    const turns = item.fold ? foldTurns(item) : item.turns;
    if (turns.length === 0 || leastAcross(item.outline, turns) > half) {
      single.push(...singleLaid(item, item.plain, item.mirrored));
    } else if (item.fold) {
      folded.push({ item, opened: false, count: item.plain + item.mirrored, turns, onFold: true });
    } else {
      const either = eitherHand(item);
      const all = item.plain + item.mirrored;
      const pairs = either ? Math.floor(all / 2) : Math.min(item.plain, item.mirrored);
      const odd = all - 2 * pairs;
      folded.push({ item, opened: false, count: pairs + (oddOnSingle ? 0 : odd), turns, onFold: false });
      if (odd === 0) continue;
      if (oddOnSingle && either) single.push(...singleLaid(item, odd, 0));
      else if (oddOnSingle) single.push(...singleLaid(item, item.plain - pairs, item.mirrored - pairs));
      else spare.push({ id: item.id, copies: odd });
    }
  }
  const stretches = [plannedStretch('folded', half, gap, folded), plannedStretch('single', width, gap, single)];
  return { stretches: stretches.filter(({ strip }) => strip.items.length > 0), spare };
};

/**
 * The ways to divide the pieces over the cloth. Single cloth has one. On cloth folded lengthwise every
 * placement cuts a mirrored pair, so a copy without a partner is either cut with one to spare, or laid
 * on a single stretch after the fold; both ways are given where they differ. Pieces too wide for the
 * fold always go on the single stretch.
 */
export const stretchPlans = (problem: LayoutProblem): readonly StretchPlan[] => {
  const { width, gap, fold } = problem.cloth;
  if (fold === 'single') {
    const laid = problem.items.flatMap((item) => singleLaid(item, item.plain, item.mirrored));
    return [{ stretches: [plannedStretch('single', width, gap, laid)], spare: [] }];
  }
  const paired = foldedPlan(problem, false);
  return paired.spare.length === 0 ? [paired] : [paired, foldedPlan(problem, true)];
};
