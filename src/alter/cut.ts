import {
  angleOf,
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
  pathTangentAtLength,
  polyline,
  reversePath,
  samePoint,
  splitPathAtLengths,
  subtract,
  type Transform,
  tolerance,
} from '../geometry/index.ts';
import { dartsOf, outlineOf, type Piece, type Run } from '../pattern/index.ts';
import { bad, good, type Problem, type Result } from '../units/index.ts';
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

/** A point where cuts end. `arc` counts outline nodes in ring order; -1 inside the piece. */
interface Node {
  readonly point: Point;
  readonly place: Place | null;
  readonly arc: number;
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

type HalfEdge =
  | { readonly kind: 'arc'; readonly arc: number }
  | { readonly kind: 'cut'; readonly cut: number; readonly forward: boolean };

const placeOfEnd = (piece: Piece, ring: Ring, end: CutEnd): Place | null => {
  if ('node' in end) return null;
  if ('edge' in end) {
    return placeAlongEdge(piece, ring, end.edge, end.at * (ring.edgeLengths.get(end.edge) ?? 0));
  }
  const mouth = piece.runs.findIndex((run) => run.kind === 'mouth' && run.dart === end.dart);
  if (mouth < 0) throw new Error(`Piece ${piece.id} has no dart ${end.dart}`);
  return settled(ring, { run: end.leg === 0 ? mouth : (mouth + 1) % ring.runs.length, at: 0 });
};

const sameNode = (a: Node, place: Place | null, point: Point): boolean =>
  place === null || a.place === null
    ? place === a.place && samePoint(a.point, point)
    : a.place.run === place.run && (a.place.at === place.at || samePoint(a.point, point));

/** Outline nodes numbered in ring order, inner ones after them. */
const numbered = (nodes: readonly Node[]): { readonly order: readonly number[]; readonly nodes: readonly Node[] } => {
  const outer = nodes
    .map((node, index) => ({ node, index }))
    .filter(({ node }) => node.place !== null)
    .sort((a, b) => {
      const [p, q] = [a.node.place as Place, b.node.place as Place];
      return p.run - q.run || p.at - q.at;
    });
  const arcs = new Map(outer.map(({ index }, arc) => [index, arc]));
  return {
    order: outer.map(({ index }) => index),
    nodes: nodes.map((node, index) => ({ ...node, arc: arcs.get(index) ?? -1 })),
  };
};

/** The outline cut at every node: stretches in ring order, each with the arc (between two nodes) it lies on. */
const stretches = (
  ring: Ring,
  places: readonly Place[],
): readonly (Omit<Fragment, 'part'> & { readonly arc: number })[] => {
  const made: (Omit<Fragment, 'part'> & { arc: number })[] = [];
  let passed = 0;
  ring.runs.forEach((run, index) => {
    const here = places.filter((place) => place.run === index).map((place) => place.at);
    const inside = here.filter((at) => at > 0);
    if (here.length > inside.length) passed += 1;
    const bounds = [0, ...inside, run.length];
    splitPathAtLengths(run.path, inside).forEach((path, step) => {
      const from = run.edgeStart + (bounds[step] as number);
      const to = run.edgeStart + (bounds[step + 1] as number);
      if (step > 0) passed += 1;
      made.push({ run: index, of: run.run, path, from, to, arc: (passed - 1 + places.length) % places.length });
    });
  });
  return made;
};

const tau = 2 * Math.PI;

/** How far one has to turn anticlockwise as seen from one direction to another: more than 0, at most a whole turn. */
const anticlockwise = (from: number, to: number): number => {
  const turn = (from - to) % tau;
  return turn <= 0 ? turn + tau : turn;
};

/**
 * Cuts a piece along lines into parts. Every part keeps the ordered fragments of the outline it owns, each
 * under its parent edge's name. The faces are found as in any planar subdivision (de Berg et al.,
 * Computational Geometry, ch. 2): walk with the part on the right hand, and at every node take the first
 * line anticlockwise from the one arrived on.
 *
 * Problems `alter.cut-too-short` where a cut has no length, `alter.cut-leaves-piece` and
 * `alter.cut-through-dart` where it runs where it must not. Cuts meet only at named nodes. Throws on an edge, dart or node that is not there.
 */
export const cut = (piece: Piece, plan: CutPlan): Result<CutPiece> => {
  const ring = ringOf(piece);
  const found: Node[] = [];
  const nodeOf = (end: CutEnd): number => {
    const place = placeOfEnd(piece, ring, end);
    const point = place
      ? pathPointAtLength((ring.runs[place.run] as RingRun).path, place.at)
      : plan.nodes[(end as { node: string }).node];
    if (!point) throw new Error(`The cuts of ${piece.id} meet at a point that is not named`);
    const known = found.findIndex((node) => sameNode(node, place, point));
    if (known >= 0) return known;
    found.push({ point, place, arc: -1 });
    return found.length - 1;
  };
  const ends = plan.cuts.map((one) => ({ id: one.id, from: nodeOf(one.from), to: nodeOf(one.to), via: one.via ?? [] }));
  const { order, nodes } = numbered(found);
  if (order.length < 2) throw new Error(`The cuts of ${piece.id} do not go through it`);
  const lines = ends.map((one) => ({
    ...one,
    points: [(nodes[one.from] as Node).point, ...one.via, (nodes[one.to] as Node).point],
  }));
  const short = lines.find(({ points }) =>
    points.some((point, i) => i > 0 && samePoint(point, points[i - 1] as Point)),
  );
  if (short) return bad('alter.cut-too-short', { piece: piece.name });
  const astray = lines.map((one) => strayingCut(piece, one.points)).find((problem) => problem !== null);
  if (astray) return { ok: false, problem: astray };
  const outline = stretches(
    ring,
    order.map((index) => (nodes[index] as Node).place as Place),
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

type Stretch = ReturnType<typeof stretches>[number];
type Line = { readonly id: string; readonly from: number; readonly to: number; readonly points: readonly Point[] };

/** The stretches of one arc in order of travel: the arc over the ring's start begins at the list's end. */
const arcStretch = (outline: readonly Stretch[], arc: number): readonly Stretch[] => {
  const mine = outline.map((stretch, index) => ({ stretch, index })).filter(({ stretch }) => stretch.arc === arc);
  const breakAt = mine.findIndex(({ index }, i) => i > 0 && index !== (mine[i - 1]?.index ?? 0) + 1);
  const ordered = breakAt > 0 ? [...mine.slice(breakAt), ...mine.slice(0, breakAt)] : mine;
  return ordered.map(({ stretch }) => stretch);
};

const halfKey = (half: HalfEdge): string =>
  half.kind === 'arc' ? `arc ${half.arc}` : `cut ${half.cut} ${half.forward ? 'on' : 'back'}`;

const headingOf = (points: readonly Point[], last: boolean): number => {
  const a = points[last ? points.length - 1 : 0] as Point;
  const b = points[last ? points.length - 2 : 1] as Point;
  return angleOf(subtract(b, a));
};

interface Traced {
  readonly faces: readonly (readonly HalfEdge[])[];
  readonly faceOf: ReadonlyMap<string, number>;
  /** Ways out of each node with the direction they set out in. */
  readonly out: readonly (readonly { readonly half: HalfEdge; readonly angle: number }[])[];
  /** Direction back along the arc that arrives at an outline node. */
  readonly back: readonly (number | null)[];
}

const trace = (
  nodes: readonly Node[],
  order: readonly number[],
  lines: readonly Line[],
  arcs: readonly (readonly Stretch[])[],
): Traced => {
  const out: { half: HalfEdge; angle: number }[][] = nodes.map(() => []);
  const back: (number | null)[] = nodes.map(() => null);
  order.forEach((index, arc) => {
    const leaving = arcs[arc]?.[0] as Stretch;
    const arriving = arcs[(arc + order.length - 1) % order.length]?.at(-1) as Stretch;
    out[index]?.push({ half: { kind: 'arc', arc }, angle: angleOf(pathTangentAtLength(leaving.path, 0)) });
    const end = arriving.path.at(-1);
    back[index] = angleOf(pathTangentAtLength(reversePath(end ? [end] : arriving.path), 0));
  });
  lines.forEach((one, index) => {
    out[one.from]?.push({ half: { kind: 'cut', cut: index, forward: true }, angle: headingOf(one.points, false) });
    out[one.to]?.push({ half: { kind: 'cut', cut: index, forward: false }, angle: headingOf(one.points, true) });
  });
  const next = (half: HalfEdge): HalfEdge => {
    const line = half.kind === 'cut' ? (lines[half.cut] as Line) : null;
    const at = line
      ? (half as { forward: boolean }).forward
        ? line.to
        : line.from
      : (order[((half as { arc: number }).arc + 1) % order.length] as number);
    const reverse = line ? headingOf(line.points, (half as { forward: boolean }).forward) : (back[at] as number);
    // A part never lies outside the outline, so on the outline what arrives along it is passed over.
    const ways = (out[at] ?? []).map((way) => ({ way, turn: anticlockwise(reverse, way.angle) }));
    const best = ways.reduce((a, b) => (b.turn < a.turn ? b : a));
    return best.way.half;
  };
  const faces: HalfEdge[][] = [];
  const faceOf = new Map<string, number>();
  for (const start of out.flat().map(({ half }) => half)) {
    if (faceOf.has(halfKey(start))) continue;
    const face: HalfEdge[] = [];
    let half = start;
    do {
      // Every line is followed by one other and follows one other; else the cuts lie on one another.
      if (faceOf.has(halfKey(half))) throw new Error('Two cuts leave a point in one direction');
      face.push(half);
      faceOf.set(halfKey(half), faces.length);
      half = next(half);
    } while (halfKey(half) !== halfKey(start));
    faces.push(face);
  }
  return { faces, faceOf, out, back };
};

const assemble = (
  piece: Piece,
  ring: Ring,
  nodes: readonly Node[],
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
