import { distance, type Path, type Point, pathLength, pathPointAtLength, tolerance } from '../geometry/index.ts';
import { edgeRuns, type Garment, type Piece, pieceOf, type Seam, type SeamSide } from '../pattern/index.ts';
import type { Result } from '../units/index.ts';
import { good } from '../units/index.ts';
import { lengthenBand } from './band.ts';
import { fitCap } from './cap.ts';
import { isLining, isSleeve } from './parts.ts';
import { walked } from './tape.ts';
import { traceEdge } from './trace.ts';
import { pieceNow, type Work } from './work.ts';

/** Pieces cut to the very line of what they are sewn to: traced again from it. */
const tracedRoles: ReadonlySet<Piece['role']> = new Set(['front-facing', 'back-facing', 'pocket']);

/** Bands: as long as what they are sewn to, whatever its shape; cut across and let out or taken in. */
const bandRoles: ReadonlySet<Piece['role']> = new Set([
  'neck-band',
  'cuff',
  'collar',
  'waistband',
  'placket',
  'strap',
  'hood',
  'bib',
  'tier',
  'yoke',
  'other',
]);

/** What is traced from what: facings from the shell, linings from shell and facings; never the other way. */
const layerOf = (piece: Piece): 0 | 1 | 2 => {
  if (isLining(piece)) return 2;
  return tracedRoles.has(piece.role) ? 1 : 0;
};

/** Places at which two lines are compared. */
const samples = 8;

/** A line told without regard to where it lies: distances of places along it from its ends. */
const shapeOf = (paths: readonly Path[]): readonly number[] => {
  const path = paths.flat();
  const whole = pathLength(path);
  const places = Array.from({ length: samples + 1 }, (_, i) => pathPointAtLength(path, (whole * i) / samples));
  const [first, last] = [places[0] as Point, places.at(-1) as Point];
  return [whole, ...places.flatMap((place) => [distance(place, first), distance(place, last)])];
};

/** Whether an edge has another length or another shape than it had. */
const edgeChanged = (before: Piece, after: Piece, edge: string): boolean => {
  if (before === after) return false;
  const [was, is] = [edgeRuns(before, edge), edgeRuns(after, edge)];
  if (was.length === is.length && was.every((path, i) => path === is[i])) return false;
  const [a, b] = [shapeOf(was), shapeOf(is)];
  return a.some((value, i) => Math.abs(value - (b[i] as number)) > tolerance.holds / 10);
};

interface Meeting {
  readonly seam: Seam;
  readonly own: SeamSide;
  readonly mate: SeamSide;
}

/** Seams that join a piece to others, told from its side. */
const meetings = (garment: Garment, id: string): readonly Meeting[] =>
  garment.seams.flatMap((seam): Meeting[] => {
    if (seam.a.piece === seam.b.piece) return [];
    if (seam.a.piece === id) return [{ seam, own: seam.a, mate: seam.b }];
    return seam.b.piece === id ? [{ seam, own: seam.b, mate: seam.a }] : [];
  });

const facingOf: Partial<Record<Piece['role'], Piece['role']>> = {
  front: 'front-facing',
  back: 'back-facing',
  yoke: 'back-facing',
};

/**
 * Facings that copy an edge of a piece without being sewn to it, as where a collar is set between the two: told by their
 * role and by an edge of the very shape, to which a band is sewn on both.
 */
const copiesOf = (garment: Garment, id: string): readonly { readonly own: SeamSide; readonly mate: SeamSide }[] => {
  const piece = pieceOf(garment, id);
  const facings = garment.pieces.filter(({ role }) => role === facingOf[piece.role]);
  if (facings.length === 0) return [];
  const banded = (one: Piece): readonly string[] =>
    meetings(garment, one.id).flatMap(({ own, mate }) =>
      bandRoles.has(pieceOf(garment, mate.piece).role) ? [own.edge] : [],
    );
  return facings.flatMap((facing) =>
    banded(piece).flatMap((edge) => {
      const shape = shapeOf(edgeRuns(piece, edge));
      const copy = banded(facing).find((one) =>
        shapeOf(edgeRuns(facing, one)).every((value, i) => Math.abs(value - (shape[i] as number)) <= tolerance.holds),
      );
      if (copy === undefined) return [];
      return [
        {
          own: { piece: id, edge, reversed: false },
          mate: { piece: facing.id, edge: copy, reversed: false },
        },
      ];
    }),
  );
};

