import {
  add,
  angleOf,
  applyToPath,
  cross,
  distance,
  dot,
  extendPath,
  intersectPaths,
  line,
  normalize,
  type Outline,
  offsetPath,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathStart,
  pathTangentAtLength,
  reflection,
  reversePath,
  scale,
  subPath,
  subtract,
  tolerance,
} from '../geometry/index.ts';
import { type DartShape, dartOf } from './dart.ts';
import { edgeOf } from './piece.ts';
import type { Finish, Piece, Run } from './types.ts';

/** A mitre longer than this many times the wider allowance is cut off square: long points only get in the way. */
const mitreLimit = 2.5;

/** One edge run with its cut line before corners are made: offset outward, not yet joined to its neighbours. */
interface Offset {
  readonly run: Path;
  readonly path: Path;
  readonly allowance: number;
  readonly finish: Finish;
}

const offsetOf = (piece: Piece, run: Run & { readonly kind: 'edge' }): Offset => {
  const { allowance, finish } = edgeOf(piece, run.edge);
  return { run: run.path, path: allowance === 0 ? run.path : offsetPath(run.path, allowance), allowance, finish };
};

const endTangent = (path: Path): Point => pathTangentAtLength(path, pathLength(path));
const startTangent = (path: Path): Point => pathTangentAtLength(path, 0);

/** Crossing of two paths nearest to a corner, with its place along each; null where they do not cross. */
const crossingNear = (first: Path, second: Path, corner: Point) =>
  intersectPaths(first, second).reduce<{ lengthA: number; lengthB: number; point: Point } | null>(
    (best, one) => (best === null || distance(one.point, corner) < distance(best.point, corner) ? one : best),
    null,
  );

/** What the two sides of a corner become, and what is drawn between them. */
interface Corner {
  readonly before: Path;
  readonly between: Path | null;
  readonly after: Path;
}

/** A straight between two points; none where they are one but for the crossings' rounding, which `joinAll` closes. */
const connect = (from: Point, to: Point): Path | null =>
  distance(from, to) <= tolerance.walk ? null : [line(from, to)];

const mitred = (before: Offset, after: Offset): Corner => {
  const corner = pathEnd(before.run);
  const widest = Math.max(before.allowance, after.allowance);
  const reach = mitreLimit * widest + tolerance.holds;
  const long = extendPath(before.path, 'end', reach);
  const longAfter = extendPath(after.path, 'start', reach);
  const meeting = crossingNear(long, longAfter, corner);
  if (meeting && distance(meeting.point, corner) <= mitreLimit * widest + tolerance.same) {
    return {
      before: subPath(long, 0, meeting.lengthA),
      between: null,
      after: subPath(longAfter, meeting.lengthB, pathLength(longAfter)),
    };
  }
  return { before: before.path, between: cutOff(before, after, corner, widest), after: after.path };
};

/** The bevel that replaces a point too long to keep, square to the corner's bisector at the limit; a plain step where the edges run on. */
const cutOff = (before: Offset, after: Offset, corner: Point, widest: number): Path | null => {
  const from = pathEnd(before.path);
  const to = pathStart(after.path);
  const out = subtract(endTangent(before.run), startTangent(after.run));
  if (Math.hypot(out.x, out.y) < 0.5 || widest === 0) return connect(from, to);
  const axis = normalize(out);
  const limit = add(corner, scale(axis, widest * mitreLimit * 0.8));
  const across = { x: -axis.y, y: axis.x };
  const bevel: Path = [line(add(limit, scale(across, -10 * widest)), add(limit, scale(across, 10 * widest)))];
  const first = crossingNear([line(from, add(from, scale(endTangent(before.path), 10 * widest)))], bevel, corner);
  const second = crossingNear([line(to, add(to, scale(startTangent(after.path), -10 * widest)))], bevel, corner);
  if (!first || !second) return connect(from, to);
  return [line(from, first.point), line(first.point, second.point), line(second.point, to)].filter(
    (piece) => distance(piece.from, piece.to) > tolerance.walk,
  );
};

/**
 * The corner of a hem: turned up, the allowance must lie on the piece, so beside the hem the side's cut line is
 * mirrored at the fold. `side` is the seam edge, `hem` the hem; `hemFirst` tells which comes first in outline order.
 */
