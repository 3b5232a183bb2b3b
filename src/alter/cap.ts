import {
  endTangent,
  joinPaths,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathStart,
  samePoint,
  scale,
  splitPathAtLengths,
  startTangent,
  tolerance,
  turnBetween,
} from '../geometry/index.ts';
import { edgeRuns, type Garment, type Piece, pieceOf, type Seam, type SeamSide } from '../pattern/index.ts';
import { good, type Result } from '../units/index.ts';
import { crossingsAt } from './across.ts';
import { easedField, turningRate } from './fields.ts';
import { newton } from './newton.ts';
import { edgeOrder, isBody, isSleeve, matesOf, sewnToBody, sewnToSleeve } from './parts.ts';
import { reshape } from './reshape.ts';
import { warped } from './warp.ts';
import { pieceNow, type Work, withPiece } from './work.ts';

/** A cap from its start to its end in outline order, and the edges beside it. */
export interface Cap {
  readonly edges: readonly string[];
  readonly before: string;
  readonly after: string;
  /** Whether the edges beside are sewn to one another, as the two sides of a sleeve of one piece are. */
  readonly onePiece: boolean;
  /** Whether the sleeve ends in a hem of its own, sewn to nothing. */
  readonly hemmed: boolean;
}

/** The cap of a set-in sleeve, or of one part of it; null where what is sewn to the body is no one line of several edges, as on a raglan. */
export const capOf = (garment: Garment, piece: Piece): Cap | null => {
  const order = edgeOrder(piece);
  const sewn = order.map((edge) => sewnToBody(garment, piece, edge));
  const count = sewn.filter((is) => is).length;
  const first = sewn.findIndex((is, i) => is && !sewn[(i + sewn.length - 1) % sewn.length]);
  if (first < 0) return null;
  const turned = [...order.slice(first), ...order.slice(0, first)];
  const edges = turned.slice(0, count);
  // A raglan's two seams lie apart, with the neck between.
  const whole = edges.every((edge) => sewn[order.indexOf(edge)] && edgeRuns(piece, edge).length === 1);
  const [before, after] = [turned.at(-1), turned[count]];
  if (!whole || edges.length < 2 || before === undefined || after === undefined) return null;
  const onePiece = matesOf(garment, piece.id, before).some((mate) => mate.piece.id === piece.id && mate.edge === after);
  const joined = [before, after].every((edge) => sewnToSleeve(garment, piece, edge));
  const hemmed = turned.slice(count + 1, -1).every((edge) => matesOf(garment, piece.id, edge).length === 0);
  return joined ? { edges, before, after, onePiece, hemmed } : null;
};

/** How long an edge of the cap has to be: as much longer than its armhole as it was, within the ease of their seam. */
const wantedLength = (work: Work, piece: Piece, edge: string): number => {
  for (const { a, b, easeMin, easeMax } of work.garment.seams) {
    const own = a.piece === piece.id && a.edge === edge ? a : b.piece === piece.id && b.edge === edge ? b : null;
    if (!own) continue;
    const mate = own === a ? b : a;
    if (!isBody(pieceOf(work.garment, mate.piece))) continue;
    const old = pieceOf(work.before, mate.piece);
    const ownOld = work.tape.edge(pieceOf(work.before, piece.id), edge);
    const eased = (ownOld - work.tape.edge(old, mate.edge)) * (own === a ? 1 : -1);
    const ease = Math.min(Math.max(eased, easeMin), easeMax) * (own === a ? 1 : -1);
    return work.tape.edge(pieceNow(work, mate.piece), mate.edge) + ease;
  }
  return work.tape.edge(piece, edge);
};

const nothing: Point = { x: 0, y: 0 };

/** A line whose start is moved and turned, the rest following evenly less over so much of its length. */
const startMoved = (path: Path, by: Point, share: number, turn = 0): Path =>
  warped(
    path,
    easedField(0, share * pathLength(path), { by, rate: turningRate(startTangent(path), turn) }, { by: nothing }),
  );

const endMoved = (path: Path, by: Point, share: number, turn = 0): Path => {
  const length = pathLength(path);
  const rate = turningRate(endTangent(path), turn);
  return warped(path, easedField(length * (1 - share), length, { by: nothing }, { by, rate }));
};

/**
 * An underarm seam whose upper end is moved. A long one goes back into its old line halfway; a short one goes out whole with
 * its hem, which is wider by as much, or runs evenly to a hem that is sewn to a band.
 */
