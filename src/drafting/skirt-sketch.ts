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
import { type Garment, pieceOf } from '../pattern/index.ts';
import { landmarkIn, runOf } from './shape-garment.ts';
import { type FlatSketch, pieceShape, type SketchLine, type SketchShape, stitchedAlong } from './sketch.ts';

/** The waist of a half as it is drawn: its runs, and straight over the darts between them. */
const waistLine = (garment: Garment, piece: string): Path =>
  pieceOf(garment, piece).runs.flatMap((run) => (run.kind === 'mouth' || run.edge === 'waist' ? run.path : []));

/** Half a waistband standing on a waistline, both halves in one unless it opens at the centre. */
const bandOn = (garment: Garment, piece: string, width: number, bothSides: boolean): SketchShape => {
  const seam = waistLine(garment, piece);
  const outer = offsetPath(seam, width);
  const half: Path = [...outer, line(pathEnd(outer), pathEnd(seam)), ...reversePath(seam)];
  const top = pathStart(outer);
  return {
    id: `${piece}-band`,
    outline: bothSides
      ? [...half, line(pathStart(seam), top)]
      : [...half, ...applyToPath(mirrorX(), reversePath(half))],
    lines: [],
    bothSides,
  };
};

/** Front and back lying flat: the front on its fold, the back with its seam, zip and the hook's end of the band. */
export const skirtSketch = (garment: Garment, bandWidth: number, hemDepth: number): FlatSketch => {
  const hem = (piece: string): SketchLine => stitchedAlong(garment, piece, 'hem', hemDepth);
  const centre = runOf(garment, 'back', 'centre-back');
  const zip = pieceOf(garment, 'back').notches.find(({ id }) => id === 'zip-end')?.at ?? 1;
  const top = landmarkIn(garment, 'back', 'waist-centre-back');
  const end: Point = {
    x: 0,
    y: pathStart(centre).y + zip * (pathEnd(centre).y - pathStart(centre).y),
  };
  return {
    front: [pieceShape(garment, 'front', { lines: [hem('front')] }), bandOn(garment, 'front', bandWidth, false)],
    back: [
      pieceShape(garment, 'back', {
        lines: [
          hem('back'),
          { kind: 'stitching', path: [line({ x: 3, y: top.y }, { x: 3, y: end.y }), line({ x: 3, y: end.y }, end)] },
        ],
      }),
      bandOn(garment, 'back', bandWidth, true),
    ],
  };
};
