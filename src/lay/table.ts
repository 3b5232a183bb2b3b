import { type DistanceFields, DistanceFieldsMaker } from './distance-fields.ts';
import { gridStep, noFitRegion, toGrid } from './nofit.ts';
import {
  hullArea,
  movePolygon,
  type Polygon,
  polygonArea,
  polygonBounds,
  rounding,
  samePolygon,
  type Turn,
  tidyPolygon,
  turnPolygon,
} from './polygon.ts';

/** One stretch of cloth to lay pieces on: x runs along the cloth and is to be kept short, y across it. */
export interface Strip {
  readonly height: number;
  /** Pieces stay this far apart. */
  readonly gap: number;
  readonly items: readonly StripItem[];
}

/** Pieces of one shape. */
export interface StripItem {
  readonly outline: Polygon;
  /** How many are laid. */
  readonly count: number;
  readonly turns: readonly Turn[];
  /** Laid with its least y exactly at 0, the fold. */
  readonly onFold: boolean;
}

/** An item as turned; its bounds begin at (0, 0). */
export interface Shape {
  readonly item: number;
  readonly turn: Turn;
  /** What must be added to the turned outline to bring its bounds to (0, 0). */
  readonly shiftX: number;
  readonly shiftY: number;
  readonly width: number;
  readonly height: number;
  readonly polygon: Polygon;
  /** The shape is this base shape flipped: −1 where it runs the other way. */
  readonly base: number;
  readonly flipX: 1 | -1;
  readonly flipY: 1 | -1;
}

/** Everything about a strip's shapes and pairs of shapes that stays the same while they are moved. */
export interface Table {
  readonly strip: Strip;
  readonly shapes: readonly Shape[];
  /** The shapes each item may take. */
  readonly shapesOf: readonly Int32Array[];
  /** The item of each copy to be laid. */
  readonly copies: Int32Array;
  readonly fields: DistanceFields;
  /**
   * For shapes a, b from `pairSize` · (a · shapes + b) on: the field, then how to enter it across and down,
   * sign and shift: u = sign · (b's place − a's) + shift.
   */
  readonly pairs: Float64Array;
  /** By item: how much overlap with it weighs; the square root of its hull's extent. */
  readonly bulk: Float64Array;
  /** Area of all copies. */
  readonly area: number;
  /** Nothing nearer than this counts as overlapping in a finished plan; the search aims a little wider. */
  readonly allowed: number;
}

/** Numbers kept for a pair of shapes. */
export const pairSize = 5;

interface Base {
  readonly item: number;
  readonly rotation: number;
  readonly polygon: Polygon;
  readonly width: number;
  readonly height: number;
}

const positiveModulo = (value: number, by: number): number => ((value % by) + by) % by;

const shapesFor = (items: readonly StripItem[]): { bases: Base[]; shapes: Shape[]; shapesOf: Int32Array[] } => {
  const bases: Base[] = [];
  const shapes: Shape[] = [];
  const shapesOf = items.map((item, index) => {
    const outline = tidyPolygon(item.outline);
    const extent = polygonBounds(outline);
    const near = rounding * Math.max(extent.maxX - extent.minX, extent.maxY - extent.minY);
    const own: number[] = [];
    for (const turn of item.turns) {
      const turned = turnPolygon(outline, turn);
      const bounds = polygonBounds(turned);
      const polygon = movePolygon(turned, -bounds.minX, -bounds.minY);
      if (own.some((other) => samePolygon((shapes[other] as Shape).polygon, polygon, near))) continue;
      // Mirroring then turning by r is turning by −r then mirroring, so one base serves all four flips.
      const sameWay = positiveModulo(turn.mirrored ? -turn.rotation : turn.rotation, 360);
      const rotation = sameWay % 180;
      const half = sameWay >= 180;
      let base = bases.findIndex((known) => known.item === index && known.rotation === rotation);
      if (base < 0) {
        const plain = turnPolygon(outline, { rotation, mirrored: false });
        const at = polygonBounds(plain);
        base = bases.length;
        bases.push({
          item: index,
          rotation,
          polygon: movePolygon(plain, -at.minX, -at.minY),
          width: at.maxX - at.minX,
          height: at.maxY - at.minY,
        });
      }
      own.push(shapes.length);
      shapes.push({
        item: index,
        turn,
        shiftX: -bounds.minX,
        shiftY: -bounds.minY,
        width: bounds.maxX - bounds.minX,
        height: bounds.maxY - bounds.minY,
        polygon,
        base,
        flipX: half !== turn.mirrored ? -1 : 1,
        flipY: half ? -1 : 1,
      });
    }
    return Int32Array.from(own);
  });
  return { bases, shapes, shapesOf };
};

