import {
  angleOf,
  applyToPath,
  flattenPath,
  line,
  midpoint,
  mirrorX,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathPointAtLength,
  pathStart,
  polyline,
  reversePath,
  rotation,
  smoothThrough,
  subtract,
  tolerance,
  translation,
} from '../geometry/index.ts';
import { type Garment, pieceOf } from '../pattern/index.ts';
import type { JacketView } from './jacket-plan.ts';
import { armholeOf, edgeAt, lengthOf } from './jacket-shape-measures.ts';
import { backCollar, bothHalves, frontCollar } from './jacket-sketch-collar.ts';
import { landmarkIn, runOf } from './shape-garment.ts';
import { fallingCurve } from './side-seam.ts';
import { type FlatSketch, hangFrom, type SketchLine, type SketchShape, sketchButton } from './sketch.ts';

/** How steeply a jacket's sleeves are drawn to hang, radians below the level. */
const sleeveHangs = 1.02;

/** The side of half a body with its seams closed, from the underarm down to the hem. */
const sewnSide = (
  garment: Garment,
  inner: 'front' | 'back',
  outer: 'side-front' | 'side-back',
  underarm: Point,
): Path => {
  const lost = (y: number): number =>
    edgeAt(garment, outer, 'princess', y).x -
    edgeAt(garment, inner, 'princess', y).x +
    (inner === 'back' ? edgeAt(garment, 'back', 'centre-back', y).x : 0);
  const sewn = (at: Point): Point => ({ x: at.x - lost(at.y), y: at.y });
  const waist = sewn(landmarkIn(garment, outer, 'waist-side'));
  const hip = sewn(landmarkIn(garment, outer, 'hip-side'));
  const slope = (waist.x - underarm.x) / (waist.y - underarm.y);
  const below = (hip.x - waist.x) / (hip.y - waist.y);
  const atWaist = slope * below > 0 ? (2 * slope * below) / (slope + below) : 0;
  const hem = pathEnd(runOf(garment, outer, 'side')).y;
  return [
    fallingCurve(underarm, waist, 0.4 * slope, atWaist),
    fallingCurve(waist, hip, atWaist, 0),
    line(hip, { x: hip.x, y: hem }),
  ];
};

/** Half a sleeve beside its armhole, its back seam drawn where it is seen. */
const sleeveShape = (garment: Garment, armhole: Path, half: 'front' | 'back'): SketchShape => {
  const hemPath = runOf(garment, 'sleeve', 'hem');
  const hemAt = midpoint(pathStart(hemPath), pathEnd(hemPath)).y;
  const { outline, at } = hangFrom(
    armhole,
    {
      length: hemAt - landmarkIn(garment, 'sleeve', 'cap-top').y,
      hem: (lengthOf(garment, 'sleeve', 'hem') + lengthOf(garment, 'under-sleeve', 'hem')) / 2,
      below: hemAt - landmarkIn(garment, 'under-sleeve', 'underarm').y,
    },
    sleeveHangs,
  );
  // Behind, the seam leaves the armhole above its middle and runs over the elbow to the hem.
  const leaves = pathPointAtLength(armhole, 0.4 * pathLength(armhole));
  const seam: SketchLine = {
    kind: 'seam',
    path: smoothThrough([leaves, at(0.47, 0.24), at(0.58, 1)]),
  };
  return { id: `sleeve-${half}`, outline, lines: half === 'back' ? [seam] : [], bothSides: true };
};

/** Half of the front, seams closed: its outline with the stand, and its princess seam. */
const frontHalf = (garment: Garment): { readonly outline: Path; readonly seam: Path; readonly armhole: Path } => {
  const apex = landmarkIn(garment, 'front', 'apex');
  const shoulder = runOf(garment, 'front', 'shoulder');
  const swung = pathStart(runOf(garment, 'side-front', 'shoulder'));
  const turn = angleOf(subtract(pathEnd(shoulder), apex)) - angleOf(subtract(swung, apex));
  const back = rotation(turn, apex);
  const armhole = applyToPath(back, armholeOf(garment, 'side-front'));
  const side = sewnSide(garment, 'front', 'side-front', pathEnd(armhole));
  const corner = pathStart(runOf(garment, 'front', 'front-edge'));
  const outline: Path = [
    ...runOf(garment, 'front', 'neck'),
    line(pathStart(shoulder), pathStart(armhole)),
    ...armhole,
    ...side,
    line(pathEnd(side), corner),
    ...runOf(garment, 'front', 'front-edge'),
    ...runOf(garment, 'front', 'neck-stand'),
  ];
  return { outline, seam: runOf(garment, 'front', 'princess'), armhole };
};