const seamTo = (path: Path, by: Point, end: 'start' | 'end', hemmed: boolean): Path => {
  const length = pathLength(path);
  if (length >= shortSeam) return end === 'end' ? endMoved(path, by, seamShare) : startMoved(path, by, seamShare);
  const below: Point = hemmed ? { x: by.x, y: 0 } : nothing;
  const rate = hemmed ? nothing : scale(by, (end === 'end' ? 1 : -1) / length);
  const [start, last] = end === 'end' ? [below, by] : [by, below];
  return warped(path, easedField(0, length, { by: start, rate }, { by: last, rate }));
};

/** How much of the cap's flank follows a corner or the crown that moves. */
const flankShare = 0.85;

/** How much of an underarm seam follows its corner: above the elbow; all of it where the sleeve is no longer than this, mm. */
const seamShare = 0.5;
const shortSeam = 160;

/** New lines of a sleeve of one piece: both underarm corners moved as far out as down, until each half of the cap fits and both seams walk. */
const cornersMoved = (piece: Piece, cap: Cap, paths: readonly Path[], wanted: readonly number[], seamOver: number) => {
  const [left, right] = [cap.before, cap.after].map((edge) => edgeRuns(piece, edge)) as [
    readonly Path[],
    readonly Path[],
  ];
  if (left.length !== 1 || right.length !== 1) return null;
  const [seamLeft, seamRight] = [left[0] as Path, right[0] as Path];
  const [first, last] = [paths[0] as Path, paths.at(-1) as Path];
  // The cap runs over the crown from left to right as it lies: out is away from the other corner.
  const out = Math.sign(pathEnd(last).x - pathStart(first).x) || 1;
  const drawn = ([p, q, tilt]: readonly number[]) => {
    const byLeft: Point = { x: -out * (p as number), y: (p as number) + (tilt as number) / 2 };
    const byRight: Point = { x: out * (q as number), y: (q as number) - (tilt as number) / 2 };
    const leftNow = seamTo(seamLeft, byLeft, 'end', cap.hemmed);
    const rightNow = seamTo(seamRight, byRight, 'start', cap.hemmed);
    // The corner keeps its angle, so that the cap still runs smoothly across the underarm seam.
    const turnLeft = turnBetween(endTangent(seamLeft), endTangent(leftNow));
    const turnRight = turnBetween(startTangent(seamRight), startTangent(rightNow));
    return {
      first: startMoved(first, byLeft, flankShare, turnLeft),
      last: endMoved(last, byRight, flankShare, turnRight),
      seamLeft: leftNow,
      seamRight: rightNow,
    };
  };
  const found = newton(
    (x) => {
      const now = drawn(x);
      return [
        pathLength(now.first) - (wanted[0] as number),
        pathLength(now.last) - (wanted.at(-1) as number),
        pathLength(now.seamLeft) - pathLength(now.seamRight) - seamOver,
      ];
    },
    3,
    tolerance.seam / 10,
  );
  if (!found) return null;
  const now = drawn(found);
  return {
    [cap.edges[0] as string]: [now.first],
    [cap.edges.at(-1) as string]: [now.last],
    ...Object.fromEntries(cap.edges.slice(1, -1).map((edge, i) => [edge, [paths[i + 1] as Path]])),
    [cap.before]: [now.seamLeft],
    [cap.after]: [now.seamRight],
  };
};

/** New lines of one part of a sleeve in two: the point where its two cap edges meet — crown or underarm — moved until both fit. */
const jointMoved = (cap: Cap, paths: readonly Path[], wanted: readonly number[]) => {
  const [first, last, more] = paths;
  if (!first || !last || more) return null;
  const drawn = ([x, y]: readonly number[]) => {
    const by: Point = { x: x as number, y: y as number };
    return [endMoved(first, by, flankShare), startMoved(last, by, flankShare)] as const;
  };
  const found = newton(
    (x) => {
      const [a, b] = drawn(x);
      return [pathLength(a) - (wanted[0] as number), pathLength(b) - (wanted[1] as number)];
    },
    2,
    tolerance.seam / 10,
  );
  if (!found) return null;
  const [a, b] = drawn(found);
  return { [cap.edges[0] as string]: [a], [cap.edges[1] as string]: [b] };
};

/** The cap divided anew so that edges between the first and the last are as long as wanted; half of what they change by is taken from either side. */
const divided = (line: Path, lengths: readonly number[], wanted: readonly number[]): readonly Path[] => {
  const ends: number[] = [];
  let at = 0;
  const middle = wanted.slice(1, -1).reduce((sum, one, i) => sum + one - (lengths[i + 1] as number), 0);
  at = (lengths[0] as number) - middle / 2;
  ends.push(at);
  for (const one of wanted.slice(1, -1)) {
    at += one;
    ends.push(at);
  }
  return splitPathAtLengths(line, ends);
};

