import { distance, type Point, tolerance } from '../../geometry/index.ts';
import { edgeLength, type Garment, type Piece, pieceOf, pointOnEdge } from '../../pattern/index.ts';
import { bad, good, type Result } from '../../units/index.ts';
import { held } from '../checks.ts';
import type { EdgeEnd } from '../cut.ts';
import { follow, traceFacings } from '../follow.ts';
import { endPoint, isLining, neighbourAt, other } from '../parts.ts';
import { type Alteration, sideParameter } from '../types.ts';
import { beginWork, finishWork, lengthNow, type Work } from '../work.ts';
import {
  bustPivot,
  dartIn,
  foldAlike,
  foldOut,
  gapeHandle,
  metFrom,
  type Pivot,
  placeOn,
  squarePlace,
  type Wedge,
} from './gape.ts';
import { armholesOf, chainsOf, type Neckline, necklinesOf, needsNeckline } from './upper.ts';

/** Where a neckline may be cut, as shares of its longest edge from the centre. */
const cutShares = [0.3, 0.35, 0.4, 0.45, 0.55, 0.6, 0.65] as const;

/** A hinge lies at least so far, mm, from the shoulder. */
const leastBelow = 30;

/** Where a wedge ends that no dart takes: at the notch of the edge across the shoulder from the neckline; else halfway down it. */
const hingeOn = (piece: Piece, edge: string, from: Point): Pivot => {
  const share = nearestNotch(piece, edge, from) ?? 1 / 2;
  return { kind: 'edge', at: pointOnEdge(piece, edge, share), end: { edge, at: share } };
};

const nearestNotch = (piece: Piece, edge: string, from: Point): number | null => {
  const away = (at: number): number => distance(pointOnEdge(piece, edge, at), from);
  const inside = piece.notches.filter(
    ({ edge: own, at }) => own === edge && at > 0 && at < 1 && away(at) >= leastBelow,
  );
  return inside.length === 0 ? null : inside.reduce((a, b) => (away(b.at) < away(a.at) ? b : a)).at;
};

const pivotOf = (garment: Garment, { piece, side, shoulder }: Neckline): Pivot => {
  const dart = side === 'front' ? bustPivot(piece) : dartIn(piece, shoulder.edge);
  if (dart) return dart;
  const armhole = armholesOf(garment).find((one) => one.piece.id === piece.id);
  if (armhole && !armhole.underarm) {
    const edge = armhole.foot.edge;
    return { kind: 'edge', at: pointOnEdge(piece, edge, 1 / 2), end: { edge, at: 1 / 2 } };
  }
  if (armhole?.edges.includes(shoulder.edge)) return hingeOn(piece, shoulder.edge, endPoint(piece, shoulder));
  const outer = { edge: shoulder.edge, end: other(shoulder.end) };
  const across = neighbourAt(piece, outer)?.edge ?? shoulder.edge;
  return hingeOn(piece, across, endPoint(piece, outer));
};

/** A place on the neckline, on its longest edge. */
const placeOf = ({ piece, edges, reversed }: Neckline, pivot: Point, work: Work): EdgeEnd => {
  const edge = edges.reduce((a, b) => (work.tape.edge(piece, b) > work.tape.edge(piece, a) ? b : a));
  return squarePlace(
    piece,
    edge,
    pivot,
    cutShares.map((share) => (reversed ? 1 - share : share)),
  );
};

const wedgeOf = (garment: Garment, neckline: Neckline, work: Work): Wedge => {
  const { piece, shoulder } = neckline;
  const pivot = pivotOf(garment, neckline);
  return { piece: piece.id, place: placeOf(neckline, pivot.at, work), pivot, swinging: endPoint(piece, shoulder) };
};

/** An edge of a neckline shorter than this, mm, cannot give up a wedge and still be one fair curve. */
const leastEdge = 50;

const hasRoom = (garment: Garment, side: string): boolean => {
  const necklines = necklinesOf(garment).filter((one) => one.side === side);
  const longest = ({ piece, edges }: Neckline): number => Math.max(...edges.map((edge) => edgeLength(piece, edge)));
  return necklines.length > 0 && necklines.every((neckline) => longest(neckline) >= leastEdge);
};

/** The lining's piece that lies under a piece of the shell: its shoulder lies on the other's. */
const liningUnder = (garment: Garment, { piece, shoulder }: Neckline): Piece | null => {
  const outer = endPoint(piece, { edge: shoulder.edge, end: other(shoulder.end) });
  const chain = chainsOf(garment).find(([first]) => {
    if (!first?.lining || first.piece.role !== piece.role) return false;
    return distance(endPoint(first.piece, { edge: first.edge, end: other(first.inner) }), outer) <= tolerance.kink;
  });
  return chain?.[0]?.piece ?? null;
};

