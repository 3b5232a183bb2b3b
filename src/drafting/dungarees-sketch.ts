import {
  applyToPath,
  type Path,
  type Point,
  pathEnd,
  polyline,
  type Transform,
  translation,
} from '../geometry/index.ts';
import { edgeLength, type Garment, levelWidth, pieceOf } from '../pattern/index.ts';
import { dungareesWidths } from './dungarees-pieces.ts';
import { landmarkIn, runOf } from './shape-garment.ts';
import { sideOpening } from './side-opening.ts';
import { type FlatSketch, type SketchLine, type SketchShape, sketchButton } from './sketch.ts';
import { type HungLeg, hangLeg, legHem, onLeg } from './sketch-leg.ts';

type Half = 'front' | 'back';

/** As they are seen, mm: the hem's stitching, the opening's, a patch's second row, and a buckle. */
const seen = { hem: 26, opening: 34, row: 6, buckle: 26 } as const;

const bibOf = (half: Half): string => (half === 'front' ? 'bib' : 'back-bib');

/** Where a point of a bib comes to lie on a hung leg: its lower edge along the waist, as wide as both halves lie. */
const onBib =
  (garment: Garment, half: Half, leg: HungLeg) =>
  ({ x, y }: Point): Point => {
    const waist = landmarkIn(garment, bibOf(half), 'waist-side').x;
    const [centre, side] = [leg.waist[0] as Point, leg.waist.at(-1) as Point];
    const share = x / waist;
    return { x: share * side.x, y: y + centre.y + (side.y - centre.y) * share ** 2 };
  };

const placed = (path: Path, place: (at: Point) => Point): readonly Point[] => {
  const count = 16;
  return path.flatMap((segment, i) => {
    const at = (t: number): Point =>
      segment.kind === 'line'
        ? {
            x: segment.from.x + t * (segment.to.x - segment.from.x),
            y: segment.from.y + t * (segment.to.y - segment.from.y),
          }
        : bezier(segment, t);
    return Array.from({ length: count + (i === 0 ? 1 : 0) }, (_, j) => place(at((j + (i === 0 ? 0 : 1)) / count)));
  });
};

const bezier = ({ from, control1, control2, to }: Extract<Path[number], { kind: 'cubic' }>, t: number): Point => {
  const s = 1 - t;
  const blend = (a: number, b: number, c: number, d: number): number =>
    s ** 3 * a + 3 * s * s * t * b + 3 * s * t * t * c + t ** 3 * d;
  return {
    x: blend(from.x, control1.x, control2.x, to.x),
    y: blend(from.y, control1.y, control2.y, to.y),
  };
};

/** A bib with both its halves, its pocket and edge stitching. */
const bibShape = (garment: Garment, half: Half, leg: HungLeg): SketchShape => {
  const id = bibOf(half);
  const place = onBib(garment, half, leg);
  const edges = half === 'front' ? ['curve', 'side', 'waist'] : ['strap', 'curve', 'side', 'waist'];
  const right = [
    ...placed(runOf(garment, id, 'top'), place),
    ...edges.flatMap((edge) => placed(runOf(garment, id, edge), place).slice(1)),
  ];
  const left = right
    .slice(1, -1)
    .map(({ x, y }): Point => ({ x: -x, y }))
    .toReversed();
  const piece = pieceOf(garment, id);
  const pocket = piece.lines.find((line) => line.id === 'pocket');
  const bothSides = (line: SketchLine): readonly SketchLine[] => [
    line,
    {
      ...line,
      path: polyline(
        line.path
          .map(({ from }) => ({ x: -from.x, y: from.y }))
          .concat([{ x: -pathEnd(line.path).x, y: pathEnd(line.path).y }]),
      ),
    },
  ];
  const mouth = pocket ? placed([pocket.path[0] as Path[number]], place) : [];
  const lines: readonly SketchLine[] = [
    ...(pocket ? bothSides({ kind: 'seam', path: polyline(placed(pocket.path, place)) }) : []),
    ...(mouth.length > 0
      ? bothSides({ kind: 'stitching', path: polyline(mouth.map(({ x, y }) => ({ x, y: y + 3 * seen.row }))) })
      : []),
    ...bothSides({
      kind: 'stitching',
      path: polyline(placed(runOf(garment, id, 'waist'), place).map(({ x, y }) => ({ x, y: y + seen.row }))),
    }),
  ];
  return { id, outline: polyline([...right, ...left], true), lines, bothSides: false };
};

