import {
  add,
  angleOf,
  applyToPath,
  applyToPoint,
  compose,
  cubic,
  distance,
  endTangent,
  lerp,
  line,
  mirrorX,
  offsetPath,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathPointAtLength,
  pathStart,
  polyline,
  reversePath,
  rotation,
  scale,
  startTangent,
  subPath,
  subtract,
  type Transform,
  translation,
} from '../geometry/index.ts';
import { dartOf, edgeLength, type Garment, pieceOf } from '../pattern/index.ts';
import { landmarkIn, runOf } from './shape-garment.ts';
import { shirtDressViews } from './shirt-dress-plan.ts';
import { drawnSkirt, gatherLines } from './shirt-dress-sketch-skirt.ts';
import {
  type FlatSketch,
  halfOf,
  hangFrom,
  type SketchLine,
  type SketchShape,
  sketchButton,
  sleeveHem,
} from './sketch.ts';

/** How far a collar that stands is seen from straight in front, as a share of its height. */
const foreshortened = 0.85;

/** How steeply sleeves hang, radians below the level: a long one nearly down, a short one standing out. */
const hang = { long: 0.98, short: 0.45 } as const;

/** How near the edge topstitching runs, mm. */
const topstitch = 5;

const mirrored = (path: Path): Path => applyToPath(mirrorX(), path);

/** Half a shape closed down the centre line, opened to both halves. */
const opened = (half: Path): Path => [...half, ...mirrored(reversePath(half))];

const stitching = (path: Path): SketchLine => ({ kind: 'stitching', path });

/** Lays the yoke's front strip where it lies on the front: turned back over the shoulder. */
const overShoulder = (garment: Garment): Transform => {
  const seam = runOf(garment, 'yoke', 'front');
  const onFront = runOf(garment, 'front', 'shoulder');
  const turned = compose(mirrorX(pathStart(seam).x), translation(subtract(pathStart(onFront), pathStart(seam))));
  const to = angleOf(subtract(pathEnd(onFront), pathStart(onFront)));
  const from = angleOf(subtract(applyToPoint(turned, pathEnd(seam)), pathStart(onFront)));
  return compose(turned, rotation(to - from, pathStart(onFront)));
};

/** How far above the waistband the bodice blouses over it, mm. */
const blouse = 60;

/** The bodice's side, from underarm to waistband, drawn in to where the waistband's side is. */
const drawnIn = (side: Path, to: Point): Path => {
  const kept = subPath(side, 0, pathLength(side) - blouse);
  const from = pathEnd(kept);
  return [...kept, cubic(from, add(from, scale(endTangent(kept), 0.5 * blouse)), { x: from.x - 2, y: to.y - 2 }, to)];
};

interface Cuff {
  readonly width: number;
  readonly depth: number;
}

