import { type Point, pathEnd, pathStart } from '../../geometry/index.ts';
import { type Garment, onFold, type Piece } from '../../pattern/index.ts';
import { bad, good, type Result } from '../../units/index.ts';
import { crossingsAt } from '../across.ts';
import { heldEdges, heldSeams, replacePieces, torn } from '../checks.ts';
import { moveCorner } from '../corner.ts';
import { type CutEnd, cut } from '../cut.ts';
import { join } from '../join.ts';
import { partBeside, swing } from '../move.ts';
import { redraw } from '../redraw.ts';
import { createTape } from '../tape.ts';
import { lowerEnd } from '../true-seams.ts';
import type { Held, PieceCut } from '../types.ts';

/** A back folded out at the waist, to nothing at the side. */
export interface SwayedBack {
  readonly after: Garment;
  readonly piece: string;
  readonly cuts: readonly PieceCut[];
  readonly held: readonly Held[];
  /** The wedge at the centre: from its upper line to the cut. */
  readonly wedge: { readonly upper: Point; readonly lower: Point; readonly side: Point };
  /** How far the centre back swings out at its lower end, mm. */
  readonly swungOut: number;
}

/**
 * Sway back by w without a waist seam (trade, Alterations): the back is cut at the waist from centre back to side, R
 * wide, and the lower part turns φ = 2 asin(w / 2R) about the side, lying over the upper by w at the centre. At depth
 * D below the waist the centre back swings out by D sin φ, so it needs a seam there.
 *
 * Problems: `alter.no-piece` without a back that has a waist; `alter.sway-on-fold`; `alter.cut-not-clear` and those of
 * cutting.
 */
export const swayBack = (garment: Garment, w: number): Result<SwayedBack> => {
  const piece = garment.pieces.find(
    (one) =>
      one.role === 'back' &&
      one.levels.some(({ id }) => id === 'waist') &&
      one.cut.some(({ layer }) => layer === 'shell'),
  );
  const waist = piece?.levels.find(({ id }) => id === 'waist');
  if (!piece || !waist) return bad('alter.no-piece', { role: 'back' });
  if (onFold(piece)) return bad('alter.sway-on-fold', { piece: piece.name });
  const y = waist.from.y;
  const [left, right] = crossingsAt(piece, y);
  if (!left?.end || !right?.end) return bad('alter.cut-not-clear', { piece: piece.name });
  const sideRight = waist.to.x > waist.from.x;
  const [side, centre] = sideRight ? [right, left] : [left, right];
  const reach = Math.abs(side.x - centre.x);
  const angle = 2 * Math.asin(w / (2 * reach));
  const made = cut(piece, {
    nodes: {},
    cuts: [{ id: 'across', from: left.end as CutEnd, to: right.end as CutEnd }],
  });
  if (!made.ok) return made;
  const lower = partBeside(made.value, 'across', 'right');
  const hinge: Point = { x: side.x, y };
  const joined = join(swing(made.value, lower, hinge, sideRight ? angle : -angle));
  // The centre back keeps the turn at the waist: drawn straight it would be wider above it.
  const trued = joined.formers.reduce((drawn, former) => redraw(drawn, former, false).piece, joined.piece);
  const tape = createTape();
  // Blending gives or takes a hair of the side, which its mate has not: its lower corner is marked where it was.
  const sideEdge = side.end?.edge ?? '';
  const walking = moveCorner(
    trued,
    sideEdge,
    lowerEnd(trued, sideEdge),
    tape.edge(piece, sideEdge) - tape.edge(trued, sideEdge),
  );
  const after: Piece = {
    ...walking,
    // The grain is the upper part's: drawn on straight through what turned.
    grain: { from: piece.grain.from, to: { x: piece.grain.from.x, y: piece.grain.to.y - w / 2 } },
    lines: walking.lines.filter(({ id }) => lineLevel(piece, id) < y),
  };
  const problem = torn(after);
  if (problem) return { ok: false, problem };
  const whole = replacePieces(garment, [after]);
  const cutEdges = new Set([left.end.edge, right.end.edge]);
  const kept = piece.edges.map(({ id }) => id).filter((id) => !cutEdges.has(id));
  const depth = Math.max(...piece.runs.map(({ path }) => pathEnd(path).y)) - y;
  return good({
    after: whole,
    piece: piece.id,
    cuts: [
      { piece: piece.id, id: 'across', points: [{ x: centre.x, y }, hinge] },
      { piece: piece.id, id: 'fold', points: [{ x: centre.x, y: y - w }, hinge] },
    ],
    held: [...heldEdges(tape, piece, after, kept), ...heldSeams(tape, garment, whole)],
    wedge: { upper: { x: centre.x, y: y - w }, lower: { x: centre.x, y }, side: hinge },
    swungOut: depth * Math.sin(angle),
  });
};

/** Where an inner line lies, mm down the piece. */
const lineLevel = (piece: Piece, id: string): number => {
  const inner = piece.lines.find((one) => one.id === id);
  return inner ? pathStart(inner.path).y : 0;
};
