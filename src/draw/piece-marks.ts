import {
  add,
  distance,
  intersectPaths,
  lerp,
  line,
  normalize,
  type Path,
  type Point,
  pathEnd,
  pathStart,
  perpendicular,
  scale,
  subtract,
  tolerance,
} from '../geometry/index.ts';
import {
  type DartShape,
  dartsOf,
  edgeOf,
  edgeRuns,
  type Level,
  type Notch,
  notchPlace,
  type Piece,
  tangentOnEdge,
} from '../pattern/index.ts';
import { arrowHead, circle, filledMark, pathMark, stroke } from './marks.ts';
import type { PathMark } from './types.ts';

/** Between the two strokes of a double notch, and how long a stroke is where there is no allowance to cross, mm. */
const betweenStrokes = 4;
const bareStroke = 6;

/** Strokes on the edge across the allowance, from the seam line to the cut line; into the piece where there is no allowance. */
export const notchMark = (piece: Piece, notch: Notch): PathMark => {
  const { point, outward } = notchPlace(piece, notch);
  const along = tangentOnEdge(piece, notch.edge, notch.at);
  const { allowance } = edgeOf(piece, notch.edge);
  const reach = allowance > 0 ? scale(outward, allowance) : scale(outward, -bareStroke);
  const starts = notch.strokes === 1 ? [0] : [-betweenStrokes / 2, betweenStrokes / 2];
  return pathMark(
    'marks',
    'mark',
    ...starts.map((aside) => {
      const from = add(point, scale(along, aside));
      return stroke(from, add(from, reach));
    }),
  );
};

/** Legs from the edge to the point, the line it folds on with an arrow to the side it is pressed to, and the point ringed. */
export const dartMarks = (piece: Piece): readonly PathMark[] => dartsOf(piece).flatMap(oneDart);

const oneDart = (dart: DartShape): PathMark[] => {
  const [before, after] = dart.legs;
  const middle = lerp(before, after, 0.5);
  const fold = subtract(dart.point, middle);
  const marks = [
    pathMark('marks', 'mark', stroke(before, dart.point), stroke(dart.point, after)),
    // Not up to the point, where three lines would run into one.
    pathMark('marks', 'fold', stroke(middle, add(middle, scale(fold, 0.7)))),
    pathMark('marks', 'mark', circle(dart.point, 1.5)),
  ];
  // Where the wedge is folded to, told by a small arrow from the fold to the leg it comes to lie on.
  const towards = dart.pressed === 'before' ? before : after;
  const from = add(middle, scale(fold, 0.22));
  const tip = add(from, scale(subtract(towards, middle), 0.7));
  const head = Math.min(4, distance(from, tip) / 2);
  return [
    ...marks,
    pathMark('marks', 'mark', stroke(from, tip)),
    filledMark('marks', 'mark', arrowHead(tip, subtract(tip, from), head)),
  ];
};

/** A dart's legs carried on through the allowance, where they are snipped: that is how they are found on the cloth. */
export const snipMarks = (piece: Piece, cut: Path): readonly PathMark[] =>
  dartsOf(piece).flatMap((dart) => {
    const reach = 4 * Math.max(0, ...piece.edges.map(({ allowance }) => allowance));
    const snips = dart.legs.flatMap((leg) => {
      const beyond = add(leg, scale(normalize(subtract(leg, dart.point)), reach));
      const [first] = intersectPaths(stroke(leg, beyond), cut);
      return first && first.lengthA > tolerance.walk ? [stroke(leg, first.point)] : [];
    });
    return snips.length === 0 ? [] : [pathMark('marks', 'mark', ...snips)];
  });

/** A line along the warp with a head at each end. */
export const grainMarks = (piece: Piece): readonly PathMark[] => {
  const { from, to } = piece.grain;
  const along = subtract(to, from);
  const head = Math.min(7, distance(from, to) / 7);
  return [
    pathMark('marks', 'grain', stroke(from, to)),
    filledMark('marks', 'grain', arrowHead(to, along, head), arrowHead(from, scale(along, -1), head)),
  ];
};

/** How far inside the edge the bracket's back lies, mm. */
const bracketDepth = 14;

/** The bracket of each edge on the fold: a chain line inside it whose ends turn and point at the fold. */
export const foldMarks = (piece: Piece): readonly PathMark[] => {
  const folds = piece.edges.filter((edge) => edge.finish === 'fold').flatMap((edge) => edgeRuns(piece, edge.id));
  return folds.flatMap((run) => {
    const [from, to, inward] = bracketOf(run);
    const [cornerA, cornerB] = [add(from, inward), add(to, inward)];
    const back: Path = [line(from, cornerA), line(cornerA, cornerB), line(cornerB, to)];
    const out = scale(inward, -1);
    return [
      pathMark('marks', 'fold', back),
      filledMark('marks', 'mark', arrowHead(from, out, 5), arrowHead(to, out, 5)),
    ];
  });
};

/** Where along a fold its bracket stands, and the vector from the fold to its back. */
export const bracketOf = (run: Path): readonly [Point, Point, Point] => {
  const [start, end] = [pathStart(run), pathEnd(run)];
  const inward = scale(
    perpendicular(normalize(subtract(end, start))),
    -Math.min(bracketDepth, distance(start, end) / 4),
  );
  return [lerp(start, end, 0.15), lerp(start, end, 0.85), inward];
};

/**
 * The stretch of a level that is drawn. Once the side has been swung a level bends at the bust point and runs on beside the
 * dart, where it would be taken for a third leg: then it is drawn from the centre, where it is level, to the bend.
 */
export const levelStretch = ({ from, to, over }: Level): readonly [Point, Point] => {
  if (!over) return [from, to];
  const slope = (end: Point): number => Math.abs(end.y - over.y) / Math.max(distance(end, over), tolerance.same);
  return slope(from) <= slope(to) ? [from, over] : [over, to];
};

export const levelMarks = (piece: Piece): readonly PathMark[] =>
  piece.levels.map((level) => pathMark('marks', 'level', stroke(...levelStretch(level))));

/** How far each of the two strokes of a double line lies from the line itself, mm. */
export const doubledAside = 2.5;

/** Inner lines; a lengthen-or-shorten line is double, as the trade draws it. */
export const innerMarks = (piece: Piece): readonly PathMark[] =>
  piece.lines.map((inner) => {
    if (inner.kind === 'fold') return pathMark('marks', 'fold', inner.path);
    if (inner.kind !== 'lengthen-or-shorten') return pathMark('marks', 'mark', inner.path);
    const aside = scale(perpendicular(normalize(subtract(pathEnd(inner.path), pathStart(inner.path)))), doubledAside);
    return pathMark(
      'marks',
      'mark',
      ...[aside, scale(aside, -1)].map((by) => stroke(add(pathStart(inner.path), by), add(pathEnd(inner.path), by))),
    );
  });

/** A cross in a ring at the bust point. */
export const bustPointMarks = (piece: Piece): readonly PathMark[] =>
  piece.landmarks
    .filter((landmark) => landmark.id === 'bust-point' || landmark.id === 'bust-point-left')
    .map(({ at }) =>
      pathMark(
        'marks',
        'mark',
        circle(at, 4),
        stroke({ x: at.x - 6, y: at.y }, { x: at.x + 6, y: at.y }),
        stroke({ x: at.x, y: at.y - 6 }, { x: at.x, y: at.y + 6 }),
      ),
    );
