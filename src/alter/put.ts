import {
  angleOf,
  applyToPoint,
  compose,
  cross,
  dot,
  invert,
  type Point,
  subtract,
  type Transform,
} from '../geometry/index.ts';
import type { CutPiece, Part } from './cut.ts';

/**
 * Cloth put in (positive) or taken out (negative) between parts that moved, mm²: a wedge where a part
 * swung, a band where it slid, a corner where cuts meet at one point, a dart whose wedge opened or closed. A strip lies
 * between an edge's old line and the new one it was redrawn to; a piece is one that was not there before.
 */
export interface Put {
  readonly kind: 'wedge' | 'band' | 'corner' | 'dart' | 'strip' | 'piece';
  /** The cut, the dart, the edge or the piece. */
  readonly at: string;
  readonly area: number;
}

const origin: Point = { x: 0, y: 0 };

/** A motion that turns by less than this many radians slides: a metre of cloth strays by a hundredth of tolerance.same. */
const noTurn = 1e-11;

const turnOf = (motion: Transform): number => angleOf({ x: motion.a, y: motion.b });

/** The point a turning motion leaves where it is. */
const centreOf = (motion: Transform): Point => {
  const by = applyToPoint(motion, origin);
  const half = 1 / Math.tan(turnOf(motion) / 2) / 2;
  return { x: by.x / 2 - by.y * half, y: by.y / 2 + by.x * half };
};

/**
 * Area between a straight cut from p to q as its right-hand part holds it and as its left-hand part holds it.
 * Slid by u: the parallelogram u × (q − p). Turned by θ about c: ½ sin θ (|p − c|² − |q − c|²), the difference
 * of two isosceles triangles.
 */
const between = (
  p: Point,
  q: Point,
  right: Transform,
  left: Transform,
): { readonly turned: boolean; readonly area: number } => {
  const relative = compose(left, invert(right));
  const angle = turnOf(relative);
  if (Math.abs(angle) < noTurn) {
    return { turned: false, area: cross({ x: relative.e, y: relative.f }, subtract(q, p)) };
  }
  const centre = centreOf(relative);
  const toP = subtract(p, centre);
  const toQ = subtract(q, centre);
  return { turned: true, area: (Math.sin(angle) / 2) * (dot(toP, toP) - dot(toQ, toQ)) };
};

/** Area of a polygon through points, mm², positive clockwise as seen. */
const polygonArea = (points: readonly Point[]): number => {
  const first = points[0];
  if (!first) return 0;
  let sum = 0;
  for (let i = 1; i + 1 < points.length; i += 1) {
    sum += cross(subtract(points[i] as Point, first), subtract(points[i + 1] as Point, first)) / 2;
  }
  return sum;
};

/** The wedge of a dart as its neighbours hold its legs, closed straight across the mouth. */
const wedgePolygon = (pieces: CutPiece, part: Part): readonly Point[] =>
  part.border.flatMap((side) => {
    if (!side) return [];
    const line = pieces.cuts[side.cut];
    if (!line) return [];
    // The neighbour lies on the other hand of the cut.
    const motion = pieces.motions[side.forward ? line.left : line.right] as Transform;
    const points = side.forward ? line.points : line.points.toReversed();
    return points.map((point) => applyToPoint(motion, point));
  });

/**
 * What the moved parts put in and took out, by closed formula, before truing. With the wedges of darts
 * counted as they were and as they are, the piece's area is afterwards exactly what it was plus this sum.
 */
export const putIn = (pieces: CutPiece): readonly Put[] => {
  const { parts, motions, cuts, meetings, piece } = pieces;
  const isWedge = (part: number): boolean => parts[part]?.wedge !== null;
  const bands = cuts
    .filter((line) => !isWedge(line.right) && !isWedge(line.left))
    .flatMap((line) =>
      line.points.slice(1).map((q, i): Put => {
        const p = line.points[i] as Point;
        const { turned, area } = between(p, q, motions[line.right] as Transform, motions[line.left] as Transform);
        return { kind: turned ? 'wedge' : 'band', at: line.id, area };
      }),
    );
  const corners = meetings.map((meeting, index): Put => {
    const images = meeting.parts
      .filter((part) => !isWedge(part))
      .map((part) => applyToPoint(motions[part] as Transform, meeting.point));
    return { kind: 'corner', at: `${piece.id} ${index}`, area: polygonArea(images) };
  });
  const darts = parts.flatMap((part): Put[] => {
    if (part.wedge === null) return [];
    const before = polygonArea(part.outline.map((segment) => segment.from));
    return [{ kind: 'dart', at: part.wedge, area: polygonArea(wedgePolygon(pieces, part)) - before }];
  });
  return [...bands, ...corners, ...darts].filter(({ area }) => area !== 0);
};

export const sumOf = (puts: readonly Put[]): number => puts.reduce((sum, { area }) => sum + area, 0);
