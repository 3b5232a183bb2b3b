import { areaD, FillRule, intersectD, type PathD } from 'clipper2-ts';
import type { Spot } from './path.ts';

export interface PrintedPlacement {
  readonly id: string | number;
  readonly rotation: number;
  readonly x: number;
  readonly y: number;
  readonly mirrored: boolean;
}

export interface PrintedLayout {
  readonly density: number;
  readonly length: number;
  readonly placed: readonly PrintedPlacement[];
}

export interface AskedItem {
  readonly id: string | number;
  readonly demand: number;
  readonly orientations: readonly number[];
  /** Half of the copies must be mirror images; otherwise none may be. */
  readonly mirrored?: boolean;
  readonly spots: readonly Spot[];
}

export interface Asked {
  readonly width: number;
  readonly items: readonly AskedItem[];
}

const put = (spots: readonly Spot[], placement: PrintedPlacement): readonly Spot[] => {
  const angle = (placement.rotation * Math.PI) / 180;
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  return spots.map((spot) => {
    const x = placement.mirrored ? -spot.x : spot.x;
    return { x: x * cos - spot.y * sin + placement.x, y: x * sin + spot.y * cos + placement.y };
  });
};

const asPath = (spots: readonly Spot[]): PathD => spots.map(({ x, y }) => ({ x, y }));

const boxOf = (spots: readonly Spot[]) => ({
  minX: Math.min(...spots.map((spot) => spot.x)),
  maxX: Math.max(...spots.map((spot) => spot.x)),
  minY: Math.min(...spots.map((spot) => spot.y)),
  maxY: Math.max(...spots.map((spot) => spot.y)),
});

const areaOf = (spots: readonly Spot[]): number => Math.abs(areaD(asPath(spots)));

/** Area two placed shapes share. */
const shared = (a: readonly Spot[], b: readonly Spot[]): number =>
  intersectD([asPath(a)], [asPath(b)], FillRule.NonZero, 6).reduce((sum, path) => sum + Math.abs(areaD(path)), 0);

/** How deep an overlap of one unit's width may be, in the instance's own unit, and how far outside a point may lie. */
const slack = 0.011;

/** Complaints about a printed layout; empty when a person could cut from it. */
export const judgeLayout = (asked: Asked, layout: PrintedLayout): readonly string[] => {
  const found: string[] = [];
  const shapes: { readonly name: string; readonly spots: readonly Spot[]; readonly box: ReturnType<typeof boxOf> }[] =
    [];
  let total = 0;
  for (const item of asked.items) {
    const copies = layout.placed.filter((placement) => String(placement.id) === String(item.id));
    if (copies.length !== item.demand) found.push(`${item.id}: ${copies.length} placed, ${item.demand} asked`);
    const turned = copies.filter((copy) => copy.mirrored).length;
    const wanted = item.mirrored ? item.demand / 2 : 0;
    if (turned !== wanted) found.push(`${item.id}: ${turned} mirrored, ${wanted} asked`);
    total += item.demand * areaOf(item.spots);
    copies.forEach((copy, index) => {
      const rotation = ((copy.rotation % 360) + 360) % 360;
      if (!item.orientations.some((allowed) => Math.abs((((allowed % 360) + 360) % 360) - rotation) < 1e-6)) {
        found.push(`${item.id}: turned by ${copy.rotation}, which is not allowed`);
      }
      const spots = put(item.spots, copy);
      shapes.push({ name: `${item.id} (${index + 1})`, spots, box: boxOf(spots) });
    });
  }
  for (const shape of shapes) {
    const { minX, maxX, minY, maxY } = shape.box;
    if (minX < -slack || minY < -slack || maxX > layout.length + slack || maxY > asked.width + slack) {
      found.push(`${shape.name}: lies off the cloth`);
    }
  }
  for (let i = 0; i < shapes.length; i += 1) {
    for (let j = i + 1; j < shapes.length; j += 1) {
      const a = shapes[i] as (typeof shapes)[number];
      const b = shapes[j] as (typeof shapes)[number];
      if (a.box.minX > b.box.maxX || b.box.minX > a.box.maxX || a.box.minY > b.box.maxY || b.box.minY > a.box.maxY)
        continue;
      const overlap = shared(a.spots, b.spots);
      const across = Math.max(
        1,
        Math.min(a.box.maxX - a.box.minX, a.box.maxY - a.box.minY, b.box.maxX - b.box.minX, b.box.maxY - b.box.minY),
      );
      if (overlap > slack * across) found.push(`${a.name} and ${b.name} overlap by ${overlap.toFixed(3)}`);
    }
  }
  const density = (100 * total) / (asked.width * layout.length);
  if (Math.abs(density - layout.density) > 0.01) found.push(`density is ${density}, printed ${layout.density}`);
  return found;
};
