import {
  applyToPath,
  cubic,
  line,
  mirrorX,
  offsetPath,
  type Path,
  type Point,
  pathEnd,
  pathStart,
  polyline,
  reversePath,
  translation,
} from '../geometry/index.ts';
import { edgeLength, type Garment, outlineOf, pieceOf } from '../pattern/index.ts';
import { placketWidth, studsApart } from './raincoat-pieces.ts';
import { landmarkIn, runOf } from './shape-garment.ts';
import {
  type FlatSketch,
  hangSleeve,
  pieceShape,
  type SketchLine,
  type SketchShape,
  sketchButton,
  sleeveHem,
  stitchedAlong,
} from './sketch.ts';

/** Rows of topstitching lie this far from their seam or edge. */
const topstitch = 7;

/** A path on the right of the centre carried on over it to the left, which it has to reach or start at. */
const bothWays = (right: Path): Path => [...applyToPath(mirrorX(0), reversePath(right)), ...right];

/**
 * The hood standing up, seen from the front or the back: as high as its sides are from neck to crown, and as broad
 * as its strip and what the sides round out beside it.
 */
const hoodFrame = (garment: Garment, half: 'front' | 'back') => {
  const neck = landmarkIn(garment, half, 'neck-point');
  const strip = landmarkIn(garment, 'hood-centre', 'visor').x;
  const height = landmarkIn(garment, 'hood-side', 'neck-point').y - landmarkIn(garment, 'hood-side', 'crown').y;
  const depth = landmarkIn(garment, 'hood-side', 'hood-back').x - landmarkIn(garment, 'hood-side', 'visor').x;
  return { neck, strip, top: { x: 0, y: neck.y - 0.9 * height }, breadth: 0.56 * strip + 0.35 * depth, height };
};

/** The hood's right half from the neck point up to the crown at the centre. */
const silhouette = (garment: Garment, half: 'front' | 'back'): Path => {
  const { neck, top, breadth, height } = hoodFrame(garment, half);
  const widest: Point = { x: breadth, y: top.y + 0.42 * height };
  return [
    cubic(neck, { x: neck.x + 12, y: neck.y - 0.14 * height }, { x: breadth, y: widest.y + 0.26 * height }, widest),
    cubic(widest, { x: breadth, y: widest.y - 0.26 * height }, { x: 0.55 * breadth, y: top.y }, top),
  ];
};

/** The opening's right half, from under the chin up round the face to the visor's middle. */
const face = (garment: Garment): Path => {
  const { top, breadth, height } = hoodFrame(garment, 'front');
  const chin = landmarkIn(garment, 'front', 'centre-neck');
  const visor: Point = { x: 0, y: top.y + 0.15 * height };
  const cheek: Point = { x: 0.74 * breadth, y: top.y + 0.5 * height };
  return [
    cubic(chin, { x: 0.3 * breadth, y: chin.y - 0.12 * height }, { x: cheek.x, y: cheek.y + 0.24 * height }, cheek),
    cubic(cheek, { x: cheek.x, y: cheek.y - 0.2 * height }, { x: 0.5 * breadth, y: visor.y }, visor),
  ];
};

const hoodFront = (garment: Garment): readonly SketchShape[] => {
  const { strip, top, height, breadth } = hoodFrame(garment, 'front');
  const opening = face(garment);
  const front = runOf(garment, 'front', 'neck');
  const outer = [...front, ...silhouette(garment, 'front')];
  const seam: Path = [
    cubic(
      { x: 0.9 * strip, y: top.y + 0.19 * height },
      { x: 0.9 * strip, y: top.y + 0.12 * height },
      { x: 0.78 * strip, y: top.y + 0.06 * height },
      { x: 0.66 * strip, y: top.y + 0.022 * height * (strip / breadth) + 3 },
    ),
  ];
  const hem = offsetPath(opening, -(topstitch + 6));
  const lines: readonly SketchLine[] = [
    { kind: 'seam', path: seam },
    { kind: 'seam', path: applyToPath(mirrorX(0), seam) },
    { kind: 'stitching', path: hem },
    { kind: 'stitching', path: applyToPath(mirrorX(0), hem) },
  ];
  return [
    {
      id: 'hood',
      outline: [...outer, ...applyToPath(mirrorX(0), reversePath(outer))],
      lines,
      bothSides: false,
    },
    { id: 'hood-inside', outline: bothWays(reversePath(opening)), lines: [], bothSides: false, inside: true },
  ];
};

