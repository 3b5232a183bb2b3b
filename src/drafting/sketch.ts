import {
  add,
  angleOf,
  applyToPath,
  directionAt,
  distance,
  flattenPath,
  line,
  midpoint,
  mirrorX,
  offsetPath,
  type Path,
  type Point,
  pathEnd,
  pathStart,
  polyline,
  reversePath,
  scale,
  subtract,
  type Transform,
  tolerance,
} from '../geometry/index.ts';
import { dartOf, edgeLength, type Garment, outlineOf, type Piece, pieceOf } from '../pattern/index.ts';
import { landmarkIn, runOf } from './shape-garment.ts';
import { settle, solveBetween } from './solve.ts';

/** A line inside a flat sketch: a seam or dart, a row of stitching, a fold or pleat, a button, a buttonhole. */
export interface SketchLine {
  readonly kind: 'seam' | 'stitching' | 'fold' | 'button' | 'gathers';
  readonly path: Path;
}

/** One part of a flat sketch, drawn as it lies: what comes later lies over what comes before. */
export interface SketchShape {
  readonly id: string;
  readonly outline: Path;
  readonly lines: readonly SketchLine[];
  /** Drawn again mirrored about the centre, x = 0. Not where the piece was already opened to both halves. */
  readonly bothSides: boolean;
  /** The inside of the garment seen through an opening: drawn in tone. */
  readonly inside?: boolean;
}

/**
 * A garment lying flat, from the front and from the back, mm at its own scale: centre along x = 0, y down. Right of
 * the centre in the picture is the half the pieces are drawn for.
 */
export interface FlatSketch {
  readonly front: readonly SketchShape[];
  readonly back: readonly SketchShape[];
}

/** Sketches are looked at, never cut from: outlines are flattened to this, mm. */
const fine = tolerance.flatten;

/** A piece as it lies, moved by a transform, its darts drawn as the single lines they are once stitched. */
export const pieceShape = (
  garment: Garment,
  id: string,
  {
    move,
    lines = [],
    bothSides = true,
    inside = false,
  }: {
    readonly move?: Transform;
    readonly lines?: readonly SketchLine[];
    readonly bothSides?: boolean;
    readonly inside?: boolean;
  } = {},
): SketchShape => {
  const piece = pieceOf(garment, id);
  const darts = piece.darts.map(({ id: dart }): SketchLine => {
    const { point, legs } = dartOf(piece, dart);
    const mouth = { x: (legs[0].x + legs[1].x) / 2, y: (legs[0].y + legs[1].y) / 2 };
    return { kind: 'seam', path: polyline([mouth, point]) };
  });
  const opened = bothSides ? openedOutline(piece) : null;
  const inner = [...darts, ...lines];
  const mirrored = opened ? inner.map((one) => ({ ...one, path: applyToPath(mirrorX(opened.at), one.path) })) : [];
  const placed = (path: Path): Path => (move ? applyToPath(move, path) : path);
  return {
    id,
    outline: placed(opened?.outline ?? outlineOf(piece)),
    lines: [...inner, ...mirrored].map((one) => ({ ...one, path: placed(one.path) })),
    bothSides: bothSides && opened === null,
    inside,
  };
};

/** A piece on an upright fold opened to double, so that no line is drawn where there is only a fold; null where it has none. */
const openedOutline = (piece: Piece): { readonly outline: Path; readonly at: number } | null => {
  const fold = piece.edges.find(({ finish }) => finish === 'fold');
  const which = piece.runs.findIndex((run) => run.kind === 'edge' && run.edge === fold?.id);
  const run = piece.runs[which];
  if (!run) return null;
  const [from, to] = [pathStart(run.path), pathEnd(run.path)];
  if (Math.abs(from.x - to.x) > tolerance.same) return null;
  const half = [...piece.runs.slice(which + 1), ...piece.runs.slice(0, which)].flatMap(({ path }) => path);
  return { outline: [...half, ...applyToPath(mirrorX(from.x), reversePath(half))], at: from.x };
};

/** The part of a closed outline on the right of a line through `at` along `direction` (radians), as a closed polygon. */
export const halfOf = (outline: Path, at: Point, direction: number): Path => {
  const points = flattenPath(outline, fine).slice(0, -1);
  const [along, across] = [Math.cos(direction), Math.sin(direction)];
  const off = (point: Point): number => along * (point.y - at.y) - across * (point.x - at.x);
  const kept = points.flatMap((point, i): Point[] => {
    const next = points[(i + 1) % points.length] as Point;
    const [here, there] = [off(point), off(next)];
    const crossing: Point = {
      x: point.x + ((next.x - point.x) * here) / (here - there),
      y: point.y + ((next.y - point.y) * here) / (here - there),
    };
    if (here >= 0) return there >= 0 ? [point] : [point, crossing];
    return there >= 0 ? [crossing] : [];
  });
  return polyline(kept, true);
};

/** A sleeve lies no flatter and hangs no steeper than this in a sketch, radians below the level. */
const hanging = { least: (12 * Math.PI) / 180, most: (80 * Math.PI) / 180 } as const;

/** A place inside half a hanging sleeve: across from 0 at the fold to 1 at the underarm seam, down from 0 at the shoulder to 1 at the hem. */
export type OnSleeve = (across: number, down: number) => Point;

