import {
  angleOf,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathPointAtLength,
  pathStart,
  pathTangentAtLength,
  tolerance,
} from '../geometry/index.ts';
import { edgeLength, edgeRuns, pieceOf } from './piece.ts';
import type { Garment, Piece, Seam, SeamSide } from './types.ts';

/** How two notches that should meet lie when the seam is walked. */
export interface NotchMeeting {
  readonly a: string;
  readonly b: string;
  /** Distance of each from the seam's start, mm. */
  readonly atA: number;
  readonly atB: number;
  readonly apart: number;
  readonly meets: boolean;
}

/** How the line that crosses a seam's end runs on from one piece into the other. */
export interface SeamEnd {
  readonly end: 'start' | 'end';
  /** Radians by which the crossing line turns at the seam; 0 is smooth. Positive pokes out, negative dips in. */
  readonly turn: number;
  /** The edges that meet there, a's and b's. */
  readonly edges: readonly [string, string];
}

/** What walking a seam shows: rolling edge a along edge b from start to end. Millimetres. */
export interface SeamWalk {
  readonly seam: Seam;
  readonly lengthA: number;
  readonly lengthB: number;
  /** lengthA − lengthB. */
  readonly difference: number;
  /** How far the difference lies outside the ease the seam allows; 0 when inside. Signed like the difference. */
  readonly excess: number;
  readonly meets: boolean;
  readonly notches: readonly NotchMeeting[];
  readonly ends: readonly [SeamEnd, SeamEnd];
}

/** A notch's distance from the start of the walk along its side. */
const notchAlong = (piece: Piece, side: SeamSide, id: string): number | null => {
  const notch = piece.notches.find((candidate) => candidate.id === id && candidate.edge === side.edge);
  if (!notch) return null;
  return edgeLength(piece, side.edge) * (side.reversed ? 1 - notch.at : notch.at);
};

const excessOver = (value: number, low: number, high: number): number =>
  value < low ? value - low : value > high ? value - high : 0;

const meetNotches = (seam: Seam, a: Piece, b: Piece): readonly NotchMeeting[] =>
  seam.notches.flatMap(([idA, idB]) => {
    const atA = notchAlong(a, seam.a, idA);
    const atB = notchAlong(b, seam.b, idB);
    if (atA === null || atB === null) return [];
    const apart = atA - atB;
    // Up to any notch the eased side may already have gained anything between nothing and all of its ease.
    const over = excessOver(apart, Math.min(0, seam.easeMin), Math.max(0, seam.easeMax));
    return [{ a: idA, b: idB, atA, atB, apart, meets: Math.abs(over) <= tolerance.notch }];
  });

const wrapTurn = (angle: number): number => {
  const turn = angle % (2 * Math.PI);
  return turn > Math.PI ? turn - 2 * Math.PI : turn < -Math.PI ? turn + 2 * Math.PI : turn;
};

/** Inside angle of a piece at one end of an edge, radians, and the edge it meets there. */
const insideAngle = (
  piece: Piece,
  edge: string,
  atStart: boolean,
): { readonly angle: number; readonly neighbour: string } => {
  const runs = edgeRuns(piece, edge);
  const run = atStart ? runs[0] : runs[runs.length - 1];
  const index = piece.runs.findIndex((candidate) => candidate.path === run);
  const count = piece.runs.length;
  const other = piece.runs[(index + (atStart ? count - 1 : 1)) % count];
  if (!run || !other) throw new Error(`Edge ${edge} of ${piece.id} has no neighbour`);
  const before = atStart ? other.path : run;
  const after = atStart ? run : other.path;
  const arriving = pathTangentAtLength(before, pathLength(before));
  const leaving = pathTangentAtLength(after, 0);
  // Travelling clockwise as seen with y down, a positive turn is a convex corner.
  return {
    angle: Math.PI - wrapTurn(angleOf(leaving) - angleOf(arriving)),
    neighbour: other.kind === 'edge' ? other.edge : other.dart,
  };
};

const seamEnd = (seam: Seam, a: Piece, b: Piece, end: 'start' | 'end'): SeamEnd => {
  const first = insideAngle(a, seam.a.edge, (end === 'start') !== seam.a.reversed);
  const second = insideAngle(b, seam.b.edge, (end === 'start') !== seam.b.reversed);
  return { end, turn: Math.PI - (first.angle + second.angle), edges: [first.neighbour, second.neighbour] };
};

/** Walks one seam of a garment. */
export const walkSeam = (garment: Garment, seam: Seam): SeamWalk => {
  const a = pieceOf(garment, seam.a.piece);
  const b = pieceOf(garment, seam.b.piece);
  const lengthA = edgeLength(a, seam.a.edge);
  const lengthB = edgeLength(b, seam.b.edge);
  const difference = lengthA - lengthB;
  const excess = excessOver(difference, seam.easeMin, seam.easeMax);
  return {
    seam,
    lengthA,
    lengthB,
    difference,
    excess,
    meets: Math.abs(excess) <= tolerance.seam,
    notches: meetNotches(seam, a, b),
    ends: [seamEnd(seam, a, b, 'start'), seamEnd(seam, a, b, 'end')],
  };
};

export const walkAll = (garment: Garment): readonly SeamWalk[] => garment.seams.map((seam) => walkSeam(garment, seam));

/** A point of one side at a distance from the walk's start: what the picture of a walk rolls along. Darts are stepped over. */
export const pointAlongSide = (
  piece: Piece,
  side: SeamSide,
  along: number,
): { readonly point: Point; readonly tangent: Point } => {
  const runs = edgeRuns(piece, side.edge);
  const total = edgeLength(piece, side.edge);
  let left = side.reversed ? total - along : along;
  const sign = side.reversed ? -1 : 1;
  const facing = (tangent: Point): Point => ({ x: sign * tangent.x, y: sign * tangent.y });
  for (const run of runs) {
    const length = pathLength(run);
    if (left <= length) return placeOn(run, Math.max(left, 0), facing);
    left -= length;
  }
  const last = runs[runs.length - 1] as Path;
  return {
    point: side.reversed ? pathStart(last) : pathEnd(last),
    tangent: facing(pathTangentAtLength(last, pathLength(last))),
  };
};

const placeOn = (run: Path, at: number, facing: (tangent: Point) => Point) => ({
  point: pathPointAtLength(run, at),
  tangent: facing(pathTangentAtLength(run, at)),
});