const hoodBack = (garment: Garment): SketchShape => {
  const { strip, top, height } = hoodFrame(garment, 'back');
  const half = silhouette(garment, 'back');
  const neck: Path = [...runOf(garment, 'back', 'neck-centre'), ...runOf(garment, 'back', 'neck')];
  const foot = pathEnd(runOf(garment, 'back', 'neck-centre'));
  const seam: Path = [
    cubic(
      foot,
      { x: foot.x * 1.25, y: foot.y - 0.35 * height },
      { x: 1.05 * strip, y: top.y + 0.4 * height },
      { x: 0.86 * strip, y: top.y + 0.03 * height },
    ),
  ];
  const right = [...neck, ...half];
  return {
    id: 'hood',
    outline: [...right, ...applyToPath(mirrorX(0), reversePath(right))],
    lines: [
      { kind: 'seam', path: seam },
      { kind: 'seam', path: applyToPath(mirrorX(0), seam) },
    ],
    bothSides: false,
  };
};

/** The placket closed over the other front, with its studs. */
const placketShape = (garment: Garment): SketchShape => {
  const top = landmarkIn(garment, 'front', 'centre-neck').y;
  const bottom = landmarkIn(garment, 'front', 'hem-centre').y;
  const at = (x: number, y: number): Point => ({ x, y });
  // As many as are bought for it.
  const studs = Math.ceil((bottom - top) / studsApart) + 1;
  const [first, last] = [top + 25, bottom - 45];
  return {
    id: 'placket',
    outline: polyline([at(-placketWidth, top + 2), at(0, top), at(0, bottom), at(-placketWidth, bottom)], true),
    lines: [
      {
        kind: 'stitching',
        path: polyline([
          at(-topstitch, top + topstitch),
          at(-placketWidth + topstitch, top + topstitch),
          at(-placketWidth + topstitch, bottom - topstitch),
          at(-topstitch, bottom - topstitch),
        ]),
      },
      ...Array.from({ length: studs }, (_, i) =>
        sketchButton(at(-placketWidth / 2, first + ((last - first) * i) / (studs - 1)), 12),
      ),
    ],
    bothSides: false,
  };
};

const pockets = (garment: Garment): readonly SketchShape[] => {
  const placement = (id: string): Path => {
    const found = pieceOf(garment, 'front').lines.find((one) => one.id === id);
    if (!found) throw new Error(`front has no ${id}`);
    return found.path;
  };
  const bag = placement('pocket');
  const flapAt = pathStart(placement('pocket-flap'));
  const flap = applyToPath(translation(flapAt), outlineOf(pieceOf(garment, 'pocket-flap')));
  const stud = landmarkIn(garment, 'pocket-flap', 'press-stud');
  const sewn = runOf(garment, 'pocket-flap', 'bottom');
  return [
    {
      id: 'pocket',
      outline: [...bag, line(pathEnd(bag), pathStart(bag))],
      lines: [{ kind: 'stitching', path: offsetPath(bag, -4) }],
      bothSides: true,
    },
    {
      id: 'pocket-flap',
      outline: flap,
      lines: [
        { kind: 'stitching', path: applyToPath(translation(flapAt), offsetPath(sewn, -4)) },
        sketchButton({ x: flapAt.x + stud.x, y: flapAt.y + stud.y }, 12),
      ],
      bothSides: true,
    },
  ];
};

const sleeve = (garment: Garment, half: 'front' | 'back'): SketchShape =>
  hangSleeve(garment, half, {
    lines: (at) => [sleeveHem(at, 70 / edgeLength(pieceOf(garment, 'sleeve'), 'underarm-front'))],
  });

const seams = (garment: Garment, half: 'front' | 'back'): readonly SketchLine[] => [
  stitchedAlong(garment, half, 'armhole', topstitch),
  stitchedAlong(garment, half, 'hem', 30),
];

/** The raincoat lying flat with its hood up, closed. */
export const raincoatSketch = (garment: Garment): FlatSketch => ({
  front: [
    ...hoodFront(garment),
    sleeve(garment, 'front'),
    pieceShape(garment, 'front', { lines: seams(garment, 'front') }),
    ...pockets(garment),
    placketShape(garment),
  ],
  back: [
    hoodBack(garment),
    sleeve(garment, 'back'),
    pieceShape(garment, 'back', {
      lines: [...seams(garment, 'back'), stitchedAlong(garment, 'back', 'shoulder', topstitch)],
    }),
  ],
});
