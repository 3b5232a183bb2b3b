import type { Border } from './nofit.ts';

/** Most cells along the longer side of a field. */
const cellsAlong = 40;

/** A list of numbers that grows, in one typed array. */
class Growing {
  values = new Float64Array(4096);
  count = 0;

  push(value: number): void {
    if (this.count === this.values.length) {
      const larger = new Float64Array(this.count * 2);
      larger.set(this.values);
      this.values = larger;
    }
    this.values[this.count++] = value;
  }
}

/** How a cell stands to the region: clear of it by more than anyone asks, wholly inside, wholly outside, or crossed by its border. */
const clear = 0;
const within = 1;
const without = 2;
const crossed = 3;

/** Numbers kept for a border edge: start, end, end − start, 1 / length². */
const edgeSize = 7;
/** Numbers kept for a field: left, top, cell width and height, cells across and down, first cell. */
const headSize = 7;

/**
 * Exact signed distances to the borders of no-fit regions: how far a piece must move at least to come
 * free of another (the penetration depth), or how far apart they are. Each region is covered by a grid; a
 * cell knows the few border edges that can be nearest to a point in it and whether its centre lies inside, so
 * a question costs a handful of point-to-segment distances. Regions may touch themselves and have slits of
 * no width. Questions go through `depth`.
 */
export class DistanceFields {
  /** Pieces are to stay at least this far apart. */
  readonly clearance: number;
  readonly #heads = new Growing();
  readonly #edges = new Growing();
  /** Per cell: its standing, whether its centre is inside, and where its list of edges begins. */
  readonly #cells = new Growing();
  /** Lists of edges, each led by its length. */
  readonly #lists = new Growing();
  #sealedCells = new Int32Array(0);
  #sealedLists = new Int32Array(0);

  constructor(clearance: number) {
    this.clearance = clearance;
    this.#lists.push(0);
  }