const followCopies = (work: Work, id: string): Result<{ readonly work: Work; readonly traced: readonly string[] }> => {
  let now = work;
  const traced: string[] = [];
  const before = work.before.pieces.find((piece) => piece.id === id);
  if (!before || facingOf[before.role] === undefined) return good({ work, traced });
  for (const { own, mate } of copiesOf(work.before, id)) {
    if (now.worked.get(mate.piece)?.led === true || !edgeChanged(before, pieceNow(now, id), own.edge)) continue;
    const done = traceEdge(now, own, mate);
    if (!done.ok) return done;
    if (done.value !== now) traced.push(mate.piece);
    now = done.value;
  }
  return good({ work: now, traced });
};

/**
 * The facings of a piece traced from it again, whichever of its lines changed: `follow` does so only where the very
 * line they are sewn to did.
 */
export const traceFacings = (given: Work, id: string): Result<Work> => {
  let work = given;
  const piece = pieceNow(given, id);
  const sewn = meetings(given.garment, id).filter(
    ({ seam, mate }) => seam.how === 'plain' && pieceNow(given, mate.piece).role === facingOf[piece.role],
  );
  for (const { own, mate } of [...sewn, ...copiesOf(given.before, id)]) {
    const done = traceEdge(work, own, mate);
    if (!done.ok) return done;
    work = done.value;
  }
  return good(work);
};

const followOne = (work: Work, { seam, own, mate }: Meeting): Result<Work> => {
  const before = work.before.pieces.find(({ id }) => id === own.piece);
  if (!before || work.worked.get(mate.piece)?.led === true) return good(work);
  const piece = pieceNow(work, mate.piece);
  const source = pieceNow(work, own.piece);
  const pleated = layerOf(piece) === 2 && layerOf(source) === 1;
  if (layerOf(piece) > 0 && (seam.how === 'plain' || pleated)) {
    const follows = layerOf(source) < layerOf(piece) && edgeChanged(before, source, own.edge);
    return follows ? traceEdge(work, own, mate) : good(work);
  }
  const now = walked(work.tape, seam, (id) => pieceOf(work.garment, id));
  const was = walked(work.tape, seam, (id) => pieceOf(work.before, id));
  const borne = Math.abs(now.excess) <= Math.max(tolerance.seam / 2, Math.abs(was.excess));
  // A waist let out is wider only if its band is: what the seam could bear as ease is not left to it.
  const taken = piece.role === 'waistband' && Math.abs(now.difference - was.difference) > tolerance.notch;
  if (borne && !taken) return good(work);
  if (isSleeve(piece)) return fitCap(work, seam, own, mate);
  if (bandRoles.has(piece.role)) return lengthenBand(work, seam, mate);
  return good(work);
};

/** Each piece may follow this many times before what hangs on it is left as it is: rounds of seams settle in two or three. */
const mostRounds = 4;

/**
 * What changes an edge changes its mate: facings and pockets are traced again from the new line, collars, bands, cuffs
 * and stands are cut across and made as much longer or shorter, a sleeve's cap is fitted to its armhole again where its
 * ease no longer allows the difference; and what is sewn to those follows them in turn. Pieces that the
 * alteration itself has worked on (`led`) are not moved. A seam that is still within its ease is left alone, but for a waistband's.
 */
export const follow = (given: Work): Result<Work> => {
  let work = given;
  const rounds = new Map<string, number>();
  const queue = [...work.worked.keys()];
  while (queue.length > 0) {
    // Bands last: a collar takes its length from the neck it is sewn to, before its under collar asks the same of it.
    const first = queue.findIndex((one) => !bandRoles.has(pieceNow(work, one).role));
    const [id] = queue.splice(Math.max(first, 0), 1) as [string];
    const round = (rounds.get(id) ?? 0) + 1;
    if (round > mostRounds) continue;
    rounds.set(id, round);
    const copied = followCopies(work, id);
    if (!copied.ok) return copied;
    work = copied.value.work;
    queue.push(...copied.value.traced);
    for (const meeting of meetings(work.garment, id)) {
      const done = followOne(work, meeting);
      if (!done.ok) return done;
      if (done.value !== work) queue.push(meeting.mate.piece);
      work = done.value;
    }
  }
  return good(work);
};
