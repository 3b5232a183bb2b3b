import type { FlatSketch, SketchLine, SketchShape } from '../drafting/index.ts';
import { applyToPath, type Bounds, mirrorX, type Path, scaling, translation } from '../geometry/index.ts';
import { drawWords, fill } from '../words/index.ts';
import { drawingOf, filledMark, groupMark, marksBounds, pathMark } from './marks.ts';
import { moveMarks } from './move.ts';
import type { Drawing, Ink, Mark } from './types.ts';

/** A sketch is drawn at an eighth of the garment, so that its inks keep the weight of a pen on paper. */
const scale = 1 / 8;

/** Between the front's sketch and the back's, mm on the sketch. */
const between = 14;

/** What is seen of a garment's inside through an opening is drawn in tone, lighter than any cloth's own. */
const insideTone = '#e3e5e1';

const inks: Readonly<Record<SketchLine['kind'], Ink>> = {
  seam: 'seam',
  stitching: 'level',
  fold: 'seam',
  button: 'seam',
  gathers: 'faint',
};

const shapeMarks = (shape: SketchShape, mirrored: boolean, pen: Ink): readonly Mark[] => {
  const placed = (path: Path): Path => (mirrored ? applyToPath(mirrorX(), path) : path);
  const outline = placed(shape.outline);
  const ground: Mark = shape.inside
    ? { kind: 'path', layer: 'cut', ink: 'cloth', paths: [outline], filled: true, colour: insideTone }
    : filledMark('cut', 'paper', outline);
  const lines = shape.lines.map(({ kind, path }) => ({ kind, path: placed(path) }));
  return [
    ground,
    ...lines.flatMap(({ kind, path }) => [
      ...(kind === 'button' ? [filledMark('marks', 'paper', path)] : []),
      pathMark('marks', inks[kind], path),
    ]),
    pathMark('cut', pen, outline),
  ];
};

/** Every shape in the order they lie, each half of a pair beside its mate so that what is next lies over both. */
const faceMarks = (shapes: readonly SketchShape[], pen: Ink): readonly Mark[] =>
  shapes.flatMap((shape) => [
    ...(shape.bothSides ? shapeMarks(shape, true, pen) : []),
    ...shapeMarks(shape, false, pen),
  ]);

export interface SketchOptions {
  /** Width over height to come near to; side by side when left out. */
  readonly aspect?: number;
  /** The front alone, for where there is room for little. */
  readonly frontOnly?: boolean;
  /** Ink of the outlines: firm alone on a sheet, finer among many. */
  readonly pen?: 'cut' | 'mark';
}

interface Face {
  readonly marks: readonly Mark[];
  readonly bounds: Bounds;
}

/**
 * Front and back of a garment as they lie flat: side by side, or one above the other where that comes nearer to
 * `aspect` (width over height).
 */
export const drawFlatSketch = (
  sketch: FlatSketch,
  name: string,
  { aspect, frontOnly = false, pen = 'cut' }: SketchOptions = {},
): Drawing => {
  const face = (shapes: readonly SketchShape[], id: 'front' | 'back'): Face => {
    const small = moveMarks(faceMarks(shapes, pen), scaling(scale));
    const label = fill(id === 'front' ? drawWords.sketchFront : drawWords.sketchBack, { name }, 'cm');
    return {
      marks: [groupMark(id, label, small)],
      bounds: marksBounds(small) ?? { minX: 0, maxX: 0, minY: 0, maxY: 0 },
    };
  };
  const front = face(sketch.front, 'front');
  if (frontOnly) return drawingOf(fill(drawWords.sketchFront, { name }, 'cm'), front.marks, 4);
  const back = face(sketch.back, 'back');
  const beside = translation({ x: front.bounds.maxX - back.bounds.minX + between, y: 0 });
  const below = translation({ x: 0, y: front.bounds.maxY - back.bounds.minY + between });
  const drawn = [beside, below].map((move) =>
    drawingOf(fill(drawWords.sketchLabel, { name }, 'cm'), [...front.marks, ...moveMarks(back.marks, move)], 4),
  ) as [Drawing, Drawing];
  return aspect === undefined || off(drawn[0], aspect) <= off(drawn[1], aspect) ? drawn[0] : drawn[1];
};

/** How far a drawing's proportions are from an aspect. */
const off = ({ bounds: { minX, maxX, minY, maxY } }: Drawing, aspect: number): number =>
  Math.abs(Math.log((maxX - minX) / (maxY - minY) / aspect));
