import {
  applyToPath,
  line,
  mirrorX,
  offsetPath,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathStart,
  reversePath,
  subPath,
} from '../geometry/index.ts';
import { dartOf, type Garment, hasEdge, pieceOf } from '../pattern/index.ts';
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

const hasPocket = (garment: Garment): boolean => hasEdge(pieceOf(garment, 'front'), 'side-upper');

const sideOf = (garment: Garment, which: Half): Path => [
  ...(hasPocket(garment) ? runOf(garment, which, 'side-upper') : []),
  ...runOf(garment, which, 'side'),
];

/** The mouth of a pocket is understitched: a short row beside the seam, with a bar across each end. */
const mouth = (garment: Garment): readonly SketchLine[] => {
  if (!hasPocket(garment)) return [];
  const side = runOf(garment, 'front', 'side-upper');
  const at = pieceOf(garment, 'front').notches.find(({ id }) => id === 'mouth')?.at ?? 0;
  const whole = pathLength(side);
  const opening = subPath(side, at * whole, whole);
  const inside = offsetPath(opening, -7);
  return [
    { kind: 'stitching', path: inside },
    { kind: 'seam', path: [line(pathStart(opening), pathStart(inside))] },
    { kind: 'seam', path: [line(pathEnd(opening), pathEnd(inside))] },
  ];
};

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
    ...sideOf(garment, which),
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
    front: [half(garment, 'front', hemDepth, mouth(garment)), band(garment, 'front', bandWidth)],
    back: [half(garment, 'back', hemDepth, [mark]), band(garment, 'back', bandWidth)],
  };
};