const hemmed = (before: Offset, after: Offset, hemFirst: boolean): Corner => {
  const corner = pathEnd(before.run);
  const hem = hemFirst ? before : after;
  const side = hemFirst ? after : before;
  const fold = hemFirst ? endTangent(hem.run) : startTangent(hem.run);
  const foldLine: Path = [
    line(add(corner, scale(fold, -4 * side.allowance - 40)), add(corner, scale(fold, 4 * side.allowance + 40))),
  ];
  const reach = side.allowance * 4 + 40;
  const longSide = extendPath(side.path, hemFirst ? 'start' : 'end', reach);
  const turn = crossingNear(longSide, foldLine, corner);
  if (!turn) return mitred(before, after);
  const keptSide = hemFirst
    ? subPath(longSide, turn.lengthA, pathLength(longSide))
    : subPath(longSide, 0, turn.lengthA);
  // The allowance is mirrored over its own depth only: follow the side's cut line inward that far and reflect it.
  const strip = mirroredStrip(keptSide, hemFirst, hem.allowance, corner, fold);
  const longHem = extendPath(hem.path, hemFirst ? 'end' : 'start', reach + hem.allowance);
  const foot = crossingNear(strip, longHem, pathEnd(strip));
  if (!foot) return mitred(before, after);
  const edge = subPath(strip, 0, foot.lengthA);
  return hemFirst
    ? { before: subPath(longHem, 0, foot.lengthB), between: reversePath(edge), after: keptSide }
    : { before: keptSide, between: edge, after: subPath(longHem, foot.lengthB, pathLength(longHem)) };
};

/** The side's cut line above the fold, reflected below it, from the fold outward, and carried on straight far enough to cross the hem's edge. */
const mirroredStrip = (side: Path, hemFirst: boolean, depth: number, corner: Point, fold: Point): Path => {
  const reach = Math.min(pathLength(side), depth * 1.2);
  const near = hemFirst
    ? subPath(side, 0, reach)
    : reversePath(subPath(side, pathLength(side) - reach, pathLength(side)));
  const mirrored = applyToPath(reflection(corner, angleOf(fold)), near);
  return extendPath(mirrored, 'end', depth * 2);
};

const cornerOf = (before: Offset, after: Offset): Corner => {
  if (before.finish === 'hem' && after.finish === 'seam' && before.allowance > 0) return hemmed(before, after, true);
  if (after.finish === 'hem' && before.finish === 'seam' && after.allowance > 0) return hemmed(before, after, false);
  return mitred(before, after);
};

/**
 * The cap over a dart's mouth: the cloth that lies under the pressed dart follows the edge it is pressed on to.
 * Its half next to that edge is the edge's own cut line reflected in the leg, the other half that again
 * reflected in the dart's fold, so that all three layers end together when the dart is stitched and pressed.
 */
const dartCap = (before: Offset, dart: DartShape, after: Offset): Corner => {
  const towardsAfter = dart.pressed === 'after';
  const [legBefore, legAfter] = dart.legs;
  const reach = 4 * Math.max(before.allowance, after.allowance) + dart.intake;
  const ray = (leg: Point): Path => [line(dart.point, add(leg, scale(normalize(subtract(leg, dart.point)), reach)))];
  const longBefore = extendPath(before.path, 'end', reach);
  const longAfter = extendPath(after.path, 'start', reach);
  const cutBefore = crossingNear(longBefore, ray(legBefore), legBefore);
  const cutAfter = crossingNear(longAfter, ray(legAfter), legAfter);
  if (!cutBefore || !cutAfter) return mitred(before, after);
  const keptBefore = subPath(longBefore, 0, cutBefore.lengthA);
  const keptAfter = subPath(longAfter, cutAfter.lengthA, pathLength(longAfter));
  const under = towardsAfter ? keptAfter : reversePath(keptBefore);
  const leg = towardsAfter ? legAfter : legBefore;
  const other = towardsAfter ? legBefore : legAfter;
  const legAngle = angleOf(subtract(leg, dart.point));
  const spread = Math.atan2(
    cross(subtract(leg, dart.point), subtract(other, dart.point)),
    dot(subtract(leg, dart.point), subtract(other, dart.point)),
  );
  // Pressed, the dart's fold lies half its angle beyond the leg, over the piece.
  const foldOnPiece = legAngle - spread / 2;
  const far = distance(dart.point, leg) + reach;
  const foldRay: Path = [
    line(dart.point, add(dart.point, { x: far * Math.cos(foldOnPiece), y: far * Math.sin(foldOnPiece) })),
  ];
  const tip = crossingNear(under, foldRay, leg);
  if (!tip)
    return { before: keptBefore, between: connect(pathEnd(keptBefore), pathStart(keptAfter)), after: keptAfter };
  const lying = subPath(under, 0, tip.lengthA);
  const nearHalf = applyToPath(reflection(dart.point, legAngle), lying);
  const farHalf = applyToPath(reflection(dart.point, legAngle + spread / 2), nearHalf);
  const cap = joinAll([farHalf, reversePath(nearHalf)]);
  const between = towardsAfter ? cap : reversePath(cap);
  const lead = connect(pathEnd(keptBefore), pathStart(between));
  const trail = connect(pathEnd(between), pathStart(keptAfter));
  return { before: keptBefore, between: joinAll([lead, between, trail]), after: keptAfter };
};

