import { type Cubic, cubic, line, type Path, type Point } from '../geometry/index.ts';

/** A curve down the body whose height grows evenly with its parameter, so that a level is found by a rule of three. */
export const fallingCurve = (from: Point, to: Point, slopeFrom: number, slopeTo: number): Cubic => {
  const third = (to.y - from.y) / 3;
  return cubic(
    from,
    { x: from.x + slopeFrom * third, y: from.y + third },
    { x: to.x - slopeTo * third, y: to.y - third },
    to,
  );
};

/** The parameter at which a falling curve passes a height. */
export const parameterAtHeight = (curve: Cubic, y: number): number => (y - curve.from.y) / (curve.to.y - curve.from.y);

/** Where a side seam passes, millimetres; the hem lies below the hip. */
export interface SideFrame {
  readonly underarm: Point;
  readonly waist: Point;
  readonly hip: Point;
  readonly hem: Point;
}

/** A side seam: underarm to waist, waist to hip, hip to hem. */
export type Side = readonly [Cubic, Cubic, Path[number]];

/**
 * A side seam in three parts.
 *
 * 1. From the underarm nearly straight to the waist: no bend at the underarm, so that a dart's legs leave
 *    a straight.
 * 2. At the waist it runs along the grain where it draws in; where it only widens or only narrows it keeps
 *    to the slope between (the harmonic mean of both, which never bulges: Fritsch & Butland, 1984).
 * 3. Over the hip it comes round to the grain, and falls straight to the hem, which it meets square.
 *
 * Construction as taught in manuals of metric pattern cutting.
 */
export const draftSide = ({ underarm, waist, hip, hem }: SideFrame): Side => {
  const above = (waist.x - underarm.x) / (waist.y - underarm.y);
  const below = (hip.x - waist.x) / (hip.y - waist.y);
  const atWaist = above * below > 0 ? (2 * above * below) / (above + below) : 0;
  const atUnderarm = (3 * above - atWaist) / 2;
  return [fallingCurve(underarm, waist, atUnderarm, atWaist), fallingCurve(waist, hip, atWaist, 0), line(hip, hem)];
};