/** A sleeve hung from an armhole, with its cuff or hem. */
const sleeveShapes = (
  garment: Garment,
  half: 'front' | 'back',
  armhole: Path,
  long: boolean,
): readonly SketchShape[] => {
  const sleeve = pieceOf(garment, 'sleeve');
  const low = runOf(garment, 'sleeve', long ? 'wrist' : 'hem');
  const cuff: Cuff | null = long
    ? {
        width: edgeLength(pieceOf(garment, 'cuff'), 'wrist') / 2,
        depth: edgeLength(pieceOf(garment, 'cuff'), 'end'),
      }
    : null;
  const length = pathStart(low).y - landmarkIn(garment, 'sleeve', 'cap-top').y;
  const { outline, at } = hangFrom(
    armhole,
    {
      length,
      // Pleated into its cuff, a sleeve is hardly wider than it where it is sewn on.
      hem: cuff ? 1.12 * cuff.width : pathLength(low) / 2,
      below: edgeLength(sleeve, 'underarm-front'),
    },
    cuff ? hang.long : hang.short,
  );
  const hung: SketchShape = {
    id: `sleeve-${half}`,
    outline,
    lines: cuff
      ? [
          ...[0.3, 0.5].map(
            (across): SketchLine => ({ kind: 'gathers', path: polyline([at(across, 1), at(across, 0.88)]) }),
          ),
          ...(half === 'back' ? [{ kind: 'seam' as const, path: polyline([at(0.68, 1), at(0.68, 0.8)]) }] : []),
        ]
      : [sleeveHem(at, 25 / length)],
    bothSides: true,
  };
  if (!cuff) return [hung];
  const wrist = (across: number, down: number): Point => {
    const [outer, inner] = [at(0, 1), at(1, 1)];
    const inset = 0.06 + 0.88 * across;
    const middle = lerp(outer, inner, inset);
    return add(middle, {
      x: (-(inner.y - outer.y) / distance(outer, inner)) * -down,
      y: ((inner.x - outer.x) / distance(outer, inner)) * -down,
    });
  };
  const band: SketchShape = {
    id: `cuff-${half}`,
    outline: polyline([wrist(0, 0), wrist(1, 0), wrist(1, cuff.depth), wrist(0, cuff.depth)], true),
    lines: [
      stitching(polyline([wrist(0, cuff.depth - topstitch), wrist(1, cuff.depth - topstitch)])),
      ...(half === 'back' ? [sketchButton(wrist(0.72, cuff.depth / 2), 11)] : []),
    ],
    bothSides: true,
  };
  return [hung, band];
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

/** Front necklines and the yoke's strip of it, from the button stand's edge on the centre to the shoulder. */
const neckline = (garment: Garment): Path => {
  const strip = applyToPath(overShoulder(garment), reversePath(runOf(garment, 'yoke', 'neck').slice(1)));
  const covered = runOf(garment, 'button-stand', 'neck').slice(1);
  return [...covered, ...runOf(garment, 'front', 'neck'), ...strip];
};

/** The collar from in front: its inside behind the neck, and what of it stands or turns over in front. */
const collarInFront = (
  garment: Garment,
  turned: boolean,
): { readonly behind: SketchShape; readonly front: readonly SketchShape[] } => {
  const neck = neckline(garment);
  const height = foreshortened * edgeLength(pieceOf(garment, 'collar-stand'), 'centre-back');
  const top = offsetPath(neck, height);
  const high = pathEnd(top);
  const back: Point = { x: 0, y: high.y - 0.55 * height };
  const behind: SketchShape = {
    id: 'collar-inside',
    outline: opened([
      cubic(back, { x: 0.6 * high.x, y: back.y }, { x: high.x, y: lerp(back, high, 0.6).y }, high),
      ...reversePath(top),
    ]),
    lines: [],
    bothSides: false,
    inside: true,
  };
  // Under a turned collar only the stand's front shows.
  const shownNeck = turned ? subPath(neck, 0, 0.4 * pathLength(neck)) : neck;
  const shownTop = turned ? subPath(top, 0, 0.4 * pathLength(top)) : top;
  const stand: SketchShape = {
    id: 'collar-stand',
    outline: [
      ...shownNeck,
      line(pathEnd(shownNeck), pathEnd(shownTop)),
      ...reversePath(shownTop),
      line(pathStart(top), pathStart(neck)),
    ],
    lines: turned ? [] : [stitching(offsetPath(neck, height - topstitch))],
    bothSides: true,
  };
  if (!turned) return { behind, front: [stand] };
  const point = edgeLength(pieceOf(garment, 'collar'), 'front');
  const fall = edgeLength(pieceOf(garment, 'collar'), 'centre-back');
  const fold = subPath(top, 0.04 * pathLength(top), pathLength(top));
  const tip = add(pathStart(neck), { x: 0.62 * point, y: 0.66 * point });
  // Where it turns over the shoulder it lies on the yoke.
  const outside = add(
    pathEnd(neck),
    add(scale(startTangent(runOf(garment, 'front', 'shoulder')), 0.62 * fall), { x: 0, y: -2 }),
  );
  const turnedOver: SketchShape = {
    id: 'collar',
    outline: [
      ...fold,
      line(high, outside),
      cubic(outside, lerp(outside, add(tip, { x: 30, y: -20 }), 0.5), add(tip, { x: 14, y: -18 }), tip),
      line(tip, pathStart(fold)),
    ],
    lines: [],
    bothSides: true,
  };
  return { behind, front: [stand, turnedOver] };
};

/** The collar from behind: standing up from the neck, or turned down over it. */
const collarBehind = (garment: Garment, turned: boolean): SketchShape => {
  const neck = runOf(garment, 'yoke', 'neck').slice(0, 1);
  const height = foreshortened * edgeLength(pieceOf(garment, 'collar-stand'), 'centre-back');
  const nape = pathStart(neck);
  const side = pathEnd(neck);
  const top: Path = [
    cubic(
      { x: 0, y: nape.y - height },
      { x: 0.5 * side.x, y: nape.y - height },
      { x: 0.86 * side.x, y: side.y - 0.95 * height },
      { x: 0.9 * side.x, y: side.y - 0.8 * height },
    ),
  ];
  const below = turned ? edgeLength(pieceOf(garment, 'collar'), 'centre-back') - height : 0;
  const low: Path = turned
    ? [
        cubic(
          { x: side.x + 16, y: side.y + 10 },
          { x: 0.8 * side.x, y: nape.y + below },
          { x: 0.4 * side.x, y: nape.y + below },
          { x: 0, y: nape.y + below },
        ),
      ]
    : reversePath(neck);
  return {
    id: 'collar',
    outline: opened([...top, line(pathEnd(top), pathStart(low)), ...low]),
    lines: [],
    bothSides: false,
  };
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
  const standButton: SketchShape = {
    id: 'collar-button',
    outline: sketchButton({ x: 0, y: pathStart(neckline(garment)).y - 13 }, 11).path,
    lines: [],
    bothSides: false,
  };
  return {
    front: [
      collar.behind,
      ...frontShapes(garment, long),
      ...drawnSkirt(garment, 'front', waist, made.tier),
      standShape(garment),
      ...collar.front,
      standButton,
    ],
    back: [
      ...backShapes(garment, long),
      ...drawnSkirt(garment, 'back', waist, made.tier),
      collarBehind(garment, made.collar),
    ],
  };
};