/** Crossings are found to rounding, so parts may miss one another by a hair: they are made to meet; a real gap is drawn straight. */
const joinAll = (paths: readonly (Path | null)[]): Path => {
  const whole: Path[number][] = [];
  for (const path of paths) {
    if (path === null) continue;
    const [first, ...rest] = path;
    const end = whole[whole.length - 1]?.to;
    if (!first) continue;
    const apart = end ? distance(end, first.from) : 0;
    if (end && apart > tolerance.walk) whole.push(line(end, first.from));
    whole.push(end && apart <= tolerance.walk ? { ...first, from: end } : first, ...rest);
  }
  return whole;
};

/** Keeps of `own` what both corners leave: `fromStart` is what the corner before it made, `fromEnd` the one after. */
const between = (own: Path, fromStart: Path, fromEnd: Path): Path => {
  const startGain = pathLength(fromStart) - pathLength(own);
  const endGain = pathLength(fromEnd) - pathLength(own);
  const atStart = extendPath(own, 'start', Math.max(startGain, 0));
  const both = extendPath(atStart, 'end', Math.max(endGain, 0));
  const skip = Math.max(-startGain, 0);
  return subPath(both, skip, pathLength(both) - Math.max(-endGain, 0));
};

/**
 * The cut line: the seam line moved out by each edge's allowance, corners as the pressed allowance needs them —
 * mitred and cut off at a limit, mirrored at hems, capped at darts. Derived, never stored. Curves are offset as
 * curves, within tolerance.offset. Closed, clockwise as seen.
 */
export const cutLine = (piece: Piece): Outline => {
  const offsets: Offset[] = [];
  const mouths: (DartShape | null)[] = [];
  const count = piece.runs.length;
  const firstEdge = piece.runs.findIndex((run) => run.kind === 'edge');
  for (let step = 0; step < count; step += 1) {
    const run = piece.runs[(firstEdge + step) % count] as Run;
    if (run.kind === 'mouth') mouths[offsets.length - 1] = dartOf(piece, run.dart);
    else {
      offsets.push(offsetOf(piece, run));
      mouths.push(null);
    }
  }
  const made = offsets.map((before, index) => {
    const after = offsets[(index + 1) % offsets.length] as Offset;
    const dart = mouths[index];
    return dart ? dartCap(before, dart, after) : cornerOf(before, after);
  });
  const parts: (Path | null)[] = offsets.flatMap((offset, index) => {
    const cornerBefore = made[(index + made.length - 1) % made.length] as Corner;
    const cornerAfter = made[index] as Corner;
    return [between(offset.path, cornerBefore.after, cornerAfter.before), cornerAfter.between];
  });
  return closed(joinAll(parts));
};

/** Rounding may leave the last point a hair from the first: they are one point. */
const closed = (path: Path): Outline => {
  const start = pathStart(path);
  const last = path[path.length - 1] as Path[number];
  return [...path.slice(0, -1), { ...last, to: start }];
};
