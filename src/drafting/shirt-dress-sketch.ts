import {
  add,
  angleOf,
  applyToPath,
  cubic,
  endTangent,
  lerp,
  line,
  offsetPath,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathPointAtLength,
  pathStart,
  polyline,
  reversePath,
  scale,
  startTangent,
  subPath,
  subtract,
} from '../geometry/index.ts';
import { dartOf, type Garment, pieceOf } from '../pattern/index.ts';
import { landmarkIn, runOf } from './shape-garment.ts';
import { shirtDressViews } from './shirt-dress-plan.ts';
import { collarBehind, collarInFront } from './shirt-dress-sketch-collar.ts';
import { mirrored, opened, overShoulder, stitching, topstitch } from './shirt-dress-sketch-parts.ts';
import { drawnSkirt, gatherLines } from './shirt-dress-sketch-skirt.ts';
import { sleeveShapes } from './shirt-dress-sketch-sleeve.ts';
import { type FlatSketch, halfOf, type SketchLine, type SketchShape, sketchButton } from './sketch.ts';

/** How far above the waistband the bodice blouses over it, mm. */
const blouse = 60;

/** The bodice's side, from underarm to waistband, drawn in to where the waistband's side is. */
const drawnIn = (side: Path, to: Point): Path => {
  const kept = subPath(side, 0, pathLength(side) - blouse);
  const from = pathEnd(kept);
  return [...kept, cubic(from, add(from, scale(endTangent(kept), 0.5 * blouse)), { x: from.x - 2, y: to.y - 2 }, to)];
};

/** The bodice's front and the yoke's strip over it. */
const frontShapes = (garment: Garment, long: boolean): readonly SketchShape[] => {
  const over = overShoulder(garment);
  const strip = applyToPath(
    over,
    halfOf(yokeOutline(garment), landmarkIn(garment, 'yoke', 'neck-point'), shoulderAngle(garment) + Math.PI),
  );
  const armhole = runOf(garment, 'front', 'armhole');
  const stripArmhole = applyToPath(over, reversePath(runOf(garment, 'yoke', 'armhole').slice(0, 1)));
  const [above, below] = [runOf(garment, 'front', 'side', 0), runOf(garment, 'front', 'side', 1)];
  const bandSide = pathEnd(runOf(garment, 'waist-front', 'top'));
  const waist = pathEnd(below).y;
  const end: Point = { x: bandSide.x, y: waist };
  const corner = pathStart(runOf(garment, 'front', 'stand'));
  // With its dart stitched the side is one curve, as the back's is.
  const third = (pathEnd(below).y - pathStart(above).y) / 3;
  const sewn = cubic(
    pathStart(above),
    add(pathStart(above), scale(startTangent(runOf(garment, 'back', 'side')), third)),
    add(pathEnd(below), scale(endTangent(below), -third)),
    pathEnd(below),
  );
  const { point, legs } = dartOf(pieceOf(garment, 'front'), 'bust');
  const front: SketchShape = {
    id: 'front',
    outline: [
      ...runOf(garment, 'front', 'neck'),
      ...runOf(garment, 'front', 'shoulder'),
      ...armhole,
      ...drawnIn([sewn], end),
      line(end, corner),
      ...runOf(garment, 'front', 'stand'),
    ],
    lines: [
      { kind: 'seam', path: polyline([lerp(lerp(legs[0], legs[1], 0.5), point, 0.06), point]) },
      ...gatherLines(corner, end, 0, -45),
      stitching(offsetPath(armhole, -topstitch)),
    ],
    bothSides: true,
  };
  return [
    ...sleeveShapes(garment, 'front', [...stripArmhole, ...armhole], long),
    front,
    {
      id: 'yoke-front',
      outline: strip,
      lines: [stitching(offsetPath(runOf(garment, 'front', 'shoulder'), topstitch))],
      bothSides: true,
    },
  ];
};

const yokeOutline = (garment: Garment): Path => pieceOf(garment, 'yoke').runs.flatMap(({ path }) => path);

/** Direction of the shoulder on the yoke, from neck to shoulder point. */
const shoulderAngle = (garment: Garment): number =>
  angleOf(subtract(landmarkIn(garment, 'yoke', 'shoulder-point'), landmarkIn(garment, 'yoke', 'neck-point')));

