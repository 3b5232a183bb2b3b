import { distance, intersectPaths, line, type Point, pathBounds, pathEnd, pathStart } from '../geometry/index.ts';
import { type DartShape, dartOf, landmarkOf, outlineOf, type Piece } from '../pattern/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import type { EdgeEnd } from './cut.ts';
import { type RingRun, ringOf, runIndices } from './ring.ts';

/** A front with a side dart, as the bust alterations see it. */
export interface DartedFront {
  readonly piece: Piece;
  readonly bustPoint: Point;
  readonly dart: DartShape;
  /** 1 where the side lies to the right of the bust point, −1 on a mirrored piece. */
  readonly outward: 1 | -1;
  readonly side: string;
  readonly armhole: string;
  readonly hem: string;
  /** Whether the side seam's first run in outline order is the one above the dart. */
  readonly sideStartsAbove: boolean;
}

/**
 * Finds bust point, side dart and the edges round it. Told by how they lie, not by a pattern's own
 * names: the side is the edge the dart interrupts, the armhole the edge that meets it above, the hem the one that
 * meets it below. Problems `alter.no-landmark`, `alter.no-side-dart`.
 */
export const dartedFront = (piece: Piece): Result<DartedFront> => {
  const bustPoint = landmarkOf(piece, 'bust-point');
  if (!bustPoint) return bad('alter.no-landmark', { piece: piece.name, landmark: 'bust-point' });
  for (const { id, aims } of piece.darts) {
    if (aims !== undefined && aims !== 'bust-point') continue;
    const found = sideDart(piece, bustPoint, dartOf(piece, id));
    if (found) return good(found);
  }
  return bad('alter.no-side-dart', { piece: piece.name });
};

const sideDart = (piece: Piece, bustPoint: Point, dart: DartShape): DartedFront | null => {
  const count = piece.runs.length;
  const mouth = piece.runs.findIndex((run) => run.kind === 'mouth' && run.dart === dart.id);
  const before = piece.runs[(mouth + count - 1) % count];
  const after = piece.runs[(mouth + 1) % count];
  if (before?.kind !== 'edge' || after?.kind !== 'edge' || before.edge !== after.edge) return null;
  const side = before.edge;
  const indices = runIndices(piece.runs, side);
  const first = indices[0] as number;
  const last = indices.at(-1) as number;
  const start = pathStart((piece.runs[first] as RingRun['run']).path);
  const end = pathEnd((piece.runs[last] as RingRun['run']).path);
  const sideStartsAbove = start.y < end.y;
  const above = piece.runs[sideStartsAbove ? (first + count - 1) % count : (last + 1) % count];
  const below = piece.runs[sideStartsAbove ? (last + 1) % count : (first + count - 1) % count];
  if (above?.kind !== 'edge' || below?.kind !== 'edge') return null;
  const across = (dart.legs[0].x + dart.legs[1].x) / 2 - bustPoint.x;
  const down = (dart.legs[0].y + dart.legs[1].y) / 2 - bustPoint.y;
  // A dart from the side comes in more across than up or down; one that does not opens on another edge.
  if (Math.abs(down) > 1.7 * Math.abs(across)) return null;
  const outward = across > 0 ? 1 : -1;
  return { piece, bustPoint, dart, outward, side, armhole: above.edge, hem: below.edge, sideStartsAbove };
};

/** What a straight line from a point inside the piece meets first; null where that is a dart's mouth. */
export const reached = (
  piece: Piece,
  from: Point,
  direction: Point,
): { readonly end: EdgeEnd; readonly point: Point } | null => {
  const bounds = pathBounds(outlineOf(piece));
  const far = 2 * (bounds.maxX - bounds.minX + bounds.maxY - bounds.minY);
  const ray = [line(from, { x: from.x + direction.x * far, y: from.y + direction.y * far })];
  const ring = ringOf(piece);
  let best: { readonly run: RingRun; readonly at: number; readonly point: Point; readonly away: number } | null = null;
  for (const run of ring.runs) {
    for (const { point, lengthB } of intersectPaths(ray, run.path)) {
      const away = distance(from, point);
      if (!best || away < best.away) best = { run, at: lengthB, point, away };
    }
  }
  if (best?.run.run.kind !== 'edge') return null;
  const { edge } = best.run.run;
  const whole = ring.edgeLengths.get(edge) as number;
  return { end: { edge, at: (best.run.edgeStart + best.at) / whole }, point: best.point };
};
