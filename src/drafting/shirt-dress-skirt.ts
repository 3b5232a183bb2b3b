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
  reversePath,
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
  /** From the panel's beginning to the side. */
  readonly top: Path;
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

/** How far towards the centre waist and hem come up to meet a flared side square, as a share of the narrower skirt's top. */
const turnShare = 0.6;

/** From an end of the side, square to it, to where the edge is level: that end lies `up` above it, mm. */
const turned = (end: Point, along: Point, up: number): Cubic => {
  const inward = scale(perpendicular(along), -1);
  const level: Point = add(end, scale(inward, up / inward.y));
  const turn = 2 * level.x - end.x;
  return cubic(
    end,
    lerp(end, level, 0.6),
    { x: level.x + 0.4 * (turn - level.x), y: level.y },
    { x: turn, y: level.y },
  );
};

const panel = (plan: ShirtDressPlan, from: number, waist: number, up: number): SkirtPanel => {
  const { length, flare, fullness } = plan.skirt;
  const low: Point = { x: from + fullness * waist + flare, y: length };
  const high: Point = { x: from + fullness * waist, y: 0 };
  const along = normalize(subtract(low, high));
  const raised = lerp(high, low, -up / length);
  const end: Point = lerp(high, low, (length - up) / length);
  const [top, bottom] = [turned(raised, along, up), turned(end, along, up)];
  const hem: Path = [bottom, line(bottom.to, { x: from, y: length })];
  return {
    from,
    waist,
    top: [line({ x: from, y: 0 }, top.to), ...reversePath([top])],
    side: line(raised, end),
    hem,
    tier: plan.view.tier ? shirtDress.tierFullness * pathLength(hem) : 0,
  };
};

/**
 * The skirt under the waistband: each quarter's top is the waistband's quarter times the fullness, gathered; sides
 * flare alike in front and behind; waist and hem come up by the same to meet them square, so that the side is as long
 * as the centre and does not kick out. Side seams run on from the bodice's,
 * wherever bust and dart have set the back's; a fuller front is drawn in more in front. As taught in manuals of metric pattern cutting (gathered and tiered skirts).
 */
export const draftSkirt = (plan: ShirtDressPlan, { back }: Bodice): SkirtDraft => {
  const wider = plan.bodice.waistQuarter - back.side[1].to.x;
  const half = shirtDress.stand / 2;
  const widths = { front: plan.waistQuarter + wider - half, back: plan.waistQuarter - wider };
  const slope = plan.skirt.flare / plan.skirt.length;
  const up = (slope * turnShare * plan.skirt.fullness * Math.min(widths.front, widths.back)) / 2;
  return { front: panel(plan, half, widths.front, up), back: panel(plan, 0, widths.back, up) };
};
