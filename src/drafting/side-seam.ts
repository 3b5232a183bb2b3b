import { type Cubic, cubic, type Line, line, type Point, segmentPointAt } from '../geometry/index.ts';

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
export const parameterAtHeight = (curve: Cubic | Line, y: number): number =>
  (y - curve.from.y) / (curve.to.y - curve.from.y);

/** Where a side seam passes, millimetres; the hem lies below the hip. */
export interface SideFrame {
  readonly underarm: Point;
  /** Height of the fullest bust on the seam, between underarm and waist. */
  readonly bustLevel: number;
  readonly waist: Point;
  readonly hip: Point;
  readonly hem: Point;
}

/** A side seam: underarm to bust level, to waist, to hip, to hem. */
export type Side = readonly [Cubic, Cubic, Cubic, Line];

/** Of the slope from underarm to waist, how much the seam already has above the bust. */
const slantAboveBust = 0.3;

/** The slope between two slopes that never bulges: their harmonic mean, or none where they turn back (Fritsch & Butland, 1984). */
export const slopeBetween = (a: number, b: number): number => (a * b > 0 ? (2 * a * b) / (a + b) : 0);

/**
 * A side seam in four parts.
 *
 * 1. From the underarm it falls to the bust nearly along the grain: the body is no wider above its bust
 *    than at it.
 * 2. From the bust it draws in to the waist.
 * 3. At the waist it runs along the grain where it draws in; where it only widens or only narrows it keeps
 *    to the slope between.
 * 4. Over the hip it comes round to the grain, and falls straight to the hem, which it meets square.
 *
 * Construction as taught in manuals of metric pattern cutting.
 */
export const draftSide = ({ underarm, bustLevel, waist, hip, hem }: SideFrame): Side => {
  const slant = (slantAboveBust * (waist.x - underarm.x)) / (waist.y - underarm.y);
  const bust: Point = { x: underarm.x + slant * (bustLevel - underarm.y), y: bustLevel };
  const above = (waist.x - bust.x) / (waist.y - bust.y);
  const below = (hip.x - waist.x) / (hip.y - waist.y);
  const atBust = slopeBetween(slant, above);
  const atWaist = slopeBetween(above, below);
  return [
    fallingCurve(underarm, bust, slant, atBust),
    fallingCurve(bust, waist, atBust, atWaist),
    fallingCurve(waist, hip, atWaist, 0),
    line(hip, hem),
  ];
};

/** The point of a side seam at a height between its underarm and its hem. */
export const sideAt = (side: readonly (Cubic | Line)[], y: number): Point => {
  const curve = side.find((segment) => y <= segment.to.y) ?? (side.at(-1) as Cubic | Line);
  return { ...segmentPointAt(curve, parameterAtHeight(curve, y)), y };
};
