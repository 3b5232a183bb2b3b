import { type Cubic, type Line, line, type Point } from '../geometry/index.ts';
import { fallingCurve } from './side-seam.ts';

/** A side seam without a dart: underarm to waist, to hip, to hem. */
export type PlainSide = readonly [Cubic, Cubic, Line];

/** Of the slope from underarm to waist, how much the seam has as it leaves the underarm: it starts nearly along the grain. */
const leaving = 0.2;

/**
 * The slope at the waist. Where the side draws in and out again it runs along the grain there. Where it only widens or
 * only narrows, the slope is the largest at which neither part bends back: a cubic of mean slope m whose ends
 * slope by a and b bends one way while 2a + b ≤ 3m ≤ a + 2b (its second derivative keeps its sign), so with 0.2 m
 * at the underarm the waist takes 1.4 m, and with none at the hip 1.5 of the mean below.
 */
const atWaist = (above: number, below: number): number =>
  above * below > 0 ? Math.sign(above) * Math.min((1.5 - leaving / 2) * Math.abs(above), 1.5 * Math.abs(below)) : 0;

export interface PlainSideFrame {
  readonly underarm: Point;
  readonly waist: Point;
  readonly hip: Point;
  readonly hem: Point;
}

/**
 * A side seam in three parts: it leaves the underarm nearly along the grain, is at its narrowest (or runs through) at
 * the waist, comes round to the grain over the hip and falls straight to the hem, which it meets square. It changes
 * its bend once above a drawn-in waist and once below, or only once in all.
 *
 * Construction as taught in manuals of metric pattern cutting.
 */
export const draftPlainSide = ({ underarm, waist, hip, hem }: PlainSideFrame): PlainSide => {
  const above = (waist.x - underarm.x) / (waist.y - underarm.y);
  const below = (hip.x - waist.x) / (hip.y - waist.y);
  const through = atWaist(above, below);
  return [
    fallingCurve(underarm, waist, leaving * above, through),
    fallingCurve(waist, hip, through, 0),
    line(hip, hem),
  ];
};
