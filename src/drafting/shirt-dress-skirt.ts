import {
  add,
  type Cubic,
  cubic,
  type Line,
  lerp,
  line,
  normalize,
  type Path,
  type Point,
  pathLength,
  perpendicular,
  scale,
  subtract,
} from '../geometry/index.ts';
import type { Bodice } from './blouse-bodice.ts';
import { type ShirtDressPlan, shirtDress } from './shirt-dress-plan.ts';

/** One quarter of the skirt, its waistband's and its tier's edges; mm. Waistband seam at y = 0, the centre at x = 0. */
export interface SkirtPanel {
  /** Where the panel begins: at the button stand's seam, or at the centre back. */
  readonly from: number;
  /** Length of the waistband's quarter from there to the side. */
  readonly waist: number;
  readonly top: number;
  readonly side: Line;
  /** From the side to the panel's beginning. */
  readonly hem: Path;
  /** Length of the tier's quarter at its top; 0 where there is none. */
  readonly tier: number;
}

export interface SkirtDraft {
  readonly front: SkirtPanel;
  readonly back: SkirtPanel;
}

/** How far towards the centre the hem comes up to meet a flared side square, as a share of the narrower hem. */
const hemTurn = 0.6;

const panel = (plan: ShirtDressPlan, from: number, waist: number, up: number): SkirtPanel => {
  const { length, flare, fullness } = plan.skirt;
  const top = fullness * waist;
  const low: Point = { x: from + top + flare, y: length };
  const high: Point = { x: from + top, y: 0 };
  const along = normalize(subtract(low, high));
  // The side ends a little above the hem's level, and the hem leaves it square.
  const end: Point = lerp(high, low, (length - up) / length);
  const inward = scale(perpendicular(along), -1);
  const level: Point = add(end, scale(inward, up / inward.y));
  const turn = 2 * level.x - end.x;
  const curve: Cubic = cubic(
    end,
    lerp(end, level, 0.6),
    { x: level.x + 0.4 * (turn - level.x), y: length },
    { x: turn, y: length },
  );
  const hem: Path = [curve, line({ x: turn, y: length }, { x: from, y: length })];
  return {
    from,
    waist,
    top,
    side: line(high, end),
    hem,
    tier: plan.view.tier ? shirtDress.tierFullness * pathLength(hem) : 0,
  };
};

/**
 * The skirt under the waistband: each quarter's top is the waistband's quarter times the fullness, gathered; sides
 * flare alike in front and behind, and the hem comes up to meet them square. Side seams run on from the bodice's,
 * wherever bust and dart have set the back's; a fuller front is drawn in more in front. As taught in manuals of metric pattern cutting (gathered and tiered skirts).
 */
export const draftSkirt = (plan: ShirtDressPlan, { back }: Bodice): SkirtDraft => {
  const wider = plan.bodice.waistQuarter - back.side[1].to.x;
  const half = shirtDress.stand / 2;
  const widths = { front: plan.waistQuarter + wider - half, back: plan.waistQuarter - wider };
  const slope = plan.skirt.flare / plan.skirt.length;
  const up = (slope * hemTurn * plan.skirt.fullness * Math.min(widths.front, widths.back)) / 2;
  return { front: panel(plan, half, widths.front, up), back: panel(plan, 0, widths.back, up) };
};
