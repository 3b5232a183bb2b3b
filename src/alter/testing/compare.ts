import {
  mirrorX,
  nearestOnPath,
  type Path,
  pathLength,
  pathPointAtLength,
  pathTangentAtLength,
  segmentLengths,
  turnBetween,
} from '../../geometry/index.ts';
import { type Garment, outlineOf, type Piece, transformPiece } from '../../pattern/index.ts';

/** Furthest that either of two lines lies from the other, mm, looked for at every joint and nine places between. */
export const apart = (a: Path, b: Path): number => Math.max(oneWay(a, b), oneWay(b, a));

const oneWay = (from: Path, to: Path): number => {
  let worst = 0;
  for (const segment of from) {
    const whole = pathLength([segment]);
    for (let i = 0; i < 10; i += 1) {
      const point = pathPointAtLength([segment], (whole * i) / 10);
      worst = Math.max(worst, nearestOnPath(to, point).distance);
    }
  }
  return worst;
};

/** Furthest that any piece's outline, dart point or landmark lies from its fellow's in the other garment. */
export const garmentsApart = (a: Garment, b: Garment): number => {
  const pieces = a.pieces.map((piece, i) => [piece, b.pieces[i] as Piece] as const);
  return Math.max(...pieces.map(([one, other]) => (one === other ? 0 : piecesApart(one, other))));
};

const piecesApart = (one: Piece, other: Piece): number => {
  const points = (piece: Piece) => [
    ...piece.darts.map(({ point }) => point),
    ...piece.landmarks.map(({ at }) => at),
    ...piece.levels.flatMap(({ from, to }) => [from, to]),
    piece.grain.from,
    piece.grain.to,
  ];
  const [p, q] = [points(one), points(other)];
  if (p.length !== q.length) return Infinity;
  const marks = p.map((point, i) => Math.hypot(point.x - (q[i]?.x ?? 0), point.y - (q[i]?.y ?? 0)));
  return Math.max(apart(outlineOf(one), outlineOf(other)), ...marks, 0);
};

/** A garment seen in a mirror: what was its left is its right. */
export const mirrored = (garment: Garment): Garment => ({
  ...garment,
  pieces: garment.pieces.map((piece) => transformPiece(piece, mirrorX())),
  seams: garment.seams.map((seam) => ({
    ...seam,
    a: { ...seam.a, reversed: !seam.a.reversed },
    b: { ...seam.b, reversed: !seam.b.reversed },
  })),
});

/** Sharpest turn inside any run of an edge, radians: what the eye sees as a kink. */
export const sharpest = (piece: Piece, edge: string): number =>
  Math.max(
    0,
    ...piece.runs.flatMap((run) => {
      if (run.kind !== 'edge' || run.edge !== edge) return [];
      const lengths = segmentLengths(run.path);
      let at = 0;
      return run.path.slice(1).map((_, i) => {
        at += lengths[i] as number;
        const arriving = pathTangentAtLength(run.path, at, 'before');
        return Math.abs(turnBetween(arriving, pathTangentAtLength(run.path, at, 'after')));
      });
    }),
  );
