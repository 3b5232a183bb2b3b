import {
  add,
  cubic,
  endTangent,
  normalize,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  perpendicular,
  scale,
  splitPathAtLength,
  tolerance,
} from '../geometry/index.ts';
import { solveBetween } from './solve.ts';

/** What a turn-down collar in one piece is drafted from, half of it, mm. */
export interface CollarFrame {
  /** Of the neck it is sewn to, from the centre back to the shoulder and from there to where the collar ends. */
  readonly backNeck: number;
  readonly frontNeck: number;
  /** Height at the centre back up to where it turns, and from there down to its edge. */
  readonly stand: number;
  readonly fall: number;
  /** Length of its end, from the neck to the point. */
  readonly point: number;
  /** How far the point leans out beyond square to the neck, radians. */
  readonly lean: number;
  /** How far the centre back lies above the front end: the more, the longer the edge and the flatter the collar. */
  readonly raise: number;
  /** What the top collar is larger by at edge and end, so that it turns over the under collar and its seam. */
  readonly turn: number;
}

/** Half of a collar's layer. Centre back along x = 0; the neck edge below, from the centre to the front end. */
export interface CollarLayer {
  readonly neckBack: Path;
  readonly neckFront: Path;
  /** From the centre back to the point. */
  readonly outer: Path;
  /** From the point down to the neck. */
  readonly end: Path;
}

export interface Collar {
  readonly top: CollarLayer;
  readonly under: CollarLayer;
  /** The line it turns on, from the centre back to the end of the neck edge. */
  readonly roll: Path;
}

/** The neck edge from (0, 0), level there, falling to `raise` below at a width: an even bow. */
const neckEdge = (width: number, raise: number): Path => [
  cubic(
    { x: 0, y: 0 },
    { x: width / 3, y: 0 },
    { x: (2 * width) / 3, y: raise - (1.7 * raise) / 3 },
    { x: width, y: raise },
  ),
];

const layer = (neck: readonly [Path, Path], height: number, point: Point, out: Point): CollarLayer => {
  const end = pathEnd(neck[1]);
  const centre: Point = { x: 0, y: -height };
  return {
    neckBack: neck[0],
    neckFront: neck[1],
    // Level at the centre back, so that the opened collar has no point there, and one even bow to the point.
    outer: [cubic(centre, { x: 0.4 * point.x, y: -height }, add(point, scale(out, -0.3 * point.x)), point)],
    end: [{ kind: 'line', from: point, to: end }],
  };
};

/**
 * A turn-down collar cut in one with its stand, for a neck that is buttoned or worn open: top and under collar.
 *
 * 1. The neck edge is as long as the neck, in an even bow: the centre back lies higher than the front, which makes
 *    the outer edge longer, so that it lies round the shoulders.
 * 2. Stand and fall at the centre back; the end leans out from square to its point.
 * 3. The top collar is the under collar and 2 to 3 mm more along edge and end, for the turn of the cloth; the neck
 *    edges are alike.
 *
 * As convertible collars are drafted in manuals of metric pattern cutting; turn of cloth as in manuals of tailoring.
 */
export const draftCollar = (frame: CollarFrame): Collar => {
  const whole = frame.backNeck + frame.frontNeck;
  const width = solveBetween(
    (candidate) => pathLength(neckEdge(candidate, frame.raise)) - whole,
    whole / 2,
    whole,
    tolerance.same / 10,
  );
  if (width === null) throw new Error(`No collar neck edge is ${whole} mm long`);
  const neck = neckEdge(width, frame.raise);
  const parts = splitPathAtLength(neck, frame.backNeck);
  if (!parts[0] || !parts[1]) throw new Error('A collar goes round front and back');
  const halves = [parts[0], parts[1]] as const;
  const along = endTangent(neck);
  const end = pathEnd(neck);
  const up = perpendicular(along);
  const leaning = add(scale(up, Math.cos(frame.lean)), scale(along, Math.sin(frame.lean)));
  const point = add(end, scale(leaning, frame.point));
  const height = frame.stand + frame.fall;
  // A little steeper at the point than the straight from the centre: a bow that never turns back.
  const out = normalize({ x: 1, y: (1.8 * (point.y + height)) / point.x });
  const beyond = normalize(add(leaning, out));
  const larger = add(point, scale(beyond, frame.turn * Math.SQRT2));
  const standAt: Point = { x: 0, y: -frame.stand };
  return {
    under: layer(halves, height, point, out),
    top: layer(halves, height + frame.turn, larger, out),
    roll: [
      cubic(
        standAt,
        { x: 0.4 * width, y: -frame.stand },
        { x: 0.75 * width, y: -0.55 * frame.stand + 0.6 * frame.raise },
        end,
      ),
    ],
  };
};
