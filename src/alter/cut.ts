import {
  distance,
  identity,
  insideOutline,
  intersectPaths,
  joinPaths,
  line,
  midpoint,
  type Outline,
  type Path,
  type Point,
  pathPointAtLength,
  polyline,
  reversePath,
  samePoint,
  type Transform,
  tolerance,
} from '../geometry/index.ts';
import { dartsOf, outlineOf, type Piece, type Run } from '../pattern/index.ts';
import { bad, good, type Problem, type Result } from '../units/index.ts';
import {
  arcStretch,
  type CutNode,
  type HalfEdge,
  halfKey,
  type Line,
  type Stretch,
  stretches,
  type Traced,
  tau,
  trace,
} from './faces.ts';
import { type Place, placeAlongEdge, type Ring, type RingRun, ringOf, settled } from './ring.ts';

/** A cut's end on an edge, at a fraction of its length from its start in outline order. */
export interface EdgeEnd {
  readonly edge: string;
  readonly at: number;
}

/**
 * Where a cut ends: on an edge, at a fraction of its length from its start in outline order; at the end
 * of a dart's leg on the outline (0 where its mouth begins, 1 where it ends); or at a named point inside
 * the piece where cuts meet.
 */
export type CutEnd = EdgeEnd | { readonly dart: string; readonly leg: 0 | 1 } | { readonly node: string };

/** A straight cut, or one bent at the points of `via`. */
export interface Cut {
  readonly id: string;
  readonly from: CutEnd;
  readonly to: CutEnd;
  readonly via?: readonly Point[];
}

/** The lines a piece is cut along. `nodes` names the points inside it where cuts meet or stop. */
export interface CutPlan {
  readonly nodes: Readonly<Record<string, Point>>;
  readonly cuts: readonly Cut[];
}

/** A stretch of one run between two cut ends; it keeps the edge it came from. */
export interface Fragment {
  readonly run: number;
  readonly of: Run;
  readonly path: Path;
  /** Where it begins and ends along its edge, mm. */
  readonly from: number;
  readonly to: number;
  readonly part: number;
}

/** One cut as it lies on the piece, with the part on either hand when walked from its start to its end, as seen. */
export interface CutLine {
  readonly id: string;
  readonly points: readonly Point[];
  readonly from: number;
  readonly to: number;
  readonly right: number;
  readonly left: number;
}

/** The parts that meet at a node, clockwise as seen; on the outline from the one that owns what follows to the one that owns what precedes. */
interface Meeting {
  readonly point: Point;
  readonly onOutline: boolean;
  readonly parts: readonly number[];
}

/** What lies between cuts. A dart's wedge cut out along both its legs is no cloth to be moved: its neighbours open or close it. */
export interface Part {
  readonly outline: Outline;
  /** The dart whose wedge this is, when both its legs were cut; null for cloth. */
  readonly wedge: string | null;
  /** Its border, clockwise as seen: cuts walked forward or backward, null for a stretch of the outline. */
  readonly border: readonly ({ readonly cut: number; readonly forward: boolean } | null)[];
}

/** A piece cut into parts, and how far each has been moved. */
export interface CutPiece {
  readonly piece: Piece;
  readonly ring: Ring;
  /** All of the outline in ring order, from the start of run 0. */
  readonly fragments: readonly Fragment[];
  readonly cuts: readonly CutLine[];
  readonly meetings: readonly Meeting[];
  readonly parts: readonly Part[];
  readonly motions: readonly Transform[];
}

const placeOfEnd = (piece: Piece, ring: Ring, end: CutEnd): Place | null => {
  if ('node' in end) return null;
  if ('edge' in end) {
    return placeAlongEdge(piece, ring, end.edge, end.at * (ring.edgeLengths.get(end.edge) ?? 0));
  }
  const mouth = piece.runs.findIndex((run) => run.kind === 'mouth' && run.dart === end.dart);
  if (mouth < 0) throw new Error(`Piece ${piece.id} has no dart ${end.dart}`);
  return settled(ring, { run: end.leg === 0 ? mouth : (mouth + 1) % ring.runs.length, at: 0 });
};

const sameNode = (a: CutNode, place: Place | null, point: Point): boolean =>
  place === null || a.place === null
    ? place === a.place && samePoint(a.point, point)
    : a.place.run === place.run && (a.place.at === place.at || samePoint(a.point, point));

/** Outline nodes in ring order. */
const ringOrder = (nodes: readonly CutNode[]): readonly number[] =>
  nodes
    .map((node, index) => ({ node, index }))
    .filter(({ node }) => node.place !== null)
    .sort((a, b) => {
      const [p, q] = [a.node.place as Place, b.node.place as Place];
      return p.run - q.run || p.at - q.at;
    })
    .map(({ index }) => index);

/**
 * Cuts a piece along lines into parts. Every part keeps the ordered fragments of the outline it owns, each
 * under its parent edge's name. The faces are found as in any planar subdivision (de Berg et al.,
 * Computational Geometry, ch. 2): walk with the part on the right hand, and at every node take the first
 * line anticlockwise from the one arrived on.
 *
 * Problems `alter.cut-not-through` where the cuts do not divide it, `alter.cut-too-short` where one has no length, `alter.cut-leaves-piece` and
 * `alter.cut-through-dart` where it runs where it must not. Cuts meet only at named nodes. Throws on an edge, dart or node that is not there.
 */
