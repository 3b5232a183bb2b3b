import {
  add,
  fairCurve,
  joinPaths,
  type Path,
  type Point,
  pathLength,
  pathPointAtLength,
  pathTangentAtLength,
  scale,
  splitPathAtLength,
  subPath,
  tolerance,
} from '../../geometry/index.ts';
import { edgeRuns } from '../../pattern/index.ts';
import { levelLines } from '../level-lines.ts';
import { reshape } from '../reshape.ts';
import { pieceNow, type Work, withPiece } from '../work.ts';
import type { Sleeve } from './anatomy.ts';
import { axisOf } from './quarters.ts';

/** How far on each side of the opening the cap is drawn anew, as a share of the cap on that side. */
const redrawnShare = 0.4;

/** The cap as it lies opened: its line, and where along it the gap begins and ends, mm. */
export interface Opened {
  readonly whole: Path;
  readonly gap: readonly [number, number];
  /** Lengths of its edges before it was opened, from left to right. */
  readonly before: readonly number[];
}

export const openedCap = (work: Work, sleeve: Sleeve): Opened | null => {
  const runs = sleeve.cap.map((edge) => edgeRuns(pieceNow(work, sleeve.piece.id), edge));
  if (runs.some(({ length }) => length !== 1)) return null;
  const whole = joinPaths(...runs.map(([path]) => path as Path));
  const before = sleeve.cap.map((edge) => work.tape.edge(sleeve.piece, edge));
  const at = sleeve.cap.indexOf(sleeve.topEnd.edge);
  const left = sum(before.slice(0, at)) + sleeve.topEnd.at * (before[at] as number);
  return { whole, gap: [left, pathLength(whole) - (sum(before) - left)], before };
};

export const sum = (lengths: readonly number[]): number => lengths.reduce((total, one) => total + one, 0);

/** Everything of a raised cap but how high: what is kept on both sides, and how the two curves over the crown begin and end. */
const frame = ({ whole, gap: [from, to] }: Opened, axis: Point) => {
  const length = pathLength(whole);
  const [low, high] = [from * (1 - redrawnShare), to + (length - to) * redrawnShare];
  const middle = pathPointAtLength(whole, (from + to) / 2);
  const [start, end] = [pathPointAtLength(whole, low), pathPointAtLength(whole, high)];
  const [leaving, arriving] = [pathTangentAtLength(whole, low, 'before'), pathTangentAtLength(whole, high, 'after')];
  // The cap is walked clockwise as seen: over its crown to the right of what points down.
  const across: Point = { x: axis.y, y: -axis.x };
  const curves = (by: number): readonly [Path, Path] => {
    const crown = add(middle, scale(axis, -by));
    return [[fairCurve(start, leaving, crown, across)], [fairCurve(crown, across, end, arriving)]];
  };
  return { whole, length, low, high, curves };
};

/** The cap drawn anew over the gap and raised in its middle: its line, and how far along it the crown lies. */
export const raised = (opened: Opened, axis: Point, by: number): { readonly line: Path; readonly crown: number } => {
  const { whole, length, low, high, curves } = frame(opened, axis);
  const [left, right] = curves(by);
  const line = joinPaths(subPath(whole, 0, low), left, right, subPath(whole, high, length));
  return { line, crown: low + pathLength(left) };
};

/** The new cap divided into its edges: those left of the gap as far from its start as before, those right as far from its end, one that met it at the crown. */
export const divided = (
  sleeve: Sleeve,
  { before, gap: [from] }: Opened,
  line: Path,
  crown: number,
): Readonly<Record<string, readonly Path[]>> | null => {
  const grew = pathLength(line) - sum(before);
  const ends = before.slice(0, -1).map((_, i) => {
    const was = sum(before.slice(0, i + 1));
    if (Math.abs(was - from) < 1) return crown;
    return was < from ? was : was + grew;
  });
  const edges: Record<string, readonly Path[]> = {};
  let [rest, passed]: [Path, number] = [line, 0];
  for (const [i, edge] of sleeve.cap.entries()) {
    const end = ends[i];
    const [head, tail] = end === undefined ? [rest, null] : splitPathAtLength(rest, end - passed);
    if (!head || (end !== undefined && !tail)) return null;
    edges[edge] = [head];
    if (tail && end !== undefined) [rest, passed] = [tail, end];
  }
  return edges;
};

