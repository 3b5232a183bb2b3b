import { tolerance } from '../geometry/index.ts';
import { nearerThan, overlapDeeperThan } from './overlap.ts';
import { placedOutline, placedPoint } from './place.ts';
import { polygonBounds } from './polygon.ts';
import { eitherHand } from './stretches.ts';
import type { Layout, LayoutItem, LayoutProblem, Placement } from './types.ts';

/** What is wrong with a plan, and which piece or pieces it is about. */
export interface LayoutFault {
  readonly what: 'overlap' | 'too-near' | 'outside' | 'turn' | 'off-fold' | 'too-few' | 'too-many';
  readonly pieces: readonly string[];
}

/** Counts what the placements of one item cut: on folded cloth one of each hand, or one opened piece on the fold. */
const countFaults = (layout: Layout, item: LayoutItem): LayoutFault[] => {
  const cut = { plain: 0, mirrored: 0 };
  for (const placement of layout.placed) {
    if (placement.id !== item.id) continue;
    const folded = layout.stretches[placement.stretch]?.kind === 'folded';
    if (item.fold || !placement.mirrored || folded) cut.plain++;
    if (!item.fold && (placement.mirrored || folded)) cut.mirrored++;
  }
  const spare = layout.spare.find(({ id }) => id === item.id)?.copies ?? 0;
  const [wanted, got] = [item.plain + item.mirrored + spare, cut.plain + cut.mirrored];
  const hands = item.fold !== null || eitherHand(item) || (cut.plain >= item.plain && cut.mirrored >= item.mirrored);
  if (got < wanted || !hands) return [{ what: 'too-few', pieces: [item.id] }];
  return got > wanted ? [{ what: 'too-many', pieces: [item.id] }] : [];
};

const turnAllowed = (item: LayoutItem, placement: Placement): boolean =>
  item.turns.some((turn) => turn.rotation === placement.rotation && turn.mirrored === placement.mirrored);

const onFoldExactly = (item: LayoutItem, placement: Placement): boolean =>
  (item.fold ?? []).every((p) => Math.abs(placedPoint(placement, p).y) <= tolerance.same);

/**
 * Judges a finished plan from its placements alone: every copy once, inside its stretch, at an allowed
 * turn, on the fold where it belongs there, no two overlapping by more than `allowed` nor nearer than the
 * gap less `allowed`. No faults means it can be cut.
 */
export const verifyLayout = (
  problem: LayoutProblem,
  layout: Layout,
  allowed: number = tolerance.layout,
): readonly LayoutFault[] => {
  const faults: LayoutFault[] = problem.items.flatMap((item) => countFaults(layout, item));
  const laid = layout.placed.map((placement) => {
    const outline = placedOutline(problem, placement);
    return { placement, outline, bounds: polygonBounds(outline) };
  });
  for (const { placement, bounds } of laid) {
    const item = problem.items.find(({ id }) => id === placement.id) as LayoutItem;
    const stretch = layout.stretches[placement.stretch];
    const inside =
      stretch &&
      bounds.minX >= stretch.from - allowed &&
      bounds.maxX <= stretch.from + stretch.length + allowed &&
      bounds.minY >= -allowed &&
      bounds.maxY <= stretch.height + allowed;
    if (!inside) faults.push({ what: 'outside', pieces: [item.id] });
    if (!turnAllowed(item, placement)) faults.push({ what: 'turn', pieces: [item.id] });
    const onFold = item.fold !== null && !placement.opened;
    if (onFold && !(stretch?.kind === 'folded' && onFoldExactly(item, placement))) {
      faults.push({ what: 'off-fold', pieces: [item.id] });
    }
  }
  const { gap } = problem.cloth;
  laid.forEach((a, i) => {
    for (const b of laid.slice(i + 1)) {
      const apart =
        a.bounds.minX >= b.bounds.maxX + gap ||
        b.bounds.minX >= a.bounds.maxX + gap ||
        a.bounds.minY >= b.bounds.maxY + gap ||
        b.bounds.minY >= a.bounds.maxY + gap;
      if (apart) continue;
      const pieces = [a.placement.id, b.placement.id];
      if (overlapDeeperThan(a.outline, b.outline, allowed)) faults.push({ what: 'overlap', pieces });
      else if (gap > allowed && nearerThan(a.outline, b.outline, gap - allowed))
        faults.push({ what: 'too-near', pieces });
    }
  });
  return faults;
};
