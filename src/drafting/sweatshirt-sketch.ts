import {
  add,
  angleOf,
  applyToPath,
  applyToPoint,
  compose,
  cubic,
  distance,
  endTangent,
  identity,
  lerp,
  line,
  mirrorX,
  normalize,
  offsetPath,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathStart,
  reversePath,
  rotation,
  scale,
  splitPathAtLength,
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

/** The half of the sleeve that is seen, on its half of the body: its outline, its neck, and its end from the line over the arm to the seam. */
interface SeenSleeve {
  readonly outline: Path;
  readonly neck: Path;
  readonly shoulder: Point;
  readonly end: readonly [Point, Point];
  /** Direction of the line over the arm. */
  readonly down: Point;
}

/** As it lies sewn: along the body's raglan, then straight from the body's underarm. */
const seenSleeve = (garment: Garment, which: Half): SeenSleeve => {
  const place = placeOn(garment, which);
  const raglan = runOf(garment, which, 'raglan');
  const under = runOf(garment, 'sleeve', `underarm-${which}`);
  const run = runOf(garment, 'sleeve', 'neck', which === 'front' ? 0 : 1);
  const neck = applyToPath(place, which === 'front' ? run : reversePath(run));
  const foot = which === 'front' ? pathStart(under) : pathEnd(under);
  const [shoulder, over, inside] = [{ x: 0, y: 0 }, { x: 0, y: foot.y }, foot].map((at) => applyToPoint(place, at)) as [
    Point,
    Point,
    Point,
  ];
  return {
    outline: [
      ...neck,
      line(pathEnd(neck), shoulder),
      line(shoulder, over),
      line(over, inside),
      line(inside, pathEnd(raglan)),
      ...reversePath(raglan),
    ],
    neck,
    shoulder,
    end: [over, inside],
    down: normalize(subtract(over, shoulder)),
  };
};

/** A band sewn to the end of a half: as wide as it is finished, drawn in to its share of the edge. */
const bandBelow = (
  id: string,
  [from, to]: readonly [Point, Point],
  down: Point,
  share: number,
  bothSides: boolean,
): SketchShape => {
  const middle = lerp(from, to, 0.5);
  const end = (at: Point): Point => add(add(middle, scale(subtract(at, middle), share)), down);
  const count = Math.floor(distance(from, to) / ribEvery);
  return {
    id,
    outline: [line(from, to), line(to, end(to)), line(end(to), end(from)), line(end(from), from)],
    lines: Array.from({ length: Math.max(count - 1, 0) }, (_, i): SketchLine => {
      const at = lerp(from, to, (i + 1) / count);
      return { kind: 'gathers', path: [line(at, end(at))] };
    }),
    bothSides,
  };
};

/** Every how many mm a rib is drawn on a band. */
const ribEvery = 16;

/** A sleeve's hem is stitched this far up, mm. */
const hemUp = 22;

/** A path that leaves its own last third to end elsewhere, in one even curve. */
const endedAt = (path: Path, to: Point): Path => {
  const [kept] = splitPathAtLength(path, (2 / 3) * pathLength(path));
  if (!kept) return path;
  const from = pathEnd(kept);
  const on = add(from, scale(endTangent(kept), distance(from, to) / 2));
  return [...kept, cubic(from, lerp(from, on, 2 / 3), lerp(to, on, 2 / 3), to)];
};

/** The band inside the neckline, both halves in one. */
const neckBand = (garment: Garment, which: Half, sleeveNeck: Path, shoulder: Point): SketchShape => {
  const neck: Path = [...runOf(garment, which, 'neck'), ...sleeveNeck];
  // It ends on the shoulder's own line, so that front and back meet there.
  const on = normalize(subtract(pathEnd(neck), shoulder));
  const inner = endedAt(offsetPath(neck, bands.neck.width), add(pathEnd(neck), scale(on, bands.neck.width)));
  const half: Path = [...inner, line(pathEnd(inner), pathEnd(neck)), ...reversePath(neck)];
  return {
    id: `neck-${which}`,
    outline: [...half, ...applyToPath(mirrorX(), reversePath(half))],
    lines: [],
    bothSides: false,
  };
};

const face = (
  garment: Garment,
  which: Half,
  view: SweatshirtView,
  lines: readonly SketchLine[],
): readonly SketchShape[] => {
  const { outline, neck, shoulder, end, down } = seenSleeve(garment, which);
  const cuffed = view !== 'three-quarter';
  const up = scale(down, -hemUp);
  const stitching: SketchLine = { kind: 'stitching', path: [line(add(end[0], up), add(end[1], up))] };
  const side = pathStart(runOf(garment, which, 'hem'));
  return [
    { id: `sleeve-${which}`, outline, lines: cuffed ? [] : [stitching], bothSides: true },
    ...(cuffed ? [bandBelow(`cuff-${which}`, end, scale(down, bands.cuff.width), bands.cuff.share, true)] : []),
    bandBelow(`hem-${which}`, [{ x: -side.x, y: side.y }, side], { x: 0, y: bands.hem.width }, bands.hem.share, false),
    pieceShape(garment, which, { lines }),
    neckBand(garment, which, neck, shoulder),
  ];
};

/** The pocket's opening is hemmed: a row inside it. The opening is the second straight of the placement. */
const openingStitch = (placement: Path): readonly SketchLine[] => {
  const opening = placement[1];
  return opening ? [{ kind: 'stitching', path: applyToPath(translation({ x: -18, y: 0 }), [opening]) }] : [];
};

/**
 * Front and back lying flat, the sleeves at the angle at which they are cut. Through the neck of the front the inside of
 * the back is seen.
 */
export const sweatshirtSketch = (garment: Garment, view: SweatshirtView): FlatSketch => {
  const placement = pieceOf(garment, 'front').lines.find(({ id }) => id === 'pocket');
  const pocket: readonly SketchLine[] = placement
    ? [{ kind: 'seam', path: placement.path }, ...openingStitch(placement.path)]
    : [];
  const back = face(garment, 'back', view, []);
  const inside = back.slice(-2).map((shape) => ({ ...shape, id: `${shape.id}-inside`, inside: true, lines: [] }));
  return { front: [...inside, ...face(garment, 'front', view, pocket)], back };
};