/** Marks at corners of the cap that moved, a level of the upper arm among them, which would else stay at its height. */
const cornersKept = (before: Piece, after: Piece, pairs: readonly (readonly [Point, Point])[]): Piece => {
  const to = (point: Point, now: Point): Point => pairs.find(([was]) => samePoint(was, point))?.[1] ?? now;
  return {
    ...after,
    levels: after.levels.map((level) => {
      const old = before.levels.find(({ id }) => id === level.id);
      return old ? { ...level, from: to(old.from, level.from), to: to(old.to, level.to) } : level;
    }),
  };
};

/** A sleeve with its level of the upper arm moved down so many mm, from edge to edge as it was. */
const levelDropped = (piece: Piece, by: number): Piece => ({
  ...piece,
  levels: piece.levels.map((level) => {
    if (level.id !== 'upper-arm') return level;
    const y = (level.from.y + level.to.y) / 2 + by;
    const found = crossingsAt(piece, y);
    const near = (x: number): number =>
      found.reduce((best, one) => (Math.abs(one.x - x) < Math.abs(best - x) ? one.x : best), Infinity);
    const [from, to] = [near(level.from.x), near(level.to.x)];
    return Number.isFinite(from) && from !== to ? { ...level, from: { x: from, y }, to: { x: to, y } } : level;
  }),
});

/** Where the underarm of an under sleeve moves, the level of the upper arm goes with it on both parts of the sleeve. */
const levelsWithUnderarm = (work: Work, id: string, by: number): Work => {
  const sewn = new Set([
    id,
    ...pieceOf(work.garment, id).edges.flatMap((edge) =>
      matesOf(work.garment, id, edge.id).map(({ piece }) => piece.id),
    ),
  ]);
  return {
    ...work,
    garment: {
      ...work.garment,
      pieces: work.garment.pieces.map((piece) =>
        sewn.has(piece.id) && isSleeve(piece) ? levelDropped(piece, by) : piece,
      ),
    },
  };
};

/**
 * Fits a sleeve's cap to an armhole that no longer lies within the ease of their seam, all of it at once, with the ease
 * it had. Of a sleeve of one piece both underarm corners move, as far out as down (or in as up), the cap running out to them
 * and the underarm seams, which still walk, back into their old lines above the elbow; of one in two parts the crown moves, or on
 * the under sleeve the underarm. A cap that cannot be fitted so is left: its seam is then found not to walk.
 *
 * Source: how sleeves are fitted to a changed armhole in pattern-cutting manuals; solved by Newton's method.
 */
export const fitCap = (work: Work, _seam: Seam, _armhole: SeamSide, { piece: id }: SeamSide): Result<Work> => {
  const piece = pieceNow(work, id);
  const cap = capOf(work.garment, piece);
  if (!cap) return good(work);
  const lengths = cap.edges.map((edge) => work.tape.edge(piece, edge));
  const wanted = cap.edges.map((edge) => wantedLength(work, piece, edge));
  if (lengths.every((length, i) => Math.abs(length - (wanted[i] as number)) <= tolerance.seam / 10)) return good(work);
  const line = joinPaths(...cap.edges.map((edge) => edgeRuns(piece, edge)[0] as Path));
  const paths = divided(line, lengths, wanted);
  if (paths.length !== cap.edges.length) return good(work);
  const old = pieceOf(work.before, id);
  const seamOver = work.tape.edge(old, cap.before) - work.tape.edge(old, cap.after);
  const drawn = cap.onePiece ? cornersMoved(piece, cap, paths, wanted, seamOver) : jointMoved(cap, paths, wanted);
  if (!drawn) return good(work);
  const { piece: shaped, puts } = reshape(piece, drawn);
  const corner = (of: Piece, edge: string, end: 'start' | 'end'): Point => {
    const [path] = edgeRuns(of, edge);
    return end === 'start' ? pathStart(path as Path) : pathEnd(path as Path);
  };
  const pairs = [
    [corner(piece, cap.before, 'end'), corner(shaped, cap.before, 'end')],
    [corner(piece, cap.after, 'start'), corner(shaped, cap.after, 'start')],
  ] as const;
  const fitted = cornersKept(piece, shaped, pairs);
  const done = withPiece(work, { piece: fitted, untrued: fitted, puts, cuts: [] }, false);
  if (piece.role !== 'under-sleeve') return good(done);
  const down = corner(shaped, cap.edges[0] as string, 'end').y - corner(piece, cap.edges[0] as string, 'end').y;
  return good(levelsWithUnderarm(done, id, down));
};
