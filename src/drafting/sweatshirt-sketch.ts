import {
  add,
  angleOf,
  applyToPath,
  applyToPoint,
  compose,
  directionAt,
  distance,
  identity,
  lerp,
  line,
  mirrorX,
  offsetPath,
  type Path,
  type Point,
  pathEnd,
  pathStart,
  reversePath,
  rotation,
  scale,
  subtract,
  type Transform,
  translation,
} from '../geometry/index.ts';
import { type Garment, notchPlace, pieceOf } from '../pattern/index.ts';
import { runOf } from './shape-garment.ts';
import { type FlatSketch, pieceShape, type SketchLine, type SketchShape } from './sketch.ts';
import { bands, type SweatshirtView } from './sweatshirt-plan.ts';

type Half = 'front' | 'back';

/** Where a notch lies, by piece and id. */
const notchIn = (garment: Garment, piece: string, id: string): Point => {
  const found = pieceOf(garment, piece).notches.find((notch) => notch.id === id);
  if (!found) throw new Error(`${piece} has no notch ${id}`);
  return notchPlace(pieceOf(garment, piece), found).point;
};

/** From the sleeve's plane on to half a body lying flat: both have the same raglan from the neck to its notch. */
const placeOn = (garment: Garment, which: Half): Transform => {
  const turned = which === 'front' ? identity : mirrorX();
  const edge = runOf(garment, 'sleeve', `raglan-${which}`);
  const top = applyToPoint(turned, which === 'front' ? pathEnd(edge) : pathStart(edge));
  const notch = applyToPoint(turned, notchIn(garment, 'sleeve', `raglan-${which}`));
  const onto = pathStart(runOf(garment, which, 'raglan'));
  const ontoNotch = notchIn(garment, which, `raglan-${which}`);
  return compose(
    turned,
    translation(subtract(onto, top)),
    rotation(angleOf(subtract(ontoNotch, onto)) - angleOf(subtract(notch, top)), onto),
  );
};

/** The half of the sleeve that is seen, in the sleeve's plane: from the shoulder point round by the line over the arm. */
const sleeveHalf = (
  garment: Garment,
  which: Half,
): { readonly outline: Path; readonly neck: Path; readonly hem: Path } => {
  const raglan = runOf(garment, 'sleeve', `raglan-${which}`);
  const under = runOf(garment, 'sleeve', `underarm-${which}`);
  const neck = runOf(garment, 'sleeve', 'neck', which === 'front' ? 0 : 1);
  const shoulder: Point = { x: 0, y: 0 };
  if (which === 'front') {
    const foot = pathStart(under);
    const centre: Point = { x: 0, y: foot.y };
    return {
      outline: [
        ...raglan,
        ...neck,
        line(pathEnd(neck), shoulder),
        line(shoulder, centre),
        line(centre, foot),
        ...under,
      ],
      neck,
      hem: [line(centre, foot)],
    };
  }
  const foot = pathEnd(under);
  const centre: Point = { x: 0, y: foot.y };
  return {
    outline: [
      ...raglan,
      ...under,
      line(foot, centre),
      line(centre, shoulder),
      line(shoulder, pathStart(neck)),
      ...neck,
    ],
    neck: reversePath(neck),
    hem: [line(centre, foot)],
  };
};

/** A band drawn in below an edge: as wide as it is finished, and as long as it is cut. */
const below = (
  id: string,
  edge: readonly [Point, Point],
  width: number,
  share: number,
  bothSides: boolean,
): SketchShape => {
  const [from, to] = edge;
  const down = scale(directionAt(angleOf(subtract(to, from)) + Math.PI / 2), width);
  const sign = bothSides ? 1 : 1;
  const middle = lerp(from, to, 0.5);
  const end = (at: Point): Point => add(add(middle, scale(subtract(at, middle), share)), scale(down, sign));
  return {
    id,
    outline: [line(from, to), line(to, end(to)), line(end(to), end(from)), line(end(from), from)],
    lines: ribs(from, to, end(from), end(to)),
    bothSides,
  };
};

/** Every how many mm a rib is drawn on a band. */
const ribEvery = 16;

const ribs = (from: Point, to: Point, endFrom: Point, endTo: Point): readonly SketchLine[] => {
  const count = Math.floor(distance(from, to) / ribEvery);
  return Array.from({ length: Math.max(count - 1, 0) }, (_, i): SketchLine => {
    const at = (i + 1) / count;
    return { kind: 'gathers', path: [line(lerp(from, to, at), lerp(endFrom, endTo, at))] };
  });
};

const face = (
  garment: Garment,
  which: Half,
  view: SweatshirtView,
  lines: readonly SketchLine[],
): readonly SketchShape[] => {
  const place = placeOn(garment, which);
  const half = sleeveHalf(garment, which);
  const [hemFrom, hemTo] = [pathStart(half.hem), pathEnd(half.hem)];
  const cuffed = view !== 'three-quarter';
  const up = 22;
  const sleeve: SketchShape = {
    id: `sleeve-${which}`,
    outline: applyToPath(place, half.outline),
    lines: cuffed
      ? []
      : [
          {
            kind: 'stitching',
            path: applyToPath(place, [line({ ...hemFrom, y: hemFrom.y - up }, { x: hemTo.x * 1.02, y: hemTo.y - up })]),
          },
        ],
    bothSides: true,
  };
  // Seen folded, a cuff lies centred on the sleeve's end; the band of the neck stands inside the neckline.
  const ends: readonly [Point, Point] = [applyToPoint(place, hemTo), applyToPoint(place, hemFrom)];
  const downwards = which === 'front' ? ends : ends;
  const cuff = cuffed ? [below(`cuff-${which}`, [downwards[1], downwards[0]], bands.cuff.width, 0.86, true)] : [];
  const hem = runOf(garment, which, 'hem');
  const wide = pathStart(hem);
  const hemBand = below(
    `hem-${which}`,
    [
      { x: wide.x, y: wide.y },
      { x: -wide.x, y: wide.y },
    ],
    -bands.hem.width,
    0.94,
    false,
  );
  const neck: Path = [...runOf(garment, which, 'neck'), ...applyToPath(place, half.neck)];
  const inner = offsetPath(neck, bands.neck.width);
  const halfBand: Path = [...inner, line(pathEnd(inner), pathEnd(neck)), ...reversePath(neck)];
  const band: SketchShape = {
    id: `neck-${which}`,
    outline: [...halfBand, ...applyToPath(mirrorX(), reversePath(halfBand))],
    lines: [],
    bothSides: false,
  };
  return [...cuff, sleeve, hemBand, pieceShape(garment, which, { lines }), band];
};

/**
 * Front and back lying flat, the sleeves at the angle at which they are cut. Through the neck of the front the inside of
 * the back is seen.
 */
export const sweatshirtSketch = (garment: Garment, view: SweatshirtView): FlatSketch => {
  const placement = pieceOf(garment, 'front').lines.find(({ id }) => id === 'pocket');
  const pocket: readonly SketchLine[] = placement ? [{ kind: 'seam', path: placement.path }] : [];
  const back = face(garment, 'back', view, []);
  const inside = back.slice(-2).map((shape) => ({ ...shape, id: `${shape.id}-inside`, inside: true, lines: [] }));
  return { front: [...inside, ...face(garment, 'front', view, pocket)], back };
};
