import {
  distance,
  endTangent,
  type Path,
  type Point,
  pathEnd,
  pathStart,
  startTangent,
  subtract,
  tolerance,
  turnBetween,
} from '../../geometry/index.ts';
import { dartsOf, edgeRuns, type Garment, type Piece, pointOnEdge } from '../../pattern/index.ts';
import { bad, good, type Problem, type Result } from '../../units/index.ts';
import { reached } from '../anatomy.ts';
import { held } from '../checks.ts';
import type { EdgeEnd } from '../cut.ts';
import { fairOfLength, fairPath, outward } from '../fair-edge.ts';
import { follow } from '../follow.ts';
import { heldLengths } from '../held-edges.ts';
import { levelLines } from '../level-lines.ts';
import { partBeside, swing } from '../move.ts';
import { type Alteration, sideParameter } from '../types.ts';
import { beginWork, cutAndMove, finishWork, lengthNow, pieceNow, trueEdges, type Work } from '../work.ts';
import { edgeBeside, type Side, sidesOf } from './sides.ts';

/** A piece that hangs from a waist to an edge below, and where it can be slashed from one to the other. */
interface Hanging {
  readonly side: Side;
  readonly piece: Piece;
  /** The edge it hangs from and the one below. */
  readonly top: string;
  readonly below: string;
  readonly hinge: EdgeEnd;
  readonly opens: EdgeEnd;
  readonly hingeAt: Point;
  readonly opensAt: Point;
}

/** Places along the top to hinge at, the middle first: one clear of darts and pleats. */
const places = [0.5, 0.45, 0.55, 0.4, 0.6, 0.35, 0.65, 0.7, 0.3] as const;

/** A slash keeps this far from a dart, mm. */
const clearOfDart = 8;

const hangingOf = (side: Side): Hanging | null => {
  const { piece } = side;
  const [top, below] = [edgeBeside(side, 'top'), edgeBeside(side, 'bottom')];
  if (side.underarm || top === null || below === null || piece.role === 'waistband') return null;
  // Legs are widened in their own seams.
  if (piece.landmarks.some(({ id }) => id === 'crotch-point')) return null;
  const darts = dartsOf(piece);
  for (const at of places) {
    const hingeAt = pointOnEdge(piece, top, at);
    const near = darts.some(({ legs, point }) => {
      const [low, high] = [Math.min(legs[0].x, legs[1].x, point.x), Math.max(legs[0].x, legs[1].x, point.x)];
      return hingeAt.x > low - clearOfDart && hingeAt.x < high + clearOfDart;
    });
    const down = reached(piece, { x: hingeAt.x, y: hingeAt.y + 1 }, { x: 0, y: 1 });
    if (near || down?.end.edge !== below) continue;
    return { side, piece, top, below, hinge: { edge: top, at }, opens: down.end, hingeAt, opensAt: down.point };
  }
  return null;
};

/** A tier gathered to the lower edge of another is let out with it, as a band is, and not spread itself. */
const hangingsOf = (garment: Garment): readonly Hanging[] => {
  const all = sidesOf(garment).flatMap((side) => {
    const found = hangingOf(side);
    return found ? [found] : [];
  });
  const isBelow = (piece: string, edge: string): boolean =>
    all.some((one) => one.piece.id === piece && one.below === edge);
  return all.filter(({ piece, top }) =>
    garment.seams.every(
      ({ a, b }) =>
        !(a.piece === piece.id && a.edge === top && isBelow(b.piece, b.edge)) &&
        !(b.piece === piece.id && b.edge === top && isBelow(a.piece, a.edge)),
    ),
  );
};

const needsHanging = (garment: Garment): Problem | null =>
  hangingsOf(garment).length > 0 ? null : bad('alter.no-hanging-piece', {}).problem;

/** One piece slashed from its lower edge up and its outer part swung about the top. */
const flared = (work: Work, one: Hanging, amount: number): Result<Work> => {
  const { piece, side, top, hinge, opens, hingeAt, opensAt, below } = one;
  const angle = 2 * Math.asin(amount / 2 / distance(hingeAt, opensAt));
  const done = cutAndMove(
    work,
    piece.id,
    { nodes: {}, cuts: [{ id: 'slash', from: hinge, to: opens }] },
    {
      // Going down, the left hand is the part on the right as seen. Anticlockwise, negative, takes its hem to the right.
      move: (pieces) =>
        swing(
          pieces,
          partBeside(pieces, 'slash', side.outward === 1 ? 'left' : 'right'),
          hingeAt,
          -side.outward * angle,
        ),
      truing: ({ edge }) => (edge === below || edgeRuns(piece, top).length === 1 ? 'none' : 'hinge'),
    },
  );
  if (!done.ok) return done;
  const now = pieceNow(done.value, piece.id);
  const [path, more] = edgeRuns(now, below);
  const drawn: Record<string, readonly Path[]> = path && !more ? { [below]: [fairPath(path)] } : {};
  const [waist, broken] = edgeRuns(now, top);
  if (waist && !broken) drawn[top] = [roundTop(work, one, now, waist)];
  return good(trueEdges(done.value, piece.id, drawn, (made) => levelLines(piece, { ...made, grain: piece.grain })));
};

