import {
  add,
  applyToPath,
  cubic,
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
} from '../geometry/index.ts';
import { edgeLength, type Garment, pieceOf } from '../pattern/index.ts';
import { runOf } from './shape-garment.ts';
import { mirrored, opened, overShoulder, stitching, topstitch } from './shirt-dress-sketch-parts.ts';
import { type SketchShape, sketchButton } from './sketch.ts';

/** How far a collar that stands is seen from straight in front, as a share of its height. */
const foreshortened = 0.85;

/** Front necklines and the yoke's strip of it, from the button stand's edge on the centre to the shoulder. */
const neckline = (garment: Garment): Path => {
  const strip = applyToPath(overShoulder(garment), reversePath(runOf(garment, 'yoke', 'neck').slice(1)));
  const covered = runOf(garment, 'button-stand', 'neck').slice(1);
  return [...covered, ...runOf(garment, 'front', 'neck'), ...strip];
};

/** The collar from in front: its inside behind the neck, and what of it stands or turns over in front. */
export const collarInFront = (
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
  // One stand laps over the other: its end on the far side of the centre, and the button on it.
  const lap = 0.5 * edgeLength(pieceOf(garment, 'button-stand'), 'neck');
  const end = polyline([pathPointAtLength(neck, lap), pathPointAtLength(top, lap)]);
  const stand: SketchShape = {
    id: 'collar-stand',
    outline: [
      ...reversePath(mirrored(shownNeck)),
      ...shownNeck,
      line(pathEnd(shownNeck), pathEnd(shownTop)),
      ...reversePath(shownTop),
      ...mirrored(shownTop),
      line(pathEnd(mirrored(shownTop)), pathEnd(mirrored(shownNeck))),
    ],
    lines: [
      { kind: 'seam', path: end },
      ...(turned
        ? []
        : [neck, mirrored(neck)].map((half, i) =>
            stitching(offsetPath(half, (i === 0 ? 1 : -1) * (height - topstitch))),
          )),
      sketchButton({ x: 0, y: pathStart(neck).y - height / 2 }, 11),
    ],
    bothSides: false,
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
  const crest = add(pathEnd(neck), { x: 5, y: -14 });
  const turnedOver: SketchShape = {
    id: 'collar',
    outline: [
      ...fold,
      cubic(high, lerp(high, crest, 0.7), lerp(outside, crest, 0.7), outside),
      cubic(outside, lerp(outside, add(tip, { x: 30, y: -20 }), 0.5), add(tip, { x: 14, y: -18 }), tip),
      line(tip, pathStart(fold)),
    ],
    lines: [],
    bothSides: true,
  };
  return { behind, front: [stand, turnedOver] };
};

/** The collar from behind: standing up from the neck, or turned down over it. */
export const collarBehind = (garment: Garment, turned: boolean): SketchShape => {
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
