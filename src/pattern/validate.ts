import {
  dot,
  insideOutline,
  nearestOnPath,
  outlineArea,
  pathEnd,
  pathLength,
  pathStart,
  selfIntersections,
  subtract,
  tolerance,
} from '../geometry/index.ts';
import { bad, type Problem } from '../units/index.ts';
import { dartsOf } from './dart.ts';
import { hasEdge, outlineOf } from './piece.ts';
import type { Garment, Piece } from './types.ts';

const gap = (a: { x: number; y: number }, b: { x: number; y: number }) => Math.hypot(a.x - b.x, a.y - b.y);

const problem = (code: string, values: Problem['values']): Problem => bad(code, values).problem;

const closedProblems = (piece: Piece): readonly Problem[] =>
  piece.runs.flatMap((run, index) => {
    const next = piece.runs[(index + 1) % piece.runs.length];
    if (!next) return [];
    const apart = gap(pathEnd(run.path), pathStart(next.path));
    const edge = run.kind === 'edge' ? run.edge : run.dart;
    return apart > tolerance.same
      ? [problem('pattern.open-edges', { piece: piece.name, edge, gap: { mm: apart } })]
      : [];
  });

const referenceProblems = (piece: Piece): readonly Problem[] => {
  const used = new Set(piece.runs.flatMap((run) => (run.kind === 'edge' ? [run.edge] : [])));
  const mouths = new Set(piece.runs.flatMap((run) => (run.kind === 'mouth' ? [run.dart] : [])));
  return [
    ...[...used]
      .filter((edge) => !hasEdge(piece, edge))
      .map((edge) => problem('pattern.edge-unknown', { piece: piece.name, edge })),
    ...piece.edges
      .filter((edge) => !used.has(edge.id))
      .map((edge) => problem('pattern.edge-unknown', { piece: piece.name, edge: edge.id })),
    ...piece.darts
      .filter((dart) => !mouths.has(dart.id))
      .map((dart) => problem('pattern.dart-without-mouth', { piece: piece.name, dart: dart.id })),
    ...[...mouths]
      .filter((mouth) => !piece.darts.some((dart) => dart.id === mouth))
      .map((dart) => problem('pattern.dart-without-mouth', { piece: piece.name, dart })),
    ...piece.notches
      .filter((notch) => !used.has(notch.edge) || !(notch.at >= 0 && notch.at <= 1))
      .map((notch) => problem('pattern.notch-off-edge', { piece: piece.name, notch: notch.id })),
  ];
};

const dartProblems = (piece: Piece): readonly Problem[] =>
  dartsOf(piece).flatMap((dart) => {
    const found: Problem[] = [];
    const apart = Math.abs(dart.legLengths[0] - dart.legLengths[1]);
    if (apart > tolerance.leg)
      found.push(problem('pattern.dart-legs', { piece: piece.name, dart: dart.id, apart: { mm: apart } }));
    if (!insideOutline(outlineOf(piece), dart.point))
      found.push(problem('pattern.dart-outside', { piece: piece.name, dart: dart.id }));
    return found;
  });

/** Fold edges must be straight and lie on the grain, or the piece cannot be laid to folded cloth. */
const foldProblems = (piece: Piece): readonly Problem[] =>
  piece.edges
    .filter((edge) => edge.finish === 'fold')
    .flatMap((edge) => {
      const runs = piece.runs.flatMap((run) => (run.kind === 'edge' && run.edge === edge.id ? [run.path] : []));
      const first = runs[0];
      const last = runs[runs.length - 1];
      if (!first || !last) return [];
      const chord = subtract(pathEnd(last), pathStart(first));
      const grain = subtract(piece.grain.to, piece.grain.from);
      const length = runs.reduce((sum, run) => sum + pathLength(run), 0);
      const straight = length - Math.hypot(chord.x, chord.y) <= tolerance.same * 10;
      const along = Math.abs(dot(chord, grain)) / (Math.hypot(chord.x, chord.y) * Math.hypot(grain.x, grain.y));
      return straight && along > 1 - 1e-9
        ? []
        : [problem('pattern.fold-not-on-grain', { piece: piece.name, edge: edge.id })];
    });

/** What is wrong with a piece; empty when it can be cut: closed, simple, clockwise, marks where they belong, darts that fold flat. */
export const validatePiece = (piece: Piece): readonly Problem[] => {
  if (piece.runs.length < 3) return [problem('pattern.too-few-edges', { piece: piece.name })];
  const open = closedProblems(piece);
  if (open.length > 0) return open;
  const references = referenceProblems(piece);
  if (references.length > 0) return references;
  const outline = outlineOf(piece);
  if (outlineArea(outline) <= 0) return [problem('pattern.wrong-way-round', { piece: piece.name })];
  const crossings = selfIntersections(outline);
  const first = crossings[0];
  return [
    ...(first ? [problem('pattern.crosses-itself', { piece: piece.name, times: crossings.length })] : []),
    ...dartProblems(piece),
    ...foldProblems(piece),
    ...piece.landmarks
      .filter((mark) => !insideOutline(outline, mark.at) && nearestOnPath(outline, mark.at).distance > tolerance.holds)
      .map((mark) => problem('pattern.landmark-outside', { piece: piece.name, landmark: mark.id })),
  ];
};

/** Problems of the pieces and of how they are joined: every seam's and girth's pieces and edges must be there. */
export const validateGarment = (garment: Garment): readonly Problem[] => {
  const pieces = new Map(garment.pieces.map((piece) => [piece.id, piece]));
  const sides = garment.seams.flatMap((seam) => [seam.a, seam.b].map((side) => ({ seam, side })));
  return [
    ...garment.pieces.flatMap(validatePiece),
    ...sides.flatMap(({ seam, side }) => {
      const piece = pieces.get(side.piece);
      if (!piece) return [problem('pattern.mate-missing', { seam: seam.id, piece: side.piece })];
      return hasEdge(piece, side.edge) ? [] : [problem('pattern.edge-unknown', { piece: piece.name, edge: side.edge })];
    }),
    ...garment.girths.flatMap((girth) =>
      girth.pieces
        .filter(({ piece, level: own }) => !pieces.get(piece)?.levels.some(({ id }) => id === (own ?? girth.level)))
        .map(({ piece }) => problem('pattern.level-missing', { piece, level: girth.level })),
    ),
  ];
};
