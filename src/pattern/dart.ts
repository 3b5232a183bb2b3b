import {
  angleOf,
  distance,
  type Path,
  type Point,
  pathEnd,
  pathStart,
  rotation,
  subtract,
  type Transform,
} from '../geometry/index.ts';
import type { Dart, Piece } from './types.ts';

/** A dart with what follows from its point and its mouth. Lengths mm, angle radians. */
export interface DartShape {
  readonly id: string;
  readonly point: Point;
  /** Ends of the legs on the outline, in outline order: where the mouth begins, where it ends. */
  readonly legs: readonly [Point, Point];
  /** Width of the mouth, straight across. */
  readonly intake: number;
  /** Angle between the legs: what stays the same when a dart is moved. Positive. */
  readonly angle: number;
  readonly legLengths: readonly [number, number];
  readonly mouth: Path;
  readonly pressed: Dart['pressed'];
}

const wrapped = (angle: number): number => {
  const turn = angle % (2 * Math.PI);
  if (turn > Math.PI) return turn - 2 * Math.PI;
  return turn <= -Math.PI ? turn + 2 * Math.PI : turn;
};

const shapeOf = (piece: Piece, dart: Dart): DartShape => {
  const run = piece.runs.find((candidate) => candidate.kind === 'mouth' && candidate.dart === dart.id);
  if (!run) throw new Error(`Dart ${dart.id} of ${piece.id} has no mouth in the outline`);
  const first = pathStart(run.path);
  const second = pathEnd(run.path);
  const angle = wrapped(angleOf(subtract(second, dart.point)) - angleOf(subtract(first, dart.point)));
  return {
    id: dart.id,
    point: dart.point,
    legs: [first, second],
    intake: distance(first, second),
    angle: Math.abs(angle),
    legLengths: [distance(dart.point, first), distance(dart.point, second)],
    mouth: run.path,
    pressed: dart.pressed,
  };
};

/** Throws where the piece has no such dart. */
export const dartOf = (piece: Piece, id: string): DartShape => {
  const dart = piece.darts.find((candidate) => candidate.id === id);
  if (!dart) throw new Error(`Piece ${piece.id} has no dart ${id}`);
  return shapeOf(piece, dart);
};

export const dartsOf = (piece: Piece): readonly DartShape[] => piece.darts.map((dart) => shapeOf(piece, dart));

/** The turn about the dart's point that lays its leg `from` (0 or 1) on the other: what stitching the dart does. */
export const closing = (dart: DartShape, from: 0 | 1): Transform => {
  const to = from === 0 ? 1 : 0;
  const turn = wrapped(angleOf(subtract(dart.legs[to], dart.point)) - angleOf(subtract(dart.legs[from], dart.point)));
  return rotation(turn, dart.point);
};