/** Works out shapes, no-fit regions and distance fields for a strip; yields now and then so that the caller may stop. */
export function* makeTable(strip: Strip): Generator<void, Table> {
  const { bases, shapes, shapesOf } = shapesFor(strip.items);
  const extent = Math.max(...bases.flatMap((base) => [base.width, base.height]), 0);
  const step = gridStep(2 * extent);
  // Borders may stray by two steps: four apart is apart, and the search aims a little wider.
  const slack = 2 * step;
  const fields = new DistanceFieldsMaker(strip.gap + 3 * slack);
  const size = shapes.length;
  const pairs = new Float64Array(size * size * pairSize);
  const grids = bases.map((base) => toGrid(base.polygon, step));
  const flipped = new Map<string, ReturnType<typeof toGrid>>();
  const flip = (base: number, flipX: number, flipY: number): ReturnType<typeof toGrid> => {
    const key = `${base} ${flipX} ${flipY}`;
    const known = flipped.get(key);
    if (known) return known;
    const { polygon, width, height } = bases[base] as Base;
    const turned = polygon.map(({ x, y }) => ({ x: flipX < 0 ? width - x : x, y: flipY < 0 ? height - y : y }));
    const made = toGrid(flipX * flipY < 0 ? turned.reverse() : turned, step);
    flipped.set(key, made);
    return made;
  };
  const known = new Map<string, number>();
  const fieldOf = (a: number, b: number, flipX: number, flipY: number): number => {
    const key = `${a} ${b} ${flipX} ${flipY}`;
    let field = known.get(key);
    if (field === undefined) {
      field = fields.add(noFitRegion(grids[a] as Float64Array, flip(b, flipX, flipY), step));
      known.set(key, field);
    }
    return field;
  };
  for (let s = 0; s < size; s++) {
    for (let t = 0; t < size; t++) {
      const swap = (shapes[s] as Shape).base > (shapes[t] as Shape).base;
      const a = shapes[swap ? t : s] as Shape;
      const b = shapes[swap ? s : t] as Shape;
      // Flip both so that a is its base; swapping turns the move round.
      const field = fieldOf(a.base, b.base, a.flipX * b.flipX, a.flipY * b.flipY);
      const sign = swap ? -1 : 1;
      const shiftX = a.flipX < 0 ? a.width - b.width : 0;
      const shiftY = a.flipY < 0 ? a.height - b.height : 0;
      pairs.set([field, a.flipX * sign, shiftX, a.flipY * sign, shiftY], (s * size + t) * pairSize);
      yield;
    }
  }
  const copies = strip.items.flatMap((item, index) => Array.from({ length: item.count }, () => index));
  return {
    strip,
    shapes,
    shapesOf,
    copies: Int32Array.from(copies),
    fields: fields.make(),
    pairs,
    bulk: Float64Array.from(strip.items, (item) => Math.sqrt(Math.sqrt(hullArea(item.outline)))),
    area: strip.items.reduce((sum, item) => sum + item.count * Math.abs(polygonArea(item.outline)), 0),
    allowed: slack,
  };
}