/** A top edge without darts that turned at the hinge drawn round and as long as it was, its outer end drawn out square to the side. */
const roundTop = (work: Work, { piece, side, top }: Hanging, now: Piece, path: Path): Path => {
  const beside = edgeRuns(now, side.edges[0] as string).flat();
  const startsAtSide = distance(pathStart(path), pathEnd(beside)) <= tolerance.walk;
  const out = outward(startsAtSide ? endTangent(beside) : startTangent(beside));
  return fairOfLength(path, work.tape.edge(piece, top), startsAtSide ? [out, null] : [null, out]);
};

/** A curve over an opening is as much longer than the opening itself: under this share of it. */
const hemWithin = 0.2;

/**
 * Flare: front and back spread by `amount` at the hem of each half, from nothing at the waist. Slashed from the hem up
 * to a hinge on the waist and the outer part swung out; negative folds the same out.
 *
 *      ___.____          . hinge on the waist, which keeps its length
 *     |   |\\   \\
 *     |   | \\   \\        the side hangs further out, at the same angle front and back
 *     |___|  \\___\\
 *
 * Source: slash and spread, pattern-cutting manuals on flared skirts.
 */
export const flare: Alteration = {
  id: 'flare',
  version: 1,
  family: 'width',
  params: { amount: { unit: 'mm', min: -60, max: 200, usual: [10, 80] }, side: sideParameter },
  amount: 'amount',
  inAll: 4,
  needs: needsHanging,
  handle: (garment) => {
    const [found] = hangingsOf(garment);
    if (!found) return null;
    const [path] = edgeRuns(found.piece, found.below);
    if (!path) return null;
    const ends = [pathStart(path), pathEnd(path)];
    const outer = ends.reduce((a, b) => (found.side.outward * (b.x - a.x) > 0 ? b : a));
    return { piece: found.piece.id, at: outer, perMillimetre: { x: found.side.outward, y: 0 } };
  },
  reverse: (params) => ({ alteration: 'flare', params: { ...params, amount: -Number(params.amount) } }),
  holds: ['waist-stays', 'sides-alike', 'seam-walks'],
  follows: ['hem', 'lining', 'pockets'],
  apply: (garment, params) => {
    const amount = Number(params.amount);
    const hanging = hangingsOf(garment);
    let work = beginWork(garment);
    for (const one of hanging) {
      const done = flared(work, one, amount);
      if (!done.ok) return done;
      work = done.value;
    }
    const followed = follow(work);
    if (!followed.ok) return followed;
    const done = followed.value;
    return finishWork(done, {
      held: hanging.flatMap(({ piece, top, below, side }) => [
        ...heldLengths(done, piece.id, [top, ...side.edges]),
        held(
          'hem-grows',
          lengthNow(done, piece.id, below) - done.tape.edge(piece, below) - amount,
          { piece: piece.id, edge: below },
          Math.max(tolerance.holds, hemWithin * Math.abs(amount)),
        ),
      ]),
      warnings: unlike(done, hanging),
    });
  },
};

/** Sides that meet may lie this far from one angle to the grain, radians: 3° (trade, Alterations). */
const mostApart = (3 * Math.PI) / 180;

/** The direction of a piece's side from top to bottom, told outward. */
const slantOf = ({ side }: Hanging, piece: Piece): number => {
  const points = side.edges.flatMap((edge) =>
    edgeRuns(piece, edge).flatMap((path) => [pathStart(path), pathEnd(path)]),
  );
  const top = points.reduce((a, b) => (b.y < a.y ? b : a));
  const bottom = points.reduce((a, b) => (b.y > a.y ? b : a));
  return -side.outward * turnBetween({ x: 0, y: 1 }, subtract(bottom, top));
};

/** Says where the sides of front and back, which are sewn together, no longer hang alike. */
const unlike = (work: Work, hanging: readonly Hanging[]): readonly Problem[] => {
  const shell = hanging.filter(({ piece }) => piece.cut.some(({ layer }) => layer === 'shell'));
  const slants = shell.map((one) => slantOf(one, pieceNow(work, one.piece.id)));
  const apart = Math.max(...slants) - Math.min(...slants);
  return apart > mostApart
    ? [bad('alter.sides-hang-apart', { degrees: Math.round((apart * 180) / Math.PI) }).problem]
    : [];
};
