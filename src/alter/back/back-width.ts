import { type Path, type Point, pathEnd, pathStart } from '../../geometry/index.ts';
import { edgeRuns, type Garment, landmarkOf, type Piece, pieceOf } from '../../pattern/index.ts';
import { bad, type Problem } from '../../units/index.ts';
import { held, heldEdges } from '../checks.ts';
import { follow } from '../follow.ts';
import { headEaseChanges } from '../sleeve/head-ease.ts';
import { type Alteration, type Held, sideParameter } from '../types.ts';
import { walkSeams } from '../walk-seams.ts';
import { type Knot, shiftedPath, warpedByHeight } from '../width/shift.ts';
import { type Side, sidesOf } from '../width/sides.ts';
import { beginWork, finishWork, pieceNow, redrawEdges, type Work } from '../work.ts';

/** The back's armhole: its edges from the shoulder point down, and the heights that matter. */
interface Armhole {
  readonly side: Side;
  readonly piece: Piece;
  readonly edges: readonly string[];
  readonly shoulder: Point;
  readonly underarm: Point;
  /** Where the back is measured across, mm down the piece. */
  readonly across: number;
  readonly waist: number;
}

/** Across the back lies this share of the way down the armhole where the piece does not say (a lining). */
const usualAcross = 0.55;

const sleeveEdges = (garment: Garment, piece: Piece): readonly string[] =>
  piece.edges.flatMap(({ id }) => {
    const sewn = garment.seams.some(({ a, b }) => {
      const mate = a.piece === piece.id && a.edge === id ? b : b.piece === piece.id && b.edge === id ? a : null;
      return mate !== null && /sleeve/.test(pieceOf(garment, mate.piece).role);
    });
    return sewn ? [id] : [];
  });

/** Whether the edges in between run from the shoulder: a seam to a yoke or a raglan does not end at a shoulder point. */
const armholeOf = (garment: Garment, side: Side): Armhole | null => {
  const { piece } = side;
  if (piece.role !== 'back' && piece.role !== 'side-back') return null;
  const edges = sleeveEdges(garment, piece);
  if (edges.length === 0 || !side.underarm) return null;
  const ends = edges.flatMap((edge) => edgeRuns(piece, edge).flatMap((path) => [pathStart(path), pathEnd(path)]));
  const shoulder = ends.reduce((a, b) => (b.y < a.y ? b : a));
  const underarm = ends.reduce((a, b) => (b.y > a.y ? b : a));
  const waist = side.heights['waist'] ?? side.bottom;
  if (!sewnToShoulder(garment, piece, shoulder) || waist - underarm.y < leastSide) return null;
  const marked = piece.landmarks.find(({ id }) => id === 'across-back')?.at.y;
  const across = marked ?? shoulder.y + usualAcross * (underarm.y - shoulder.y);
  return { side, piece, edges, shoulder, underarm, across, waist };
};

/** A side shorter than this, mm, has no room to run back in. */
const leastSide = 60;

/** The edge that meets the armhole above is sewn to a front's: a shoulder. */
const sewnToShoulder = (garment: Garment, piece: Piece, corner: Point): boolean =>
  garment.seams.some(({ a, b }) => {
    const own = a.piece === piece.id ? a : b.piece === piece.id ? b : null;
    const mate = own === a ? b : a;
    if (!own || !/front/.test(pieceOf(garment, mate.piece).role)) return false;
    const path = edgeRuns(piece, own.edge).flat();
    return [pathStart(path), pathEnd(path)].some((end) => Math.hypot(end.x - corner.x, end.y - corner.y) < 1);
  });

const armholesOf = (garment: Garment): readonly Armhole[] =>
  sidesOf(garment).flatMap((side) => {
    const found = armholeOf(garment, side);
    return found ? [found] : [];
  });

const needsArmhole = (garment: Garment): Problem | null =>
  armholesOf(garment).length > 0 ? null : bad('alter.no-armhole-on-back', {}).problem;

/**
 * Back broader (or narrower) by `amount` on each half: the armhole moved out from the line across the blades down to the
 * underarm, to nothing at the shoulder point; the side seam runs back in to the waist.
 *
 *      ___
 *         \\          shoulder stays
 *          )→        across the back, and at the underarm: out by the amount
 *          \\___→
 *           /        to nothing at the waist
 *
 * The armhole becomes a little longer or shorter, which the sleeve's ease must bear. Source: fitting manuals on broad and
 * narrow backs.
 */
export const backWidth: Alteration = {
  id: 'back-width',
  version: 1,
  family: 'back',
  params: { amount: { unit: 'mm', min: -25, max: 30, usual: [-8, 10] }, side: sideParameter },
  amount: 'amount',
  inAll: 2,
  needs: needsArmhole,
  handle: (garment) => {
    const [armhole] = armholesOf(garment);
    if (!armhole) return null;
    const { piece, edges, across, side } = armhole;
    const path = edgeRuns(piece, edges[0] as string)[0] as Path;
    const at = path
      .map(({ to }) => to)
      .reduce((a, b) => (Math.abs(b.y - across) < Math.abs(a.y - across) ? b : a), pathStart(path));
    return { piece: piece.id, at, perMillimetre: { x: side.outward, y: 0 } };
  },
  reverse: (params) => ({ alteration: 'back-width', params: { ...params, amount: -Number(params.amount) } }),
  holds: ['shoulder-stays', 'armhole-fits', 'seam-walks'],
  follows: ['lining', 'facings'],
  apply: (garment, params) => {
    const amount = Number(params.amount);
    const armholes = armholesOf(garment);
    let work = beginWork(garment);
    for (const { piece, side, edges, shoulder, underarm, across, waist } of armholes) {
      const upper: readonly Knot[] = [
        { y: shoulder.y, shift: 0 },
        { y: across, shift: amount },
      ];
      const lower: readonly Knot[] = [
        { y: underarm.y, shift: amount },
        { y: waist, shift: 0 },
      ];
      const drawn: Record<string, readonly Path[]> = {};
      for (const edge of edges)
        drawn[edge] = edgeRuns(piece, edge).map((path) => warpedByHeight(path, upper, side.outward));
      for (const edge of side.edges)
        drawn[edge] = edgeRuns(piece, edge).map((path) => shiftedPath(path, lower, side.outward));
      work = redrawEdges(work, piece.id, drawn);
    }
    const followed = follow(walkSeams(work));
    if (!followed.ok) return followed;
    const done = followed.value;
    const sleeves = garment.pieces.filter(({ role }) => role === 'sleeve');
    return finishWork(done, {
      held: armholes.flatMap(({ piece, edges, side }) => [
        ...heldEdges(
          done.tape,
          piece,
          pieceNow(done, piece.id),
          piece.edges.map(({ id }) => id).filter((id) => !edges.includes(id) && !side.edges.includes(id)),
        ),
        ...heldAcross(done, piece, side.outward * amount),
      ]),
      changes: sleeves.flatMap(({ id }) => headEaseChanges(done, id)),
    });
  },
};

/** Seating the mark across the back on its new line moves it up or down by a hair, mm. */
const acrossWithin = 1.5;

const acrossOf = (piece: Piece): number | null => landmarkOf(piece, 'across-back')?.x ?? null;

/** The mark across the back moved out by what was asked; a lining carries none. */
const heldAcross = (work: Work, piece: Piece, by: number): readonly Held[] => {
  const [was, now] = [acrossOf(piece), acrossOf(pieceNow(work, piece.id))];
  return was === null || now === null ? [] : [held('across-grows', now - was - by, { piece: piece.id }, acrossWithin)];
};
