import { crossed, edgeSize, type FieldStore, leftOf, wallSize, within, without } from './field-store.ts';
import type { Region } from './nofit.ts';

/** Most cells along the longer side of a field. */
const cellsAlong = 40;

/** The numbers in an array from one place on, in steps. */
const stepsFrom = (first: number, end: number, step: number): number[] =>
  Array.from({ length: (end - first) / step }, (_, i) => first + i * step);

/** Distance from a point to a segment given by its start, extent and 1 / length². */
const distanceTo = (ax: number, ay: number, dx: number, dy: number, inverse: number, x: number, y: number): number => {
  const px = x - ax;
  const py = y - ay;
  const share = Math.min(1, Math.max(0, (px * dx + py * dy) * inverse));
  const offX = px - dx * share;
  const offY = py - dy * share;
  return Math.sqrt(offX * offX + offY * offY);
};

const edgeDistance = (edges: readonly number[], edge: number, x: number, y: number): number =>
  distanceTo(
    edges[edge] as number,
    edges[edge + 1] as number,
    edges[edge + 2] as number,
    edges[edge + 3] as number,
    edges[edge + 4] as number,
    x,
    y,
  );

const wallDistance = (walls: readonly number[], wall: number, x: number, y: number): number => {
  const ax = walls[wall] as number;
  const ay = walls[wall + 1] as number;
  const dx = (walls[wall + 2] as number) - ax;
  const dy = (walls[wall + 3] as number) - ay;
  return distanceTo(ax, ay, dx, dy, 1 / (dx * dx + dy * dy), x, y);
};

const windingAt = (walls: readonly number[], own: readonly number[], x: number, y: number): number => {
  let winding = 0;
  for (const wall of own) {
    const ay = walls[wall + 1] as number;
    const by = walls[wall + 3] as number;
    if (ay <= y === by <= y) continue;
    const ax = walls[wall] as number;
    const left = leftOf(ax, ay, (walls[wall + 2] as number) - ax, by - ay, x, y);
    if (by > y && left) winding++;
    else if (by <= y && !left) winding--;
  }
  return winding;
};

/** Adds a region's edges, tracings and grid to the store. */
export const growField = (store: FieldStore, { border, tracings }: Region, clearance: number): void => {
  const { edges, walls, cells, leaves } = store;
  const [firstEdge, firstWall, firstCell] = [edges.length, walls.length, cells.length];
  for (const value of tracings) walls.push(value);
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let i = 0; i < border.length; i += wallSize) {
    const [ax, ay, bx, by] = border.subarray(i, i + wallSize) as unknown as [number, number, number, number];
    const [dx, dy] = [bx - ax, by - ay];
    edges.push(ax, ay, dx, dy, 1 / (dx * dx + dy * dy));
    [minX, minY] = [Math.min(minX, ax), Math.min(minY, ay)];
    [maxX, maxY] = [Math.max(maxX, ax), Math.max(maxY, ay)];
  }
  const [left, top] = [minX - clearance, minY - clearance];
  const [extentX, extentY] = [maxX - minX + 2 * clearance, maxY - minY + 2 * clearance];
  const size = Math.max(extentX, extentY) / cellsAlong;
  const across = Math.max(1, Math.ceil(extentX / size));
  const down = Math.max(1, Math.ceil(extentY / size));
  const [width, height] = [extentX / across, extentY / down];
  store.heads.push(left, top, 1 / width, 1 / height, across, down, firstCell);
  for (let i = 0; i < across * down; i++) cells.push(0);
  const ownWalls = stepsFrom(firstWall, walls.length, wallSize);

  const alike = new Map<number, number>();
  const addLeaf = (standing: number, near: readonly number[], winding: number, passing: readonly number[]): number => {
    // Cells with the same one edge share a leaf.
    const key = standing !== crossed && near.length === 1 ? (near[0] as number) * 4 + standing : -1;
    const known = alike.get(key);
    if (known !== undefined) return known;
    const leaf = leaves.length;
    leaves.push(standing, winding, near.length, passing.length);
    for (const edge of near) leaves.push(edge);
    for (const wall of passing) leaves.push(wall);
    if (key >= 0) alike.set(key, leaf);
    return leaf;
  };

  const distances: number[] = [];
  /** Candidates are the edges that may be nearest to a point of these cells, passing the walls that may pass through them. */
  const divide = (
    x0: number,
    y0: number,
    x1: number,
    y1: number,
    candidates: readonly number[],
    passing: readonly number[],
    side: number,
  ): void => {
    const cx = left + ((x0 + x1) / 2) * width;
    const cy = top + ((y0 + y1) / 2) * height;
    const reach = (Math.hypot((x1 - x0) * width, (y1 - y0) * height) / 2) * (1 + 1e-9);
    let least = Infinity;
    candidates.forEach((edge, i) => {
      const distance = edgeDistance(edges, edge, cx, cy);
      distances[i] = distance;
      if (distance < least) least = distance;
    });
    // The nearest edge to any point of the cells is no farther from their centre than this.
    const farthest = least + 2 * reach;
    const near = candidates.filter((_, i) => (distances[i] as number) <= farthest);
    // Where no border passes, all points lie on the same side of it.
    const standing = side || (least > reach ? (windingAt(walls, ownWalls, cx, cy) > 0 ? within : without) : 0);
    const fill = (leaf: number): void => {
      for (let y = y0; y < y1; y++) {
        for (let x = x0; x < x1; x++) cells[firstCell + y * across + x] = leaf;
      }
    };
    if (standing === without && least - reach > clearance) return;
    const one = x1 - x0 <= 1 && y1 - y0 <= 1;
    if (standing !== 0 && (near.length === 1 || one)) {
      fill(addLeaf(standing, near, 0, []));
      return;
    }
    const through = standing === 0 ? passing.filter((wall) => wallDistance(walls, wall, cx, cy) <= reach) : passing;
    if (one) {
      fill(addLeaf(crossed, near, windingAt(walls, ownWalls, cx, cy), through));
    } else if (x1 - x0 >= y1 - y0) {
      const middle = (x0 + x1) >> 1;
      divide(x0, y0, middle, y1, near, through, standing);
      divide(middle, y0, x1, y1, near, through, standing);
    } else {
      const middle = (y0 + y1) >> 1;
      divide(x0, y0, x1, middle, near, through, standing);
      divide(x0, middle, x1, y1, near, through, standing);
    }
  };
  divide(0, 0, across, down, stepsFrom(firstEdge, edges.length, edgeSize), ownWalls, 0);
};
