import {
  along,
  apart,
  endOf,
  type Line,
  lineOf,
  meeting,
  minus,
  outward,
  places,
  reflected,
  startOf,
  turn,
  unit,
  wayAt,
} from './line.ts';
import { readRuns, type Spot, type Stroke, type Strokes, strokeLength } from './path.ts';
import type { PrintedPiece } from './pieces.ts';

/** mm: offset curves may stray by 0.02 and are judged by chords. */
const within = 0.05;
/** A mitre longer than this many allowances is cut off. */
const mitreLimit = 2.5;

interface Side {
  readonly edge: PrintedPiece['edges'][number];
  readonly run: Strokes;
}

/** Runs of edges with their edge, in no order; what follows what is told by where they end. */
const sidesOf = (piece: PrintedPiece): readonly Side[] =>
  piece.edges.flatMap((edge) => readRuns(edge.path).map((run) => ({ edge, run })));

const stays = (edge: Side['edge']) => edge.finish !== 'hem';

/** Offsets at a run's end or start: the point off the corner, and the way the edge travels there. */
const off = (side: Side, end: 'start' | 'end') => {
  const stroke = (end === 'start' ? side.run[0] : side.run.at(-1)) as Stroke;
  const way = wayAt(stroke, end);
  return { way, at: along(end === 'start' ? startOf(side.run) : endOf(side.run), outward(way), side.edge.allowance) };
};

const judgeAlong = (piece: PrintedPiece, sides: readonly Side[], cut: Line): readonly string[] =>
  sides.flatMap((side) => {
    const { allowance } = side.edge;
    const clear = 3 * Math.max(...piece.edges.map((edge) => edge.allowance)) + 5;
    for (const stroke of side.run) {
      for (const { at, way } of places(stroke, Math.min(12, Math.max(2, Math.ceil(strokeLength(stroke) / 25))))) {
        if (apart(at, startOf(side.run)) < clear || apart(at, endOf(side.run)) < clear) continue;
        const far = cut.distance(along(at, outward(way), allowance));
        if (far > within) return [`${piece.id} ${side.edge.id}: the cut line is ${far} off its allowance`];
      }
    }
    return [];
  });

/** A plain corner: the offsets, carried on straight, meet in a point of the cut line unless that is too far out. */
const judgeMitre = (piece: PrintedPiece, before: Side, after: Side, cut: Line): readonly string[] => {
  const [a, b] = [off(before, 'end'), off(after, 'start')];
  const corner = endOf(before.run);
  const convex = a.way.x * b.way.y - a.way.y * b.way.x;
  if (convex < 0.05) return [];
  const point = meeting(a.at, a.way, b.at, b.way);
  // Where the lines meet short of an end, a curve's own offset meets there and not its tangent.
  const ahead = point && (point.x - a.at.x) * a.way.x + (point.y - a.at.y) * a.way.y;
  const behind = point && (b.at.x - point.x) * b.way.x + (b.at.y - point.y) * b.way.y;
  const curved = (stroke: Stroke | undefined): boolean => stroke?.points.length === 4;
  if ((curved(before.run.at(-1)) && (ahead ?? 0) < -within) || (curved(after.run[0]) && (behind ?? 0) < -within))
    return [];
  const widest = Math.max(before.edge.allowance, after.edge.allowance);
  if (!point || widest === 0 || apart(point, corner) > mitreLimit * widest - within) return [];
  const far = cut.distance(point);
  return far > within
    ? [`${piece.id}: the cut line misses the corner of ${before.edge.id} and ${after.edge.id} by ${far}`]
    : [];
};

/** A hem's corner: where the side's cut line meets the fold, and its mirror image below it. */
const judgeHem = (piece: PrintedPiece, before: Side, after: Side, cut: Line): readonly string[] => {
  const hemFirst = before.edge.finish === 'hem';
  const [hem, side] = hemFirst ? [before, after] : [after, before];
  const [h, s] = hemFirst ? [off(hem, 'end'), off(side, 'start')] : [off(hem, 'start'), off(side, 'end')];
  const corner = endOf(before.run);
  if (hem.edge.allowance === 0 || side.edge.allowance === 0) return [];
  const turned = meeting(s.at, s.way, corner, h.way);
  if (!turned || turn(h.way, s.way) < 0.5 || turn(h.way, s.way) > Math.PI - 0.5) return [];
  const far = cut.distance(turned);
  if (far > 0.5) return [`${piece.id}: at the hem's fold the cut line beside ${side.edge.id} is ${far} off`];
  // Mirrored: what lies half the turn-up above the fold lies as far below it, where the side runs straight.
  const straight = (hemFirst ? side.run[0] : side.run.at(-1)) as Stroke;
  if (straight.points.length !== 2 || strokeLength(straight) < 1.5 * hem.edge.allowance) return [];
  const up = along(turned, s.way, (hemFirst ? 0.5 : -0.5) * hem.edge.allowance);
  const image = reflected(up, corner, h.way);
  const miss = cut.distance(image);
  const reaches = Math.abs((image.x - corner.x) * h.way.y - (image.y - corner.y) * h.way.x) < 0.8 * hem.edge.allowance;
  const missed = reaches && miss > within + 0.05;
  return missed ? [`${piece.id}: the hem's turn-up is no mirror of ${side.edge.id}, ${miss} off`] : [];
};

/** Beside a dart the edge's cut line ends on the leg carried on. */
const judgeCap = (piece: PrintedPiece, dart: PrintedPiece['darts'][number], before: Side, after: Side, cut: Line) => {
  const [a, b] = [off(before, 'end'), off(after, 'start')];
  const found = [
    meeting(a.at, a.way, dart.point, unit(minus(endOf(before.run), dart.point))),
    meeting(b.at, b.way, dart.point, unit(minus(startOf(after.run), dart.point))),
  ].map((point) => (point ? cut.distance(point) : 0));
  const worst = Math.max(...found);
  return worst > 0.5 ? [`${piece.id}: the cap of dart ${dart.id} misses its legs by ${worst}`] : [];
};

/** Complaints about a piece's cut line: along every edge, at every corner, over every dart; and none of it within the seam line. */
export const judgeCutLine = (piece: PrintedPiece): readonly string[] => {
  const cut = lineOf(readRuns(piece.cut));
  const seam = lineOf(readRuns(piece.outline));
  const sides = sidesOf(piece);
  const found: string[] = [...judgeAlong(piece, sides, cut)];
  const starts = (at: Spot): Side | undefined => sides.find((side) => apart(startOf(side.run), at) < 0.01);
  for (const before of sides) {
    const corner = endOf(before.run);
    const dart = piece.darts.find(({ legs }) => legs.some((leg) => apart(leg, corner) < 0.01));
    const mouth = dart?.legs.find((leg) => apart(leg, corner) >= 0.01);
    const after = starts(corner);
    if (after && after !== before) {
      const plain =
        stays(before.edge) === stays(after.edge) ||
        [before, after].some(({ edge }) => edge.finish === 'fold' || edge.finish === 'raw');
      found.push(...(plain ? judgeMitre : judgeHem)(piece, before, after, cut));
    } else if (dart && mouth) {
      const next = starts(mouth);
      if (next) found.push(...judgeCap(piece, dart, before, next, cut));
    } else if (!after) found.push(`${piece.id}: nothing follows ${before.edge.id}`);
  }
  for (const spot of cut.spots) {
    if (!seam.holds(spot)) continue;
    const deep = seam.distance(spot);
    if (deep > within) {
      found.push(`${piece.id}: the cut line lies ${deep} within the seam line`);
      break;
    }
  }
  return found;
};