/** Straps go from a bib's corner up to the shoulder, where front and back of them meet. */
const strapShape = (garment: Garment, half: Half, leg: HungLeg): SketchShape => {
  const { strap } = dungareesWidths;
  const place = onBib(garment, half, leg);
  const height = (id: string): number => -landmarkIn(garment, id, 'centre-top').y;
  const buckle = pieceOf(garment, 'strap').lines.find(({ id }) => id === 'buckle');
  const worn = buckle ? pathEnd(buckle.path).y : 0;
  const shoulder = -(worn + height('bib') + height('back-bib')) / 2;
  const corner = place(landmarkIn(garment, bibOf(half), 'bib-corner'));
  const low = half === 'front' ? corner.y + seen.buckle : corner.y + 1;
  // The shoulder lies further out than either bib's corner.
  const onShoulder = onBib(garment, 'front', leg)(landmarkIn(garment, 'bib', 'bib-corner')).x + 0.35 * strap;
  const outline = polyline(
    [
      { x: corner.x - strap, y: low },
      { x: onShoulder - strap, y: shoulder },
      { x: onShoulder, y: shoulder },
      { x: corner.x, y: low },
    ],
    true,
  );
  return { id: `strap-${half}`, outline, lines: [], bothSides: true };
};

/** A buckle over the bib's button, at its corner. */
const buckleShape = (garment: Garment, leg: HungLeg): SketchShape => {
  const { strap } = dungareesWidths;
  const corner = onBib(garment, 'front', leg)(landmarkIn(garment, 'bib', 'bib-corner'));
  const [left, right] = [corner.x - strap - 3, corner.x + 3];
  const [top, bottom] = [corner.y - 8, corner.y + seen.buckle + 6];
  const outline = polyline(
    [
      { x: left, y: top },
      { x: right, y: top },
      { x: right, y: top + 14 },
      { x: right - 9, y: bottom },
      { x: left + 9, y: bottom },
      { x: left, y: top + 14 },
    ],
    true,
  );
  return {
    id: 'buckle',
    outline,
    lines: [sketchButton({ x: (left + right) / 2, y: bottom - 13 }, 15)],
    bothSides: true,
  };
};

/** The side that opens, as it is seen from the front: its stitching, and a button at each buttonhole. */
const openingLines = (garment: Garment, leg: HungLeg): readonly SketchLine[] => {
  const upper = placed(runOf(garment, 'front', 'side-upper'), leg.place);
  const inside = upper.map(({ x, y }): Point => ({ x: x - seen.opening, y }));
  const last = upper.at(-1) as Point;
  const holes = pieceOf(garment, 'front').lines.filter(({ id }) => id.startsWith('buttonhole'));
  return [
    { kind: 'stitching', path: polyline([...inside, last]) },
    ...holes.map(({ path }) => {
      const end = leg.place(pathEnd(path));
      return sketchButton({ x: end.x + 6, y: end.y }, sideOpening.button);
    }),
  ];
};

const patchLines = (garment: Garment, half: Half, leg: HungLeg): readonly SketchLine[] => {
  const pocket = pieceOf(garment, half).lines.find(({ id }) => id === 'pocket');
  if (!pocket) return [];
  const down: Transform = translation({ x: 0, y: 3 * seen.row });
  return [
    onLeg(leg, 'seam', pocket.path),
    onLeg(leg, 'stitching', applyToPath(down, [pocket.path[0] as Path[number]])),
  ];
};

/** The dungarees as they lie flat, straps drawn up to the shoulder. */
export const dungareesSketch = (garment: Garment): FlatSketch => {
  const mean = (of: (half: Half) => number): number => (of('front') + of('back')) / 2;
  const across = {
    waist: mean((half) => edgeLength(pieceOf(garment, bibOf(half)), 'waist')),
    hip: mean((half) => levelWidth(pieceOf(garment, half), 'hip')),
    hem: mean((half) => edgeLength(pieceOf(garment, half), 'hem')),
  };
  const front = hangLeg(garment, 'front', across);
  const back = hangLeg(garment, 'back', across);
  const lines = (half: Half, leg: HungLeg): readonly SketchLine[] => [
    legHem(leg, seen.hem),
    ...patchLines(garment, half, leg),
  ];
  const bibButton = onBib(garment, 'front', front)(pathEnd(buttonholePath(garment)));
  const bib = bibShape(garment, 'front', front);
  const buttons = [bibButton, { x: -bibButton.x, y: bibButton.y }].map((at) => sketchButton(at, sideOpening.button));
  return {
    front: [
      front.shape([...lines('front', front), ...openingLines(garment, front)]),
      strapShape(garment, 'back', front),
      { ...bib, lines: [...bib.lines, ...buttons] },
      strapShape(garment, 'front', front),
      buckleShape(garment, front),
    ],
    back: [back.shape(lines('back', back)), strapShape(garment, 'back', back), bibShape(garment, 'back', back)],
  };
};

const buttonholePath = (garment: Garment): Path => {
  const hole = pieceOf(garment, 'bib').lines.find(({ id }) => id === 'buttonhole-1');
  if (!hole) throw new Error('The bib has no buttonhole');
  return hole.path;
};