/** The back with its pleat folded, and the yoke over it down from the shoulder. */
const backShapes = (garment: Garment, long: boolean): readonly SketchShape[] => {
  const yokeSeam = runOf(garment, 'yoke', 'back');
  const level = pathEnd(yokeSeam).y;
  const yokeEnd = pathStart(yokeSeam);
  const backArmhole = runOf(garment, 'back', 'armhole');
  const yokeArmhole = runOf(garment, 'yoke', 'armhole').slice(1);
  // Flat, the fall of the back's top edge closes up to the yoke's straight seam.
  const joined: Path = [line(yokeEnd, pathStart(backArmhole)), ...backArmhole];
  const side = runOf(garment, 'back', 'side');
  const end: Point = { x: pathEnd(runOf(garment, 'waist-back', 'top')).x, y: pathEnd(side).y };
  const face = -(pieceOf(garment, 'back').lines.find(({ id }) => id === 'pleat-face')?.path[0]?.from.x ?? 0);
  const half: Path = [
    line({ x: 0, y: level }, yokeEnd),
    ...joined,
    ...drawnIn(side, end),
    line(end, { x: 0, y: end.y }),
  ];
  const pleat: SketchLine = {
    kind: 'fold',
    path: polyline([
      { x: face, y: level },
      { x: face * 1.1, y: level + 0.8 * (end.y - level) },
    ]),
  };
  const both = (one: SketchLine): readonly SketchLine[] => [one, { ...one, path: mirrored(one.path) }];
  const upper = halfOf(yokeOutline(garment), landmarkIn(garment, 'yoke', 'neck-point'), shoulderAngle(garment));
  return [
    ...sleeveShapes(garment, 'back', [...yokeArmhole, ...joined], long),
    {
      id: 'back',
      outline: opened(half),
      lines: [...both(pleat), ...gatherLines({ x: 0, y: end.y }, end, 0, -45).flatMap(both)],
      bothSides: false,
    },
    {
      id: 'yoke',
      outline: openedAt(upper),
      lines: both(
        stitching(
          polyline([
            { x: 0, y: level - topstitch },
            { x: yokeEnd.x, y: level - topstitch },
          ]),
        ),
      ),
      bothSides: false,
    },
  ];
};

/** A closed half with a side along the centre, opened: that side is left out. */
const openedAt = (closed: Path): Path => {
  const centre = (point: Point): boolean => Math.abs(point.x) < topstitch / 100;
  const first = closed.findIndex(({ from, to }) => centre(from) && centre(to));
  const half = [...closed.slice(first + 1), ...closed.slice(0, first)];
  return opened(half);
};

/** The button stand on top, from neck to hem, with its buttons. */
const standShape = (garment: Garment): SketchShape => {
  const piece = pieceOf(garment, 'button-stand');
  const neck = runOf(garment, 'button-stand', 'neck');
  const hem = pathStart(runOf(garment, 'button-stand', 'hem'));
  const [left, right] = [pathStart(neck), pathEnd(neck)];
  const rows = [left.x + topstitch, right.x - topstitch].map((x) =>
    stitching(
      polyline([
        { x, y: right.y + 2 },
        { x, y: hem.y },
      ]),
    ),
  );
  const buttons = piece.lines
    .filter(({ id }) => id.startsWith('button-'))
    .map(({ path }) => sketchButton(pathPointAtLength(path, pathLength(path) / 2), 11));
  return {
    id: 'button-stand',
    outline: [...neck, line(right, hem), line(hem, { x: left.x, y: hem.y }), line({ x: left.x, y: hem.y }, left)],
    lines: [...rows, ...buttons],
    bothSides: false,
  };
};

/** The dress as it lies flat, buttoned, front and back. */
export const shirtDressSketch = (garment: Garment, view: string): FlatSketch => {
  const made = shirtDressViews[view];
  if (!made) throw new Error(`No view ${view}`);
  const long = made.sleeve === 'long';
  const collar = collarInFront(garment, made.collar);
  const waist = pathEnd(runOf(garment, 'front', 'side', 1)).y;
  return {
    front: [
      collar.behind,
      ...frontShapes(garment, long),
      ...drawnSkirt(garment, 'front', waist, made.tier),
      standShape(garment),
      ...collar.front,
    ],
    back: [
      ...backShapes(garment, long),
      ...drawnSkirt(garment, 'back', waist, made.tier),
      collarBehind(garment, made.collar),
    ],
  };
};
