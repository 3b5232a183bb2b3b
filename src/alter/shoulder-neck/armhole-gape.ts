import { type Point, tolerance } from '../../geometry/index.ts';
import { type Garment, landmarkOf, type Piece, pointOnEdge } from '../../pattern/index.ts';
import { bad, good, type Problem, type Result } from '../../units/index.ts';
import { held } from '../checks.ts';
import type { EdgeEnd } from '../cut.ts';
import { follow } from '../follow.ts';
import { endPoint, isFront, isLining, matesOf } from '../parts.ts';
import { type Alteration, sideParameter } from '../types.ts';
import { beginWork, finishWork, lengthNow, type Work } from '../work.ts';
import { armholeChanges, headEase } from './account.ts';
import { bustPivot, foldAlike, foldOut, gapeHandle, type Pivot, placeOn, squarePlace, type Wedge } from './gape.ts';
import { type Armhole, armholesOf, needsArmhole } from './upper.ts';

/** Where the armhole may be cut, as shares of its upper edge from the shoulder down. */
const cutShares = [0.45, 0.5, 0.55, 0.6, 0.65, 0.7, 0.75, 0.8, 0.85] as const;

/** A princess front: its seam passes the bust point, and the wedge hinges on it there. */
const princessPivot = (garment: Garment, piece: Piece): Pivot | null => {
  const apex = landmarkOf(piece, 'apex') ?? landmarkOf(piece, 'bust-point');
  if (!apex) return null;
  const seam = piece.edges.find(
    ({ id }) =>
      matesOf(garment, piece.id, id).some((mate) => isFront(mate.piece) && mate.piece.id !== piece.id) &&
      placeOn(piece, id, apex).off <= tolerance.kink,
  );
  if (!seam) return null;
  const { end } = placeOn(piece, seam.id, apex);
  return { kind: 'edge', at: pointOnEdge(piece, seam.id, end.at), end };
};

interface Gape {
  readonly armhole: Armhole;
  readonly wedge: Wedge;
}

const placeOf = ({ piece, edges, reversed }: Armhole, pivot: Point): EdgeEnd =>
  squarePlace(
    piece,
    edges[0] as string,
    pivot,
    cutShares.map((share) => (reversed ? 1 - share : share)),
  );

/** Fronts of the shell whose armhole a wedge can be folded out of. */
const gapesOf = (garment: Garment): readonly Gape[] =>
  armholesOf(garment)
    .filter(({ piece, underarm }) => underarm && isFront(piece) && !isLining(piece))
    .flatMap((armhole): Gape[] => {
      const { piece, top, foot } = armhole;
      const bust = bustPivot(piece);
      const pivot = bust ?? princessPivot(garment, piece);
      if (!pivot) return [];
      // Below a dart's wedge the side swings up; where the wedge hinges on the princess seam the shoulder swings down.
      const swinging = endPoint(piece, bust ? foot : top);
      return [{ armhole, wedge: { piece: piece.id, place: placeOf(armhole, pivot.at), pivot, swinging } }];
    });

/** The lining under a princess front, folded by the same angle about the same place, where it lies alike on its paper. */
const liningFolded = (work: Work, { armhole, wedge }: Gape, angle: number): Result<Work> => {
  const { pivot } = wedge;
  const under = armholesOf(work.before).find(
    ({ piece }) => isLining(piece) && piece.role === armhole.piece.role && alikeAt(piece, pivot.at) !== null,
  );
  const hinge = under && alikeAt(under.piece, pivot.at);
  if (!under || !hinge || pivot.kind !== 'edge') return good(work);
  const at: Point = pointOnEdge(under.piece, hinge.edge, hinge.at);
  return foldAlike(
    work,
    {
      piece: under.piece.id,
      place: placeOf(under, at),
      pivot: { kind: 'edge', at, end: hinge },
      swinging: endPoint(under.piece, under.top),
    },
    angle,
  );
};

const alikeAt = (piece: Piece, point: Point): EdgeEnd | null =>
  piece.edges.map(({ id }) => placeOn(piece, id, point)).find(({ off }) => off <= tolerance.kink)?.end ?? null;

const needsBustShaping = (garment: Garment): Problem | null =>
  needsArmhole(garment) ?? (gapesOf(garment).length === 0 ? bad('alter.no-bust-shaping', {}).problem : null);

/**
 * A front armhole that gapes made shorter by `amount`: the surplus folded out as a wedge from the armhole to nothing at the
 * bust point.
 *
 *       \\                 The side between armhole and dart swings up about the
 *        \\__ amount       bust point and the dart opens by the wedge. Of a princess
 *      *´=== |            front the upper part swings down, hinged where its seam
 *     BP`-.__<            passes the bust point; the seam keeps its length.
 *
 * The armhole is drawn fair again, to be shorter by exactly the amount, and the cap of the sleeve fitted to it.
 * Problems: `alter.wedge-too-short`; those of cutting. Source: the gaping armhole of fitting manuals.
 */
export const armholeGape: Alteration = {
  id: 'armhole-gape',
  version: 1,
  family: 'shoulder-neck',
  params: { amount: { unit: 'mm', min: 1, max: 30, usual: [4, 12] }, side: sideParameter },
  amount: 'amount',
  inAll: 2,
  needs: needsBustShaping,
  handle: (garment, params) => {
    const [gape] = gapesOf(garment);
    return gape ? gapeHandle(gape.armhole.piece, gape.wedge, Number(params['amount'] ?? 0)) : null;
  },
  holds: ['neck', 'shoulder', 'armhole-shorter', 'seam-walks'],
  follows: ['dart-opens', 'cap', 'lining-alike'],
  apply: (garment, params) => {
    const amount = Number(params['amount']);
    const gapes = gapesOf(garment);
    let work = beginWork(garment);
    for (const gape of gapes) {
      const done = foldOut(work, gape.wedge, amount);
      if (!done.ok) return done;
      const lined = liningFolded(done.value.work, gape, done.value.angle);
      if (!lined.ok) return lined;
      work = lined.value;
    }
    const followed = follow(work);
    if (!followed.ok) return followed;
    const now = followed.value;
    return finishWork(now, {
      held: gapes.map(({ wedge: { piece, place } }) => {
        const was = garment.pieces.find(({ id }) => id === piece) as Piece;
        const by = lengthNow(now, piece, place.edge) - now.tape.edge(was, place.edge) + amount;
        return held('armhole-shorter', by, { piece, edge: place.edge });
      }),
      changes: [
        ...armholeChanges(
          now,
          gapes.map(({ armhole }) => armhole),
        ),
        ...headEase(now),
      ],
    });
  },
};