/** The lining's upper part swung as its shell's; where the lining lies otherwise on its paper it is left to be traced. */
const liningFolded = (work: Work, neckline: Neckline, pivot: Pivot, place: Point, angle: number): Result<Work> => {
  const lining = liningUnder(work.garment, neckline);
  if (!lining || pivot.kind !== 'edge') return good(work);
  const edge = lining.edges.find(({ id }) => placeOn(lining, id, pivot.at).off <= tolerance.kink)?.id;
  const from = metFrom(lining, pivot.at, place);
  if (edge === undefined || !from) return good(work);
  const hinge = placeOn(lining, edge, pivot.at).end;
  const own: Pivot = { kind: 'edge', at: pointOnEdge(lining, edge, hinge.at), end: hinge };
  const outer = endPoint(neckline.piece, { edge: neckline.shoulder.edge, end: other(neckline.shoulder.end) });
  return foldAlike(work, { piece: lining.id, place: from, pivot: own, swinging: outer }, angle);
};

/**
 * A neckline that gapes made shorter by `amount` on each half of front or back: the surplus folded out as a wedge from the
 * neckline.
 *
 *       __*\\ amount        The wedge comes to nothing at the bust point, and the side
 *      /   \\ \\             dart opens by it; on the back at the point of the shoulder dart.
 *     |     \\\\___          Without such a dart it ends on the edge across, at the
 *     |      *BP  <        notch of armhole, raglan or princess seam, as the hinge
 *     |                    of what turns; on a yoke in its lower seam.
 *
 * The part towards the shoulder swings, everything sewn there keeps its length, and the neckline is drawn fair again, to
 * be shorter by exactly the amount. Facings are traced again, bands and collars made as much shorter.
 * Problems: `alter.wedge-too-short`; those of cutting and of what follows. Source: the gaping neckline of fitting manuals.
 */
export const neckGape: Alteration = {
  id: 'neck-gape',
  version: 1,
  family: 'shoulder-neck',
  params: {
    amount: { unit: 'mm', min: 1, max: 30, usual: [3, 10] },
    where: { unit: 'choice', choices: ['front', 'back'], usual: 'front' },
    side: sideParameter,
  },
  amount: 'amount',
  inAll: 2,
  needs: needsNeckline,
  options: (garment, parameter) =>
    parameter === 'where' ? ['front', 'back'].filter((side) => hasRoom(garment, side)) : [],
  handle: (garment, params) => {
    const neckline = necklinesOf(garment).find(({ side }) => side === (params['where'] ?? 'front'));
    return neckline
      ? gapeHandle(neckline.piece, wedgeOf(garment, neckline, beginWork(garment)), Number(params['amount'] ?? 0))
      : null;
  },
  holds: ['shoulder', 'armhole', 'neck-shorter', 'seam-walks'],
  follows: ['dart-opens', 'facings', 'collar'],
  apply: (garment, params) => {
    const amount = Number(params['amount']);
    const necklines = necklinesOf(garment).filter(({ side }) => side === params['where']);
    if (necklines.length === 0) return bad('alter.no-neckline', {});
    let work = beginWork(garment);
    for (const neckline of necklines) {
      const { piece } = neckline;
      const wedge = wedgeOf(garment, neckline, work);
      const { pivot, place } = wedge;
      const done = foldOut(work, wedge, amount);
      if (!done.ok) return done;
      const lined = liningFolded(
        done.value.work,
        neckline,
        pivot,
        pointOnEdge(piece, place.edge, place.at),
        done.value.angle,
      );
      if (!lined.ok) return lined;
      const traced = traceFacings(lined.value, piece.id);
      if (!traced.ok) return traced;
      work = traced.value;
    }
    const followed = follow(work);
    if (!followed.ok) return followed;
    const now = followed.value;
    return finishWork(now, {
      held: necklines
        .filter(({ piece }) => !isLining(piece))
        .map(({ piece, edges }) => {
          const length = (of: (edge: string) => number): number => edges.reduce((sum, edge) => sum + of(edge), 0);
          const was = length((edge) => now.tape.edge(pieceOf(garment, piece.id), edge));
          return held('neck-shorter', length((edge) => lengthNow(now, piece.id, edge)) - was + amount, {
            piece: piece.id,
          });
        }),
    });
  },
};
