import { type Cubic, type Point, segmentPointAt } from '../geometry/index.ts';
import { fallingCurve, parameterAtHeight } from './side-seam.ts';

/**
 * How much of the slope of a straight underarm seam is left at its top and at the hem, which it so meets nearly square.
 * Twice the first and the second together make at least three: the seam never bends back.
 */
const slopes = { top: 1.3, hem: 0.4 } as const;

/** Share of the taper reached at a share of the underarm seam. */
const taperAt = (at: number): number =>
  slopes.top * (at - 2 * at ** 2 + at ** 3) + slopes.hem * (at ** 3 - at ** 2) + 3 * at ** 2 - 2 * at ** 3;

/** What a sleeve narrows at each seam from its underarm line to its hem, when its width is given somewhat lower, mm. */
export const taperFor = (widthAtLevel: number, hem: number, level: number, below: number): number =>
  (widthAtLevel - hem) / 2 / (1 - taperAt(level / below));

/** How far the cap has to rise as it leaves the underarm to be square to such a seam, radians. */
export const riseOf = (taper: number, below: number): number => Math.atan((slopes.top * taper) / below);

/**
 * The underarm seam of a sleeve that narrows to its hem, from the underarm (x, 0) down: it slants most at the top and
 * comes to the hem nearly square, so that the hem runs on across the seam and turns back on itself. `inward` is 1 at
 * the front, which narrows to the right. Construction as taught in manuals of metric pattern cutting.
 */
export const taperedSeam = (x: number, inward: 1 | -1, taper: number, below: number): Cubic =>
  fallingCurve(
    { x, y: 0 },
    { x: x + inward * taper, y: below },
    (inward * slopes.top * taper) / below,
    (inward * slopes.hem * taper) / below,
  );

/** Where such a seam passes a height below the underarm line. */
export const seamAt = (seam: Cubic, level: number): Point => ({
  ...segmentPointAt(seam, parameterAtHeight(seam, level)),
  y: level,
});
