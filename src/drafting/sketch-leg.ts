import {
  distance,
  flattenPath,
  type Path,
  type Point,
  pathBounds,
  polyline,
  splitPathAtLength,
  tolerance,
} from '../geometry/index.ts';
import { edgeLength, type Garment, pieceOf } from '../pattern/index.ts';
import { landmarkIn, runOf } from './shape-garment.ts';
import type { SketchLine, SketchShape } from './sketch.ts';

type Half = 'front' | 'back';

/** Between the legs at knee and hem, half of it, mm: they hang a little apart. */
const apart = { knee: 20, hem: 36 } as const;

/** A wide leg hangs in folds: its side stands out no further than this share of the hip. */
const fullest = 1.07;

/** How many stretches the waist is drawn in. */
const waistPoints = 24;

/** Every how many mm of height a line of the sketch bends. */
const step = 6;

const between = (from: number, to: number, share: number): number =>
  from + (to - from) * Math.min(Math.max(share, 0), 1);

/** A smooth beginning and end of what goes from 0 to 1. */
const eased = (share: number): number => {
  const t = Math.min(Math.max(share, 0), 1);
  return t * t * (3 - 2 * t);
};

/** Where a path that falls all the way passes a height. */
const crossing = (points: readonly Point[], y: number): number => {
  const next = points.findIndex((point) => point.y >= y);
  if (next <= 0) return (next === 0 ? points[0] : points.at(-1))?.x ?? 0;
  const [a, b] = [points[next - 1] as Point, points[next] as Point];
  return a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y);
};

export interface HungLeg {
  /** Where a point of the piece comes to lie. */
  readonly place: (at: Point) => Point;
  readonly waist: readonly Point[];
  readonly outline: Path;
  readonly crotch: Point;
  readonly shape: (lines: readonly SketchLine[]) => SketchShape;
}

/** Half the width at which hip and waist lie flat, and the width of a hem, mm: front and back lie on one another, so it is the same for both. */
export interface LiesAcross {
  readonly hip: number;
  readonly waist: number;
  readonly hem: number;
}

/**
 * One leg as it hangs flat, centre at x = 0: its fork lies folded under, so that the inside leg begins at the centre;
 * legs hang a little apart; above the hip each height moves until the centre or seat seam is upright, and takes the width
 * at which front and back lie on one another.
 */
export const hangLeg = (garment: Garment, half: Half, lies: LiesAcross): HungLeg => {
  const flat = (edge: string): readonly Point[] => flattenPath(runOf(garment, half, edge), tolerance.flatten);
  const hip = landmarkIn(garment, half, 'hip-centre');
  const top = landmarkIn(garment, half, 'centre-waist');
  const crotch = landmarkIn(garment, half, 'crotch-point');
  const inside = flat('inside-leg').toReversed();
  const side = [...flat('side-upper'), ...flat('side').slice(1)];
  const topSide = side[0] as Point;
  const hem = inside.at(-1) as Point;
  // A leg that ends above the knee hangs from its hem.
  const knee = pieceOf(garment, half).landmarks.find(({ id }) => id === 'knee-inside')?.at ?? hem;
  const shift = (y: number): number => {
    if (y <= hip.y) return (-top.x * (hip.y - y)) / (hip.y - top.y);
    const [atKnee, atHem] = [apart.knee - knee.x, apart.hem - hem.x];
    const below = Math.max(hem.y - knee.y, 1);
    if (y > knee.y) return between(atKnee, atHem, (y - knee.y) / below);
    // Comes to the knee in the slope in which it goes on, so that a leg's line has no corner there.
    const t = (y - hip.y) / (knee.y - hip.y);
    return atKnee * eased(t) + ((atHem - atKnee) / below) * (knee.y - hip.y) * t * t * (t - 1);
  };
  const across = { hip: landmarkIn(garment, half, 'hip-side').x - hip.x, waist: topSide.x - top.x };
  const own = distance(hem, side.at(-1) as Point);
  const kneeWidth = crossing(side, knee.y) - knee.x;
  const flatSide = ((kneeWidth + apart.knee) * lies.hem) / own;
  const scaled = {
    hip: lies.hip / across.hip,
    waist: lies.waist / across.waist,
    leg: (lies.hem / own) * Math.min(1, (fullest * lies.hip) / flatSide),
  };
  const share = (y: number): number =>
    y <= hip.y
      ? between(scaled.hip, scaled.waist, (hip.y - y) / (hip.y - topSide.y))
      : between(scaled.hip, scaled.leg, eased((y - hip.y) / (knee.y - hip.y)));
  const place = ({ x, y }: Point): Point => ({ x: (x + shift(y)) * share(y), y });
  const centreTop = place(top);
  const sideTop = place(topSide);
  // Level at the centre, where both halves run on into one another.
  const waist = Array.from({ length: waistPoints + 1 }, (_, i): Point => {
    const share = i / waistPoints;
    return { x: share * sideTop.x, y: centreTop.y + (sideTop.y - centreTop.y) * share ** 2 };
  });
  const heights = (from: number, to: number): readonly number[] => {
    const count = Math.max(2, Math.ceil(Math.abs(to - from) / step));
    return Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);
  };
  const hipSide = place(landmarkIn(garment, half, 'hip-side'));
  const sideLine = heights(topSide.y, (side.at(-1) as Point).y).map((y): Point => {
    if (y >= hipSide.y) return place({ x: crossing(side, y), y });
    // However each half is cut, gathered or slanted, together they round off over the hip.
    const up = (hipSide.y - y) / (hipSide.y - sideTop.y);
    return { x: hipSide.x + (sideTop.x - hipSide.x) * up ** 1.6, y };
  });
  // The fork lies under: the inside leg leaves the centre, and comes to its own line towards the knee.
  const insideLine = heights(hem.y, crotch.y).map((y): Point => {
    const own = place({ x: crossing(inside, Math.max(y, knee.y)), y: Math.max(y, knee.y) }).x;
    return { x: own * Math.min(Math.max((y - crotch.y) / (knee.y - crotch.y), 0), 1) ** 0.7, y };
  });
  const outline = polyline([...waist, ...sideLine.slice(1), ...insideLine], true);
  return {
    place,
    waist,
    outline,
    crotch: { x: 0, y: crotch.y },
    shape: (lines) => ({ id: half, outline, lines, bothSides: true }),
  };
};