  /** Adds a region and gives its number. */
  add(border: Border): number {
    const firstEdge = this.#edges.count;
    let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
    for (let i = 0; i < border.length; i += 4) {
      const [ax, ay, bx, by] = border.subarray(i, i + 4) as unknown as [number, number, number, number];
      const [dx, dy] = [bx - ax, by - ay];
      for (const value of [ax, ay, bx, by, dx, dy, 1 / (dx * dx + dy * dy)]) this.#edges.push(value);
      minX = Math.min(minX, ax, bx);
      minY = Math.min(minY, ay, by);
      maxX = Math.max(maxX, ax, bx);
      maxY = Math.max(maxY, ay, by);
    }
    minX -= this.clearance;
    minY -= this.clearance;
    maxX += this.clearance;
    maxY += this.clearance;
    const size = Math.max(maxX - minX, maxY - minY) / cellsAlong;
    const across = Math.max(1, Math.ceil((maxX - minX) / size));
    const down = Math.max(1, Math.ceil((maxY - minY) / size));
    const [width, height] = [(maxX - minX) / across, (maxY - minY) / down];
    const number = this.#heads.count / headSize;
    const firstCell = this.#cells.count / 3;
    for (const value of [minX, minY, width, height, across, down, firstCell]) this.#heads.push(value);
    for (let i = 0; i < 3 * across * down; i++) this.#cells.push(0);
    const all: number[] = [];
    for (let edge = firstEdge; edge < this.#edges.count; edge += edgeSize) all.push(edge);
    const fill = (left: number, top: number, right: number, bottom: number, values: readonly number[]): void => {
      for (let y = top; y < bottom; y++) {
        for (let x = left; x < right; x++) this.#cells.values.set(values, 3 * (firstCell + y * across + x));
      }
    };
    const divide = (
      left: number,
      top: number,
      right: number,
      bottom: number,
      edges: readonly number[],
      known: boolean | null,
    ): void => {
      const cx = minX + ((left + right) / 2) * width;
      const cy = minY + ((top + bottom) / 2) * height;
      const reach = (Math.hypot((right - left) * width, (bottom - top) * height) / 2) * (1 + 1e-9);
      const distances = edges.map((edge) => Math.sqrt(this.#squaredDistance(edge, cx, cy)));
      const least = Math.min(...distances);
      const near = edges.filter((_, i) => (distances[i] as number) <= least + 2 * reach);
      // Where no border passes, all points lie on the same side of it.
      const inside = known ?? (least > reach ? this.#inside(all, cx, cy) : null);
      if (inside === false && least - reach > this.clearance) {
        fill(left, top, right, bottom, [clear, 0, 0]);
        return;
      }
      const one = right - left <= 1 && bottom - top <= 1;
      if (inside !== null && (near.length <= 1 || one)) {
        fill(left, top, right, bottom, [inside ? within : without, 0, this.#addList(near)]);
        return;
      }
      if (one) {
        fill(left, top, right, bottom, [crossed, this.#inside(all, cx, cy) ? 1 : 0, this.#addList(near)]);
        return;
      }
      if (right - left >= bottom - top) {
        const middle = (left + right) >> 1;
        divide(left, top, middle, bottom, near, inside);
        divide(middle, top, right, bottom, near, inside);
      } else {
        const middle = (top + bottom) >> 1;
        divide(left, top, right, middle, near, inside);
        divide(left, middle, right, bottom, near, inside);
      }
    };
    divide(0, 0, across, down, all, null);
    return number;
  }

  /** Must be called once after the last region was added, before the first question. */
  seal(): void {
    this.#sealedCells = Int32Array.from(this.#cells.values.subarray(0, this.#cells.count));
    this.#sealedLists = Int32Array.from(this.#lists.values.subarray(0, this.#lists.count));
  }

  /**
   * How much deeper than allowed the second piece lies in the first when moved to (x, y): clearance −
   * signed distance, or 0 when far enough apart.
   */
  depth(field: number, x: number, y: number): number {
    const heads = this.#heads.values;
    const head = field * headSize;
    const width = heads[head + 2] as number;
    const height = heads[head + 3] as number;
    const column = Math.floor((x - (heads[head] as number)) / width);
    const row = Math.floor((y - (heads[head + 1] as number)) / height);
    const across = heads[head + 4] as number;
    if (!(column >= 0 && row >= 0 && column < across && row < (heads[head + 5] as number))) return 0;
    const cell = 3 * ((heads[head + 6] as number) + row * across + column);
    const standing = this.#sealedCells[cell] as number;
    if (standing === clear) return 0;
    const lists = this.#sealedLists;
    const edges = this.#edges.values;
    let at = this.#sealedCells[cell + 2] as number;
    const end = at + (lists[at] as number);
    let least = Infinity;
    if (standing !== crossed) {
      while (at < end) {
        const edge = lists[++at] as number;
        const squared = squaredDistanceTo(edges, edge, x, y);
        if (squared < least) least = squared;
      }
      const distance = Math.sqrt(least);
      return standing === within ? this.clearance + distance : Math.max(0, this.clearance - distance);
    }
    // Every edge that passes through the cell is listed: count those crossed on the way from its centre.
    const cx = (heads[head] as number) + (column + 0.5) * width;
    const cy = (heads[head + 1] as number) + (row + 0.5) * height;
    const vx = x - cx;
    const vy = y - cy;
    let winding = this.#sealedCells[cell + 1] as number;
    while (at < end) {
      const edge = lists[++at] as number;
      const squared = squaredDistanceTo(edges, edge, x, y);
      if (squared < least) least = squared;
      const ax = edges[edge] as number;
      const ay = edges[edge + 1] as number;
      const dx = edges[edge + 4] as number;
      const dy = edges[edge + 5] as number;
      const leftNow = dx * (y - ay) - dy * (x - ax) > 0;
      if (leftNow === dx * (cy - ay) - dy * (cx - ax) > 0) continue;
      const startSide = vx * (ay - cy) - vy * (ax - cx) > 0;
      const endSide = vx * ((edges[edge + 3] as number) - cy) - vy * ((edges[edge + 2] as number) - cx) > 0;
      if (startSide !== endSide) winding += leftNow ? 1 : -1;
    }
    const distance = Math.sqrt(least);
    return winding > 0 ? this.clearance + distance : Math.max(0, this.clearance - distance);
  }

  #addList(edges: readonly number[]): number {
    const at = this.#lists.count;
    this.#lists.push(edges.length);
    for (const edge of edges) this.#lists.push(edge);
    return at;
  }

  #squaredDistance(edge: number, x: number, y: number): number {
    return squaredDistanceTo(this.#edges.values, edge, x, y);
  }

  /** Whether a point that lies on no border edge is inside the region, by winding number. */
  #inside(all: readonly number[], x: number, y: number): boolean {
    const e = this.#edges.values;
    let winding = 0;
    for (const edge of all) {
      const ay = e[edge + 1] as number;
      const by = e[edge + 3] as number;
      if (ay <= y === by <= y) continue;
      const side = (e[edge + 4] as number) * (y - ay) - (e[edge + 5] as number) * (x - (e[edge] as number));
      if (by > y && side > 0) winding++;
      else if (by <= y && side < 0) winding--;
    }
    return winding > 0;
  }
}

const squaredDistanceTo = (edges: Float64Array, edge: number, x: number, y: number): number => {
  const px = x - (edges[edge] as number);
  const py = y - (edges[edge + 1] as number);
  const dx = edges[edge + 4] as number;
  const dy = edges[edge + 5] as number;
  const share = (px * dx + py * dy) * (edges[edge + 6] as number);
  if (share <= 0) return px * px + py * py;
  if (share >= 1) {
    const qx = px - dx;
    const qy = py - dy;
    return qx * qx + qy * qy;
  }
  const cross = dx * py - dy * px;
  return cross * cross * (edges[edge + 6] as number);
};