/** The work with the cap drawn so, its top marked, lines to lengthen at level and the grain as it was. */
export const withCap = (
  work: Work,
  { piece: before }: Sleeve,
  edges: Readonly<Record<string, readonly Path[]>>,
  top: Point,
): Work => {
  const untrued = work.worked.get(before.id)?.untrued ?? before;
  // What a crown is raised by is cloth put in, and told as such.
  const { piece, puts } = reshape(pieceNow(work, before.id), edges);
  const drawn = levelLines(before, {
    ...piece,
    grain: before.grain,
    landmarks: piece.landmarks.map((mark) => (mark.id === 'cap-top' ? { ...mark, at: top } : mark)),
  });
  return withPiece(work, { piece: drawn, untrued, puts, cuts: [] });
};

/** How far up and down, mm, a crown is looked for that leaves the cap as long as it was. */
const crownWithin = [-30, 60] as const;

/**
 * The cap of a sleeve whose halves turned about its top drawn fair over it again and every edge as long as before: the
 * crown is raised by what that takes, found by halving, as a cutter gives back at the top what the cap fell.
 */
export const capKept = (work: Work, sleeve: Sleeve): Work => {
  const opened = openedCap(work, sleeve);
  if (!opened) return work;
  const axis = axisOf(sleeve);
  const { low: kept, high, length, curves } = frame(opened, axis);
  const wanted = sum(opened.before) - kept - (length - high);
  const over = (by: number): number => {
    const [left, right] = curves(by);
    return pathLength(left) + pathLength(right) - wanted;
  };
  // Below the chord the line would grow longer again: only the upper of two such crowns is a cap.
  const lowest = lowestCrown(over, ...crownWithin);
  // Where even the flattest cap is too long it is drawn all the same: its length is then found not to hold.
  const crown = rootAbove(over, lowest, crownWithin[1]) ?? lowest;
  const { line } = raised(opened, axis, crown);
  const edges = splitAt(sleeve, opened.before, line);
  return edges ? withCap(work, sleeve, edges, pathPointAtLength(line, opened.gap[0])) : work;
};

/** Where the line over the crown is shortest, by golden section. */
const lowestCrown = (length: (by: number) => number, from: number, to: number): number => {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [from, to];
  for (let i = 0; i < 10; i += 1) {
    const [a, b] = [high - golden * (high - low), low + golden * (high - low)];
    if (length(a) < length(b)) high = b;
    else low = a;
  }
  return (low + high) / 2;
};

/** Where a rising function passes nothing, by regula falsi (the Illinois way); null where it does not between the two. */
const rootAbove = (value: (x: number) => number, from: number, to: number): number | null => {
  let [a, b] = [from, to];
  let [atA, atB] = [value(a), value(b)];
  if (atA > 0 || atB < 0) return null;
  for (let i = 0; i < 30 && b - a > tolerance.same; i += 1) {
    const x = (a * atB - b * atA) / (atB - atA);
    const at = value(x);
    if (Math.abs(at) <= tolerance.same) return x;
    if (at > 0) [b, atB, atA] = [x, at, atA / 2];
    else [a, atA, atB] = [x, at, atB / 2];
  }
  return (a + b) / 2;
};

/** A cap's line divided into edges of given lengths, the last taking the rest. */
const splitAt = (
  sleeve: Sleeve,
  lengths: readonly number[],
  line: Path,
): Readonly<Record<string, readonly Path[]>> | null => {
  const edges: Record<string, readonly Path[]> = {};
  let rest: Path = line;
  for (const [i, edge] of sleeve.cap.entries()) {
    if (i === sleeve.cap.length - 1) {
      edges[edge] = [rest];
      break;
    }
    const [head, tail] = splitPathAtLength(rest, lengths[i] as number);
    if (!head || !tail) return null;
    edges[edge] = [head];
    rest = tail;
  }
  return edges;
};