/** A line of the piece as it lies on the hung leg. */
export const onLeg = ({ place }: HungLeg, kind: SketchLine['kind'], path: Path): SketchLine => ({
  kind,
  path: polyline(flattenPath(path, tolerance.flatten).map(place)),
});

/** The hem's stitching. */
export const legHem = (leg: HungLeg, up: number): SketchLine => {
  const { minY, maxY } = pathBounds(leg.outline);
  const y = maxY - up;
  const points = flattenPath(leg.outline, tolerance.flatten);
  const xs = points.slice(1).flatMap((point, i): number[] => {
    const before = points[i] as Point;
    if (before.y > y === point.y > y || y < minY) return [];
    return [before.x + ((point.x - before.x) * (y - before.y)) / (point.y - before.y)];
  });
  return {
    kind: 'stitching',
    path: polyline([
      { x: Math.min(...xs), y },
      { x: Math.max(...xs), y },
    ]),
  };
};

/** The pocket's mouth in the side seam, from its notch down, as a row of stitching beside it and a bar at each end. */
export const mouthLines = (garment: Garment, half: Half, leg: HungLeg, inside: number): readonly SketchLine[] => {
  const piece = pieceOf(garment, half);
  const at = piece.notches.find(({ id }) => id === 'mouth')?.at ?? 0;
  const [, mouth] = splitPathAtLength(runOf(garment, half, 'side-upper'), at * edgeLength(piece, 'side-upper'));
  if (!mouth) return [];
  const edge = flattenPath(mouth, tolerance.flatten).map(leg.place);
  const [first, last] = [edge[0] as Point, edge.at(-1) as Point];
  const moved = (point: Point): Point => ({ x: point.x - inside, y: point.y });
  return [
    { kind: 'stitching', path: polyline(edge.map(moved)) },
    { kind: 'seam', path: polyline([moved(first), first]) },
    { kind: 'seam', path: polyline([moved(last), last]) },
  ];
};

/** A band on the waist of a hung leg, both halves in one; where it is gathered, with so many short gathers a side. */
export const hungBand = ({ waist }: HungLeg, id: string, width: number, gathers: number): SketchShape => {
  const right = waist.slice(1);
  const up = (points: readonly Point[]): readonly Point[] => points.map(({ x, y }) => ({ x, y: y - width }));
  const left = (points: readonly Point[]): readonly Point[] => points.map(({ x, y }) => ({ x: -x, y })).toReversed();
  const whole = [...left(right), ...waist];
  const strokes = Array.from({ length: gathers }, (_, i): readonly SketchLine[] => {
    const { x, y } = waist[Math.round(((i + 0.5) / gathers) * waistPoints)] as Point;
    // Gathers are of uneven length.
    const deep = (0.55 + 0.12 * ((i * 7) % 4)) * width;
    return [x, -x].map((at) => ({
      kind: 'gathers',
      path: polyline([
        { x: at, y },
        { x: at, y: y - deep },
      ]),
    }));
  });
  return {
    id,
    outline: polyline([...up(whole), ...whole.toReversed()], true),
    lines: strokes.flat(),
    bothSides: false,
  };
};
