import { dot, type Point, scale, tolerance } from '../geometry/index.ts';
import {
  dartsOf,
  edgeOf,
  type Piece,
  pieceOf,
  pointOnEdge,
  type Seam,
  type SeamSide,
  tangentOnEdge,
} from '../pattern/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import { reached } from './anatomy.ts';
import { partBeside, slide } from './move.ts';
import { walked } from './tape.ts';
import { cutAndMove, pieceNow, type Work } from './work.ts';

/** Where along its edge a band may be cut across, the middle first: clear of notches, darts and what is sewn or buttoned on. */
const places = [0.5, 0.45, 0.55, 0.4, 0.6, 0.35, 0.65, 0.3, 0.7, 0.25, 0.75, 0.2, 0.8] as const;

/** Cut lines are drawn across from this far inside, mm, so that the edge itself is not met first. */
const inside = 0.5;

/** A hand's breadth of room on both sides of a cut: half of what is taken out, and a little, mm. */
const room = 2;

/** Right of travel along a clockwise outline: into the piece. */
const inwardOf = (tangent: Point): Point => ({ x: -tangent.y, y: tangent.x });

/** How far along its edge the nearest mark lies from a place, mm. */
const clearOf = (piece: Piece, edge: string, at: number, whole: number): number =>
  Math.min(
    Infinity,
    ...piece.notches.filter((notch) => notch.edge === edge).map((notch) => Math.abs(notch.at - at) * whole),
  );

/** The band cut across at one place and let out by so many mm; null where the cut would not go clear across. */
const letOut = (work: Work, side: SeamSide, at: number, by: number): Work | null => {
  const piece = pieceNow(work, side.piece);
  const start = pointOnEdge(piece, side.edge, at);
  const tangent = tangentOnEdge(piece, side.edge, at);
  const inward = inwardOf(tangent);
  const across = reached(piece, { x: start.x + inside * inward.x, y: start.y + inside * inward.y }, inward);
  if (!across || across.end.edge === side.edge) return null;
  const whole = work.tape.edge(piece, across.end.edge);
  // A fold must stay one straight line: parts slide along it, whatever the edge across from it does.
  const onFold = edgeOf(piece, across.end.edge).finish === 'fold';
  const fold = onFold ? tangentOnEdge(piece, across.end.edge, across.end.at) : tangent;
  const along = dot(fold, tangent) < 0 ? scale(fold, -1) : fold;
  const least = Math.max(0, -by) / 2 + room;
  if (across.end.at * whole < least || (1 - across.end.at) * whole < least) return null;
  const made = cutAndMove(
    work,
    side.piece,
    { nodes: {}, cuts: [{ id: 'let-out', from: { edge: side.edge, at }, to: across.end }] },
    {
      // What lies further along the edge slides on; walked inward it is on the left.
      move: (pieces) => slide(pieces, partBeside(pieces, 'let-out', 'left'), scale(along, by)),
      led: false,
    },
  );
  return made.ok ? made.value : null;
};

/** Rounds of measuring and letting out by what is still missing: blending takes a little where edges curve. */
const mostRounds = 5;

/**
 * Makes a band — collar, stand, cuff, waistband, strap, stand of buttons — as much longer or shorter as the edge it is
 * sewn to has become: cut square across its edge, one part slid along it, both long edges blended. Both its long edges
 * change alike, so what is sewn to the other follows. Problem `alter.band-has-no-room` where no place can be cut.
 *
 * Source: how collars and waistbands are lengthened in pattern-cutting manuals: slash square across, at one place.
 */
export const lengthenBand = (work: Work, seam: Seam, band: SeamSide): Result<Work> => {
  const was = walked(work.tape, seam, (id) => pieceOf(work.before, id));
  // The ease it had it keeps, brought within what the seam bears.
  const kept = was.difference - was.excess;
  const missing = (at: Work): number => {
    const over = walked(at.tape, seam, (id) => pieceOf(at.garment, id)).difference - kept;
    return seam.a.piece === band.piece && seam.a.edge === band.edge ? -over : over;
  };
  const piece = pieceNow(work, band.piece);
  const wanted = missing(work);
  const whole = work.tape.edge(piece, band.edge);
  if (whole + wanted <= 2 * room) return bad('alter.band-has-no-room', { piece: piece.name, by: { mm: wanted } });
  const darts = dartsOf(piece).length > 0;
  const byClearance = places.filter((at) => clearOf(piece, band.edge, at, whole) > Math.max(0, -wanted) / 2 + room);
  for (const at of [...byClearance, ...places]) {
    let made = letOut(work, band, at, wanted);
    let given = wanted;
    for (let round = 1; made && round < mostRounds && Math.abs(missing(made)) > tolerance.seam / 5; round += 1) {
      given += missing(made);
      made = letOut(work, band, at, given);
    }
    if (made && Math.abs(missing(made)) <= tolerance.seam) return good(made);
    if (darts && made === null) continue;
  }
  return bad('alter.band-has-no-room', { piece: piece.name, by: { mm: wanted } });
};
