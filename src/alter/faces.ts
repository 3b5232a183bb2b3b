import {
  angleOf,
  type Path,
  type Point,
  pathTangentAtLength,
  reversePath,
  splitPathAtLengths,
  subtract,
} from '../geometry/index.ts';
import type { Run } from '../pattern/index.ts';
import type { Place, Ring } from './ring.ts';

/** A point where cuts end: a place on the outline, or (null) a point inside the piece. */
export interface CutNode {
  readonly point: Point;
  readonly place: Place | null;
}

/** A stretch of the outline between two nodes, in its run; `arc` counts the nodes it lies between, in ring order. */
export interface Stretch {
  readonly run: number;
  readonly of: Run;
  readonly path: Path;
  readonly from: number;
  readonly to: number;
  readonly arc: number;
}

/** A cut between two nodes. */
export interface Line {
  readonly id: string;
  readonly from: number;
  readonly to: number;
  readonly points: readonly Point[];
}

/** A line of the subdivision walked one way: an arc of the outline as it runs, or a cut forward or back. */
export type HalfEdge =
  | { readonly kind: 'arc'; readonly arc: number }
  | { readonly kind: 'cut'; readonly cut: number; readonly forward: boolean };

/** The outline cut at every node: stretches in ring order, each with the arc (between two nodes) it lies on. */
export const stretches = (ring: Ring, places: readonly Place[]): readonly Stretch[] => {
  const made: Stretch[] = [];
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

export const tau = 2 * Math.PI;

/** How far one has to turn anticlockwise as seen from one direction to another: more than 0, at most a whole turn. */
const anticlockwise = (from: number, to: number): number => {
  const turn = (from - to) % tau;
  return turn <= 0 ? turn + tau : turn;
};

/** The stretches of one arc in order of travel: the arc over the ring's start begins at the list's end. */
export const arcStretch = (outline: readonly Stretch[], arc: number): readonly Stretch[] => {
  const mine = outline.map((stretch, index) => ({ stretch, index })).filter(({ stretch }) => stretch.arc === arc);
  const breakAt = mine.findIndex(({ index }, i) => i > 0 && index !== (mine[i - 1]?.index ?? 0) + 1);
  const ordered = breakAt > 0 ? [...mine.slice(breakAt), ...mine.slice(0, breakAt)] : mine;
  return ordered.map(({ stretch }) => stretch);
};

export const halfKey = (half: HalfEdge): string =>
  half.kind === 'arc' ? `arc ${half.arc}` : `cut ${half.cut} ${half.forward ? 'on' : 'back'}`;

const headingOf = (points: readonly Point[], last: boolean): number => {
  const a = points[last ? points.length - 1 : 0] as Point;
  const b = points[last ? points.length - 2 : 1] as Point;
  return angleOf(subtract(b, a));
};

export interface Traced {
  readonly faces: readonly (readonly HalfEdge[])[];
  readonly faceOf: ReadonlyMap<string, number>;
  /** Ways out of each node with the direction they set out in. */
  readonly out: readonly (readonly { readonly half: HalfEdge; readonly angle: number }[])[];
  /** Direction back along the arc that arrives at an outline node. */
  readonly back: readonly (number | null)[];
}

export const trace = (
  nodes: readonly CutNode[],
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
