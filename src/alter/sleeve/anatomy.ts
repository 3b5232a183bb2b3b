import {
  distance,
  nearestOnPath,
  type Path,
  type Point,
  pathBounds,
  pathEnd,
  pathStart,
  tolerance,
} from '../../geometry/index.ts';
import { edgeRuns, type Garment, landmarkOf, outlineOf, type Piece, pointOnEdge } from '../../pattern/index.ts';
import { bad, type Problem } from '../../units/index.ts';
import type { EdgeEnd } from '../cut.ts';
import { edgeOrder, sewnToBody, sewnToSleeve } from '../parts.ts';

/** A set-in sleeve, told by what its edges are sewn to. Outline order is clockwise: over the cap from left to right. */
export interface Sleeve {
  readonly piece: Piece;
  /** Edges sewn into the armhole, from left to right. */
  readonly cap: readonly string[];
  /** Edges sewn to the sleeve itself, or to its under sleeve: on the left of the cap's start, on the right of its end. */
  readonly left: string;
  readonly right: string;
  /** What is left: hem or wrist, from right to left. */
  readonly hem: readonly string[];
  /** Highest of the cap, and the hem right below it. */
  readonly top: Point;
  readonly wrist: Point;
  readonly topEnd: EdgeEnd;
  readonly wristEnd: EdgeEnd;
  /** Where cap and seam meet, left and right. */
  readonly corners: readonly [Point, Point];
}

/** Where a point lies on some of a piece's edges. */
const placeOn = (
  piece: Piece,
  edges: readonly string[],
  point: Point,
): { readonly end: EdgeEnd; readonly point: Point } => {
  const places = edges.map((edge) => {
    const path = edgeRuns(piece, edge).flat();
    const near = nearestOnPath(path, point);
    const whole = lengthOf(path);
    return { edge, near, at: whole === 0 ? 0 : near.atLength / whole };
  });
  const best = places.reduce((a, b) => (b.near.distance < a.near.distance ? b : a));
  return { end: { edge: best.edge, at: best.at }, point: best.near.point };
};

const lengthOf = (path: Path): number => nearestOnPath(path, pathEnd(path)).atLength;

/**
 * A sleeve as the alterations see it; null where its cap is not one line from seam to seam (a raglan, whose top is part of
 * the neck).
 */
export const sleeveOf = (garment: Garment, piece: Piece): Sleeve | null => {
  const order = edgeOrder(piece);
  const kinds = order.map((edge) => {
    if (sewnToBody(garment, piece, edge)) return 'cap' as const;
    return sewnToSleeve(garment, piece, edge) ? ('joint' as const) : ('hem' as const);
  });
  const first = kinds.findIndex((kind, i) => kind === 'cap' && kinds[(i + kinds.length - 1) % kinds.length] !== 'cap');
  if (first < 0) return null;
  const turned = [...order.slice(first), ...order.slice(0, first)];
  const kindsTurned = [...kinds.slice(first), ...kinds.slice(0, first)];
  const told = kindsTurned.join(' ');
  if (!/^(cap )+joint (hem )+joint$/.test(told)) return null;
  const cap = turned.filter((_, i) => kindsTurned[i] === 'cap');
  const hem = turned.filter((_, i) => kindsTurned[i] === 'hem');
  const [right, left] = turned.filter((_, i) => kindsTurned[i] === 'joint') as [string, string];
  const line = cap.flatMap((edge) => edgeRuns(piece, edge).flat());
  const marked = landmarkOf(piece, 'cap-top') ?? shoulderNotch(piece, cap) ?? highest(line);
  const top = placeOn(piece, cap, marked);
  const { maxY } = pathBounds(outlineOf(piece));
  const below = placeOn(piece, hem, { x: top.point.x, y: maxY });
  const corners = [pathStart(line), pathEnd(line)] as const;
  if (corners.some((corner) => distance(corner, top.point) <= tolerance.kink)) return null;
  return {
    piece,
    cap,
    left,
    right,
    hem,
    top: top.point,
    wrist: below.point,
    topEnd: top.end,
    wristEnd: below.end,
    corners,
  };
};

const shoulderNotch = (piece: Piece, cap: readonly string[]): Point | null => {
  const notch = piece.notches.find(({ id, edge }) => id === 'shoulder' && cap.includes(edge));
  return notch ? pointOnEdge(piece, notch.edge, notch.at) : null;
};

const highest = (path: Path): Point => path.map(({ to }) => to).reduce((a, b) => (b.y < a.y ? b : a), pathStart(path));

/** Every set-in sleeve of a garment, its lining's among them; the under sleeve of two has no cap top and is not one. */
export const sleevesOf = (garment: Garment): readonly Sleeve[] =>
  garment.pieces.flatMap((piece) => {
    const found = piece.role === 'sleeve' ? sleeveOf(garment, piece) : null;
    return found ? [found] : [];
  });

/** What a garment lacks for an alteration of a set-in sleeve. */
export const needsSleeve = (garment: Garment): Problem | null => {
  const sleeves = garment.pieces.filter(({ role }) => role === 'sleeve');
  if (sleeves.length === 0) return bad('alter.no-piece', { role: 'sleeve' }).problem;
  return sleevesOf(garment).length === sleeves.length ? null : bad('alter.no-set-in-sleeve', {}).problem;
};
