import {
  pathEnd,
  pathStart,
  pathWithEnd,
  pathWithStart,
  samePoint,
  selfIntersections,
  tolerance,
} from '../geometry/index.ts';
import { type Garment, outlineOf, type Piece, pieceOf } from '../pattern/index.ts';
import { bad, good, type Problem, type Result } from '../units/index.ts';
import { changedPieces, heldSeams, reportOf, torn } from './checks.ts';
import { type CutPiece, type CutPlan, cut } from './cut.ts';
import { girthChanges } from './girths.ts';
import { smoothHinge } from './hinge.ts';
import { type FormerCut, type Joined, join } from './join.ts';
import type { MarkOwners } from './marks.ts';
import { heldNotches, meetNotches } from './notches.ts';
import type { Put } from './put.ts';
import { redraw } from './redraw.ts';
import { type Drawn, reshape } from './reshape.ts';
import { createTape } from './tape.ts';
import type { Applied, Change, Held, PieceCut } from './types.ts';
import type { Work } from './work-type.ts';

export type { Work, Worked } from './work-type.ts';

export const beginWork = (garment: Garment): Work => ({
  before: garment,
  garment,
  worked: new Map(),
  tape: createTape(),
});

/** A piece as it is now. Throws where there is none. */
export const pieceNow = (work: Work, id: string): Piece => pieceOf(work.garment, id);

interface Done {
  readonly piece: Piece;
  readonly untrued: Piece;
  readonly puts: readonly Put[];
  readonly cuts: readonly PieceCut[];
}

/** Segments of no length, which a corner moved onto its neighbour can leave, say nothing and have no direction: they are dropped. */
const withoutPoints = (piece: Piece): Piece => {
  const isPoint = (segment: Piece['runs'][number]['path'][number]): boolean =>
    samePoint(segment.from, segment.to) &&
    (segment.kind === 'line' || (samePoint(segment.from, segment.control1) && samePoint(segment.to, segment.control2)));
  if (!piece.runs.some(({ path }) => path.length > 1 && path.some(isPoint))) return piece;
  const runs = piece.runs.map((run) => {
    const path = run.path.filter((segment) => !isPoint(segment));
    if (path.length === 0 || path.length === run.path.length) return run;
    const [from, to] = [pathStart(run.path), pathEnd(run.path)];
    return { ...run, path: pathWithEnd(pathWithStart(path, from), to) };
  });
  return { ...piece, runs };
};

/** The work with one piece put in place of what it was, and what was done to it added to the account. */
export const withPiece = (work: Work, given: Done, led = true): Work => {
  const done = { ...given, piece: withoutPoints(given.piece) };
  const { id } = done.piece;
  const before = work.worked.get(id);
  const worked = new Map(work.worked);
  worked.set(id, {
    untrued: done.untrued,
    puts: [...(before?.puts ?? []), ...done.puts],
    cuts: [...(before?.cuts ?? []), ...done.cuts],
    led: led || (before?.led ?? false),
    tracedFrom: null,
  });
  return {
    ...work,
    worked,
    garment: { ...work.garment, pieces: work.garment.pieces.map((piece) => (piece.id === id ? done.piece : piece)) },
  };
};

/** The work with a piece as it was cut, moved, joined and trued by a construction of its own. */
export const withJoined = (
  work: Work,
  { after, joined }: { readonly after: Piece; readonly joined: Pick<Joined, 'piece' | 'puts' | 'cuts'> },
  led = true,
): Work => {
  const cuts = joined.cuts.map((one) => ({ ...one, piece: after.id }));
  return withPiece(work, { piece: after, untrued: joined.piece, puts: joined.puts, cuts }, led);
};

/** How an edge is trued where it was cut: straight again where it was straight and else blended, only blended, smoothed without changing its length, or left. */
export type Truing = 'straight' | 'blend' | 'hinge' | 'none';

export interface CutAndMove {
  /** Moves the parts: swing and slide. */
  readonly move: (pieces: CutPiece) => CutPiece;
  readonly owners?: (pieces: CutPiece) => MarkOwners;
  /** How each edge is trued where it was cut; 'straight' when not said. */
  readonly truing?: (former: FormerCut) => Truing;
  readonly led?: boolean;
}

/**
 * Cuts a piece, moves its parts, joins them and redraws the edges that were cut. Problems are those of `cut`. What
 * `smoothHinge` strays is not judged here: an alteration that hinges on a curve reports it (`strayed`).
 */