/**
 * Half a sleeve hung on an armhole, which runs from shoulder to underarm: its fold `length` long from the shoulder
 * point, its hem, `hem` wide when folded, square to it. Without an angle (radians below the level) it hangs so that its underarm seam
 * is `below` long: as it lies on a table, where a low cap stands out and a high one hangs.
 */
export const hangFrom = (
  armhole: Path,
  { length, hem, below }: { readonly length: number; readonly hem: number; readonly below: number },
  angle?: number,
): { readonly outline: Path; readonly at: OnSleeve } => {
  const shoulder = pathStart(armhole);
  const underarm = pathEnd(armhole);
  const endAt = (steep: number): readonly [Point, Point] => {
    const end = add(shoulder, scale(directionAt(steep), length));
    return [end, add(end, scale(directionAt(steep + Math.PI / 2), hem))];
  };
  const tooLong = (steep: number): number => distance(endAt(steep)[1], underarm) - below;
  // Where the sleeve would lie closest under the arm: flatter than that there is one place at which its seam is as long as it is.
  const closest = settle(
    angleOf(subtract(underarm, shoulder)) - Math.atan2(hem, length),
    2 * hanging.least,
    hanging.most,
  );
  const steep = angle ?? solveBetween(tooLong, hanging.least, closest, 1e-4) ?? closest;
  const down = directionAt(steep);
  const [end, inner] = endAt(steep);
  return {
    outline: [...armhole, line(underarm, inner), line(inner, end), line(end, shoulder)],
    at: (across, along) => {
      const outside = add(shoulder, scale(down, along * length));
      const inside = add(underarm, scale(subtract(inner, underarm), along));
      return add(outside, scale(subtract(inside, outside), across));
    },
  };
};

/**
 * Half of a set-in sleeve as it lies flat, folded along the line through its cap top: that line at its length from the
 * shoulder point, the hem square to it at half its width, the armhole as its edge where it joins the body. A real
 * sleeve's cap curves in space; flat, it lies on the armhole.
 *
 * @param body the piece that has the armhole, or several one after another from shoulder to underarm
 * @param angle how steeply it hangs, radians below the level; when left out, so that its underarm seam has its length:
 *   as it lies on a table, where a low cap stands out and a high one hangs
 */
export const hangSleeve = (
  garment: Garment,
  half: 'front' | 'back',
  {
    sleeve = 'sleeve',
    body = [half],
    armhole = 'armhole',
    angle,
    lines = () => [],
  }: {
    readonly sleeve?: string;
    readonly body?: readonly string[];
    readonly armhole?: string;
    readonly angle?: number;
    /** Lines inside it, in the sleeve's own place: x from 0 at the fold to 1 at the underarm seam, y from 0 at the shoulder to 1 at the hem. */
    readonly lines?: (at: OnSleeve) => readonly SketchLine[];
  } = {},
): SketchShape => {
  const top = landmarkIn(garment, sleeve, 'cap-top');
  const hemPath = runOf(garment, sleeve, 'hem');
  const shoulderFirst = body.flatMap((piece) => {
    const path = runOf(garment, piece, armhole);
    return pathStart(path).y < pathEnd(path).y ? path : reversePath(path);
  });
  const { outline, at } = hangFrom(
    shoulderFirst,
    {
      length: midpoint(pathStart(hemPath), pathEnd(hemPath)).y - top.y,
      hem: edgeLength(pieceOf(garment, sleeve), 'hem') / 2,
      below: edgeLength(pieceOf(garment, sleeve), 'underarm-front'),
    },
    angle,
  );
  return { id: `${sleeve}-${half}`, outline, lines: lines(at), bothSides: true };
};

/** A row of stitching `inside` mm from an edge and along it: a hem, a topstitched seam. */
export const stitchedAlong = (garment: Garment, piece: string, edge: string, inside: number): SketchLine => ({
  kind: 'stitching',
  path: offsetPath(runOf(garment, piece, edge), -inside),
});

/** A hem's stitching across half a hanging sleeve, `up` of its length from the hem. */
export const sleeveHem = (at: OnSleeve, up: number): SketchLine => ({
  kind: 'stitching',
  path: polyline([at(0, 1 - up), at(1, 1 - up)]),
});

/** A band sewn to an edge that starts at the centre, as wide as it is finished, mm: outside the piece, both halves in one. */
export const bandShape = (garment: Garment, piece: string, edge: string, width: number): SketchShape => {
  const seam = runOf(garment, piece, edge);
  const outer = offsetPath(seam, width);
  const half = [...outer, line(pathEnd(outer), pathEnd(seam)), ...reversePath(seam)];
  const outline = [...half, ...applyToPath(mirrorX(pathStart(seam).x), reversePath(half))];
  return { id: `${piece}-${edge}-band`, outline, lines: [], bothSides: false };
};

/** A button as it is drawn, centred. */
export const sketchButton = (at: Point, diameter: number): SketchLine => {
  const corners = Array.from({ length: 24 }, (_, i): Point => {
    const angle = (i / 24) * 2 * Math.PI;
    return { x: at.x + (diameter / 2) * Math.cos(angle), y: at.y + (diameter / 2) * Math.sin(angle) };
  });
  return { kind: 'button', path: polyline(corners, true) };
};