/** Half of the back, seams closed, its centre on x = 0. */
const backHalf = (garment: Garment): { readonly outline: Path; readonly seam: Path; readonly armhole: Path } => {
  const shoulder = runOf(garment, 'back', 'shoulder');
  const apart = subtract(pathEnd(shoulder), pathStart(runOf(garment, 'side-back', 'shoulder')));
  const armhole = applyToPath(translation(apart), armholeOf(garment, 'side-back'));
  const side = sewnSide(garment, 'back', 'side-back', pathEnd(armhole));
  const nape = landmarkIn(garment, 'back', 'nape');
  const hem = pathEnd(side).y;
  const princess = runOf(garment, 'back', 'princess');
  const [top, low] = [pathStart(princess), pathEnd(princess)];
  const seam = Array.from({ length: 25 }, (_, i): Point => {
    const y = top.y + (i / 24) * (low.y - top.y);
    if (i === 0) return top;
    const x = i === 24 ? low.x : edgeAt(garment, 'back', 'princess', y).x;
    const centre =
      y <= nape.y
        ? 0
        : i === 24
          ? pathStart(runOf(garment, 'back', 'centre-back')).x
          : edgeAt(garment, 'back', 'centre-back', y).x;
    return { x: x - centre, y };
  });
  const outline: Path = [
    ...runOf(garment, 'back', 'neck'),
    line(pathStart(shoulder), pathStart(armhole)),
    ...armhole,
    ...side,
    line(pathEnd(side), { x: 0, y: hem }),
  ];
  return { outline: bothHalves(outline), seam: polyline(seam), armhole };
};

/** The inside of the back seen over the front's neck, where there is no collar. */
const insideNeck = (garment: Garment): Path => {
  const front = runOf(garment, 'front', 'neck');
  const back = runOf(garment, 'back', 'neck');
  const atShoulder = pathEnd(front);
  const lifted = applyToPath(translation(subtract(atShoulder, pathEnd(back))), reversePath(back));
  const nape: Point = { x: 0, y: pathEnd(lifted).y };
  return bothHalves([...front, ...lifted.slice(0, -1), { ...(lifted.at(-1) as Path[number]), to: nape }]);
};

/** The pocket as it lies on the sewn front, put together from its place on both panels. */
const pocketOn = (garment: Garment): Path => {
  const place = (piece: string): Path => {
    const found = pieceOf(garment, piece).lines.find(({ id }) => id === 'pocket');
    if (!found) throw new Error(`No pocket on ${piece}`);
    return found.path;
  };
  const [inner, outer] = [place('front'), place('side-front')];
  const [top, low] = [pathStart(inner), pathEnd(inner)];
  const apart = { top: pathStart(outer).x - top.x, low: pathEnd(outer).x - low.x };
  const sewn = ({ x, y }: Point): Point => ({
    x: x - apart.top - ((y - top.y) / (low.y - top.y)) * (apart.low - apart.top),
    y,
  });
  return polyline(
    [...flattenPath(outer, tolerance.kink / 4).map(sewn), ...flattenPath(reversePath(inner), tolerance.kink / 4)],
    true,
  );
};

/** Where the buttons are, from the pieces' marks. */
const buttonsOf = (garment: Garment): readonly SketchLine[] =>
  pieceOf(garment, 'front')
    .lines.filter(({ id }) => id.startsWith('button-'))
    .map(({ path }) => sketchButton({ x: 0, y: pathStart(path).y }, 22));

/**
 * The jacket lying flat, its seams closed, buttoned right over left: the half that lies on top is drawn last. Put
 * together from the pieces: widths at waist and hip are those of the sewn garment.
 */
export const jacketSketch = (garment: Garment, view: JacketView): FlatSketch => {
  const front = frontHalf(garment);
  const back = backHalf(garment);
  const mirrored = (path: Path): Path => applyToPath(mirrorX(), path);
  const half = (id: string, lines: readonly SketchLine[], flipped: boolean): SketchShape => ({
    id,
    outline: flipped ? mirrored(front.outline) : front.outline,
    lines: lines.map((one) => (flipped ? { ...one, path: mirrored(one.path) } : one)),
    bothSides: false,
  });
  const seam: SketchLine = { kind: 'seam', path: front.seam };
  const collar = view === 'collar' ? frontCollar(garment) : null;
  const inside: SketchShape = {
    id: 'inside',
    outline: collar ? collar.inside : insideNeck(garment),
    lines: [],
    bothSides: false,
    inside: true,
  };
  const backSeams: readonly SketchLine[] = [
    { kind: 'seam', path: back.seam },
    { kind: 'seam', path: mirrored(back.seam) },
    {
      kind: 'seam',
      path: polyline([
        landmarkIn(garment, 'back', 'nape'),
        { x: 0, y: pathEnd(runOf(garment, 'side-back', 'side')).y },
      ]),
    },
  ];
  return {
    front: [
      sleeveShape(garment, front.armhole, 'front'),
      inside,
      half('front-under', [seam], false),
      half('front', [seam, ...buttonsOf(garment)], true),
      { id: 'pocket', outline: pocketOn(garment), lines: [], bothSides: true },
      ...(collar
        ? [
            { id: 'collar-inside', outline: collar.inside, lines: [], bothSides: false, inside: true },
            { id: 'collar', outline: collar.half, lines: [], bothSides: true },
          ]
        : []),
    ],
    back: [
      sleeveShape(garment, back.armhole, 'back'),
      { id: 'back', outline: back.outline, lines: backSeams, bothSides: false },
      ...(view === 'collar' ? [{ id: 'collar', outline: backCollar(garment), lines: [], bothSides: false }] : []),
    ],
  };
};
