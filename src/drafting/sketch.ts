import {
  angleOf,
  applyToPath,
  applyToPoint,
  compose,
  flattenPath,
  type Path,
  type Point,
  polyline,
  rotation,
  subtract,
  type Transform,
  tolerance,
  translation,
} from '../geometry/index.ts';
import { dartOf, type Garment, outlineOf, pieceOf } from '../pattern/index.ts';
import { landmarkIn, runOf } from './shape-garment.ts';

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
  const placed = (path: Path): Path => (move ? applyToPath(move, path) : path);
  return {
    id,
    outline: placed(outlineOf(piece)),
    lines: [...darts, ...lines].map((line) => ({ ...line, path: placed(line.path) })),
    bothSides,
    inside,
  };
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

/**
 * Half of a set-in sleeve hung on its armhole as it lies flat: folded along the line through its cap top, turned about
 * the shoulder point until its underarm lies in the direction of the body's. Draw it before the body, which covers
 * what does not lie exactly.
 *
 * @param drop how much further down it hangs, radians; a sleeve with a low cap stands out from the body without it.
 */
export const hangSleeve = (
  garment: Garment,
  half: 'front' | 'back',
  {
    sleeve = 'sleeve',
    body = half,
    drop = 0,
  }: { readonly sleeve?: string; readonly body?: string; readonly drop?: number } = {},
): SketchShape => {
  const top = landmarkIn(garment, sleeve, 'cap-top');
  const arm = landmarkIn(garment, sleeve, half === 'front' ? 'underarm-front' : 'underarm-back');
  const shoulder = landmarkIn(garment, body, 'shoulder-point');
  const underarm = landmarkIn(garment, body, 'underarm');
  const outline = outlineOf(pieceOf(garment, sleeve));
  // The half whose underarm lies left of the fold as seen, turned over where it is the other one.
  const folded = halfOf(outline, top, half === 'front' ? Math.PI / 2 : -Math.PI / 2);
  const turned: Transform =
    half === 'front' ? { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 } : { a: -1, b: 0, c: 0, d: 1, e: 2 * top.x, f: 0 };
  const armAt = applyToPoint(turned, arm);
  const turn = angleOf(subtract(underarm, shoulder)) - angleOf(subtract(armAt, top)) + drop;
  const move = compose(compose(turned, translation(subtract(shoulder, top))), rotation(turn, shoulder));
  return { id: `${sleeve}-${half}`, outline: applyToPath(move, folded), lines: [], bothSides: true };
};

/** Rows of stitching along an edge, `inside` mm from it: a hem, a topstitched seam. Straight edges and gentle curves only. */
export const stitchedHem = (garment: Garment, piece: string, edge: string, up: number): SketchLine => ({
  kind: 'stitching',
  path: applyToPath(translation({ x: 0, y: -up }), runOf(garment, piece, edge)),
});

/** A button as it is drawn, centred. */
export const sketchButton = (at: Point, diameter: number): SketchLine => {
  const corners = Array.from({ length: 24 }, (_, i): Point => {
    const angle = (i / 24) * 2 * Math.PI;
    return { x: at.x + (diameter / 2) * Math.cos(angle), y: at.y + (diameter / 2) * Math.sin(angle) };
  });
  return { kind: 'button', path: polyline(corners, true) };
};