export const cutAndMove = (
  work: Work,
  id: string,
  plan: CutPlan,
  { move, owners, truing, led = true }: CutAndMove,
): Result<Work> => {
  const piece = pieceNow(work, id);
  const made = cut(piece, plan);
  if (!made.ok) return made;
  const moved = move(made.value);
  const joined = join(moved, owners?.(moved));
  const trued = joined.formers.reduce((drawn, former) => {
    const how = truing?.(former) ?? 'straight';
    if (how === 'none') return drawn;
    if (how === 'hinge') return smoothHinge(drawn, former, Infinity).piece;
    return redraw(drawn, former, how === 'straight').piece;
  }, joined.piece);
  return good(withJoined(work, { after: trued, joined }, led));
};

/** Draws edges of a piece anew, whole; see `reshape`. */
export const redrawEdges = (work: Work, id: string, drawn: Drawn, led = true): Work => {
  const { piece, puts } = reshape(pieceNow(work, id), drawn);
  return withPiece(work, { piece, untrued: piece, puts, cuts: [] }, led);
};

/**
 * The same as truing: what it moves is told as such, not as put in. `adjust` may set marks right on the piece drawn.
 */
export const trueEdges = (work: Work, id: string, drawn: Drawn, adjust: (piece: Piece) => Piece = same): Work => {
  const { piece } = reshape(pieceNow(work, id), drawn);
  const untrued = work.worked.get(id)?.untrued ?? pieceNow(work, id);
  return withPiece(work, { piece: adjust(piece), untrued, puts: [], cuts: [] });
};

const same = (piece: Piece): Piece => piece;

/** Changes how pieces are joined or measured, or which there are; pieces that are new are told of as put in whole. */
export const restructure = (work: Work, change: (garment: Garment) => Garment): Work => ({
  ...work,
  garment: change(work.garment),
});

/** Length of an edge as it is now, mm, darts closed. */
export const lengthNow = (work: Work, piece: string, edge: string): number =>
  work.tape.edge(pieceNow(work, piece), edge);

export interface Finished {
  readonly held?: readonly Held[];
  readonly changes?: readonly Change[];
  readonly warnings?: readonly Problem[];
}

/** Edges of changed pieces that are longer or shorter than they were by more than a pencil's line. */
const edgeChanges = (work: Work): readonly Change[] =>
  [...work.worked.keys()].flatMap((id) => {
    const piece = work.garment.pieces.find((one) => one.id === id);
    const before = work.before.pieces.find((one) => one.id === id);
    if (!piece || !before) return [];
    const was = work.tape.edges(before);
    return Object.entries(work.tape.edges(piece)).flatMap(([edge, now]): Change[] => {
      const old = was[edge];
      if (old === undefined || Math.abs(now - old) <= tolerance.told) return [];
      return [{ what: 'edge-length', piece: id, edge, by: now - old, now }];
    });
  });

/**
 * The account of an alteration: the garment, what holds (what the alteration says, and that every seam of a changed piece
 * walks and its notches meet), what changed, and each piece's areas. Problem `alter.tears` where a piece crosses itself
 * or turned inside out.
 */
export const finishWork = (given: Work, { held = [], changes = [], warnings = [] }: Finished = {}): Result<Applied> => {
  const work = meetNotches(given);
  const { before, garment, tape } = work;
  const changed = changedPieces(before, garment);
  const known = new Map(before.pieces.map((piece) => [piece.id, piece]));
  for (const piece of garment.pieces) {
    if (!changed.has(piece.id)) continue;
    const old = known.get(piece.id);
    const problem = torn(piece);
    if (problem && !(old && selfIntersections(outlineOf(old)).length > 0)) return { ok: false, problem };
  }
  const reports = garment.pieces
    .filter(({ id }) => changed.has(id))
    .map((piece) => reportOf(tape, known.get(piece.id) ?? null, piece, work.worked.get(piece.id)?.puts ?? []));
  const girths = girthChanges(before, garment);
  if (!girths) return bad('alter.level-lost', {});
  if (changed.size === 0 && garment === before) return bad('alter.changes-nothing', {});
  return good({
    garment,
    untrued: {
      ...garment,
      pieces: garment.pieces.map((piece) => work.worked.get(piece.id)?.untrued ?? piece),
    },
    held: [...held, ...heldSeams(tape, before, garment), ...heldNotches(tape, before, garment, changed)],
    changes: [...changes, ...edgeChanges(work), ...girths],
    warnings,
    pieces: reports,
    cuts: [...work.worked.values()].flatMap(({ cuts }) => cuts),
  });
};
