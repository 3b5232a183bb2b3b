import {
  applyToPath,
  line,
  mirrorX,
  offsetPath,
  type Path,
  type Point,
  pathEnd,
  pathStart,
  reversePath,
} from '../geometry/index.ts';
import { dartOf, type Garment, pieceOf } from '../pattern/index.ts';
import { runOf } from './shape-garment.ts';
import type { FlatSketch, SketchLine, SketchShape } from './sketch.ts';
import { stitchedAlong } from './sketch.ts';
import type { Half } from './skirt-pieces.ts';

/** A shape closed along the centre, or opened to both halves where there is no seam. */
const closed = (id: string, half: Path, seam: boolean, lines: readonly SketchLine[]): SketchShape => ({
  id,
  outline: seam
    ? [...half, line(pathEnd(half), pathStart(half))]
    : [...half, ...applyToPath(mirrorX(), reversePath(half))],
  lines: seam ? lines : lines.flatMap((one) => [one, { ...one, path: applyToPath(mirrorX(), one.path) }]),
  bothSides: seam,
});

/**
 * The waist of a half as it lies once the darts are stitched: the lining's, which has none. Each dart is the line from
 * where it is stitched to its point.
 */
const half = (garment: Garment, which: Half, hemDepth: number, more: readonly SketchLine[] = []): SketchShape => {
  const darts = pieceOf(garment, which).darts.map(({ id }): SketchLine => {
    const { point, legs } = dartOf(pieceOf(garment, which), id);
    const mouth: Point = { x: (legs[0].x + legs[1].x) / 2, y: (legs[0].y + legs[1].y) / 2 };
    return { kind: 'seam', path: [line(mouth, point)] };
  });
  const path = [
    ...runOf(garment, `lining-${which}`, 'waist'),
    ...runOf(garment, which, 'side'),
    ...runOf(garment, which, 'hem'),
  ];
  return closed(which, path, which === 'back', [...darts, stitchedAlong(garment, which, 'hem', hemDepth), ...more]);
};

const band = (garment: Garment, which: Half, width: number): SketchShape => {
  const seam = runOf(garment, `lining-${which}`, 'waist');
  const outer = offsetPath(seam, width);
  return closed(
    `${which}-band`,
    [...outer, line(pathEnd(outer), pathEnd(seam)), ...reversePath(seam)],
    which === 'back',
    [],
  );
};

/** Front and back lying flat: the front on its fold, the back with its seam, and the place where the zip ends. */
export const skirtSketch = (garment: Garment, bandWidth: number, hemDepth: number): FlatSketch => {
  const centre = runOf(garment, 'back', 'centre-back');
  const zip = pieceOf(garment, 'back').notches.find(({ id }) => id === 'zip-end')?.at ?? 1;
  const top = pathEnd(centre);
  const end = pathStart(centre).y + zip * (top.y - pathStart(centre).y);
  // A concealed zip shows as the seam alone, and as the mark where it ends.
  const mark: SketchLine = { kind: 'stitching', path: [line({ x: 0, y: end }, { x: 8, y: end })] };
  return {
    front: [half(garment, 'front', hemDepth), band(garment, 'front', bandWidth)],
    back: [half(garment, 'back', hemDepth, [mark]), band(garment, 'back', bandWidth)],
  };
};