export const cut = (piece: Piece, plan: CutPlan): Result<CutPiece> => {
  const ring = ringOf(piece);
  const nodes: CutNode[] = [];
  const nodeOf = (end: CutEnd): number => {
    const place = placeOfEnd(piece, ring, end);
    const point = place
      ? pathPointAtLength((ring.runs[place.run] as RingRun).path, place.at)
      : plan.nodes[(end as { node: string }).node];
    if (!point) throw new Error(`The cuts of ${piece.id} meet at a point that is not named`);
    const known = nodes.findIndex((node) => sameNode(node, place, point));
    if (known >= 0) return known;
    nodes.push({ point, place });
    return nodes.length - 1;
  };
  const ends = plan.cuts.map((one) => ({ id: one.id, from: nodeOf(one.from), to: nodeOf(one.to), via: one.via ?? [] }));
  const order = ringOrder(nodes);
  const ways = ends.map(({ from, to }) => `${Math.min(from, to)} ${Math.max(from, to)}`);
  if (order.length < 2 || new Set(ways).size < ways.length) return bad('alter.cut-not-through', { piece: piece.name });
  const lines = ends.map((one) => ({
    ...one,
    points: [(nodes[one.from] as CutNode).point, ...one.via, (nodes[one.to] as CutNode).point],
  }));
  const short = lines.find(({ points }) =>
    points.some((point, i) => i > 0 && samePoint(point, points[i - 1] as Point)),
  );
  if (short) return bad('alter.cut-too-short', { piece: piece.name });
  const astray = lines.map((one) => strayingCut(piece, one.points)).find((problem) => problem !== null);
  if (astray) return { ok: false, problem: astray };
  const outline = stretches(
    ring,
    order.map((index) => (nodes[index] as CutNode).place as Place),
  );
  const arcPath = order.map((_, arc) => arcStretch(outline, arc));
  const traced = trace(nodes, order, lines, arcPath);
  return good({ ...assemble(piece, ring, nodes, lines, outline, arcPath, traced) });
};

/** A cut that leaves the piece between its ends, or runs through a dart that is not being cut open. */
const strayingCut = (piece: Piece, points: readonly Point[]): Problem | null => {
  const path = polyline(points);
  const ends = [points[0] as Point, points.at(-1) as Point];
  const crosses = (other: Path): boolean =>
    intersectPaths(path, other).some(({ point }) => ends.every((end) => distance(end, point) > tolerance.walk));
  const outline = outlineOf(piece);
  const outside = path.some(({ from, to }) => !insideOutline(outline, midpoint(from, to)));
  if (outside || piece.runs.some((run) => crosses(run.path)))
    return bad('alter.cut-leaves-piece', { piece: piece.name }).problem;
  const through = dartsOf(piece).find((dart) => dart.legs.some((leg) => crosses([line(dart.point, leg)])));
  return through ? bad('alter.cut-through-dart', { piece: piece.name, dart: through.id }).problem : null;
};

const assemble = (
  piece: Piece,
  ring: Ring,
  nodes: readonly CutNode[],
  lines: readonly Line[],
  outline: readonly Stretch[],
  arcs: readonly (readonly Stretch[])[],
  traced: Traced,
): CutPiece => {
  const { faces, faceOf, out, back } = traced;
  const face = (half: HalfEdge): number => faceOf.get(halfKey(half)) as number;
  const cuts = lines.map((one, index) => ({
    ...one,
    right: face({ kind: 'cut', cut: index, forward: true }),
    left: face({ kind: 'cut', cut: index, forward: false }),
  }));
  const parts = faces.map((border): Part => {
    const paths = border.flatMap((half) => {
      if (half.kind === 'arc') return (arcs[half.arc] ?? []).map(({ path }) => path);
      const path = polyline((lines[half.cut] as Line).points);
      return [half.forward ? path : reversePath(path)];
    });
    const owned = border.flatMap((half) => (half.kind === 'arc' ? (arcs[half.arc] ?? []) : []));
    const first = owned[0]?.of;
    const wedge =
      first?.kind === 'mouth' && owned.every(({ of }) => of.kind === 'mouth' && of.dart === first.dart)
        ? first.dart
        : null;
    return {
      outline: joinPaths(...paths),
      wedge,
      border: border.map((half) => (half.kind === 'cut' ? { cut: half.cut, forward: half.forward } : null)),
    };
  });
  const meetings = nodes.map((node, index): Meeting => {
    const ways = out[index] ?? [];
    const arc = ways.find(({ half }) => half.kind === 'arc');
    // Clockwise from the way the outline leaves; inside the piece the start does not matter.
    const start = arc ? arc.angle : 0;
    const turned = ways
      .map(({ half, angle }) => ({ half, turn: half === arc?.half ? 0 : (angle - start + 2 * tau) % tau }))
      .sort((a, b) => a.turn - b.turn);
    // On a line leaving the node, the part on its right lies clockwise of it.
    return { point: node.point, onOutline: back[index] !== null, parts: turned.map(({ half }) => face(half)) };
  });
  const fragments = outline.map(({ arc, ...stretch }): Fragment => ({ ...stretch, part: face({ kind: 'arc', arc }) }));
  return { piece, ring, fragments, cuts, meetings, parts, motions: parts.map(() => identity) };
};

export const cutNamed = (pieces: CutPiece, id: string): CutLine => {
  const found = pieces.cuts.find((one) => one.id === id);
  if (!found) throw new Error(`No cut ${id} in ${pieces.piece.id}`);
  return found;
};
