import type { Region } from './nofit.ts';

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
/** Numbers kept for a cell: its standing, the winding number at its centre, where its edges and its passing walls are listed. */
const cellSize = 4;

/**
 * Exact signed distances to the borders of no-fit regions: how far a piece must move at least to come
 * free of another (the penetration depth), or how far apart they are. Each region is covered by a grid; a
 * cell knows the few border edges that can be nearest to a point in it and whether its centre lies inside, so
 * a question costs a handful of point-to-segment distances. Inside and outside are told by winding number, so
 * regions may touch themselves. Questions go through `depth`.
 */
export class DistanceFields {
  /** Pieces are to stay at least this far apart. */
  readonly clearance: number;
  readonly #heads = new Growing();
  readonly #edges = new Growing();
  readonly #cells = new Growing();
  /** Ends of tracings' parts: ax, ay, bx, by. */
  readonly #walls = new Growing();
  /** Lists of edges or walls, each led by its length. */
  readonly #lists = new Growing();
  #sealedCells = new Int32Array(0);
  #sealedLists = new Int32Array(0);

  constructor(clearance: number) {
    this.clearance = clearance;
    this.#lists.push(0);
  }

  /** Adds a region and gives its number. */
  add({ border, tracings }: Region): number {
    const firstEdge = this.#edges.count;
    const walls: number[] = [];
    for (let i = 0; i < tracings.length; i += 4) {
      walls.push(this.#walls.count);
      for (let k = 0; k < 4; k++) this.#walls.push(tracings[i + k] as number);
    }
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
    const firstCell = this.#cells.count / cellSize;
    for (const value of [minX, minY, width, height, across, down, firstCell]) this.#heads.push(value);
    for (let i = 0; i < cellSize * across * down; i++) this.#cells.push(0);
    const all: number[] = [];
    for (let edge = firstEdge; edge < this.#edges.count; edge += edgeSize) all.push(edge);
    const fill = (left: number, top: number, right: number, bottom: number, values: readonly number[]): void => {
      for (let y = top; y < bottom; y++) {
        for (let x = left; x < right; x++) this.#cells.values.set(values, cellSize * (firstCell + y * across + x));
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
      const inside = known ?? (least > reach ? this.#winding(walls, cx, cy) > 0 : null);
      if (inside === false && least - reach > this.clearance) {
        fill(left, top, right, bottom, [clear, 0, 0, 0]);
        return;
      }
      const one = right - left <= 1 && bottom - top <= 1;
      if (inside !== null && (near.length <= 1 || one)) {
        fill(left, top, right, bottom, [inside ? within : without, 0, this.#addList(near), 0]);
        return;
      }
      if (one) {
        const passing = walls.filter((wall) => this.#wallDistance(wall, cx, cy) <= reach);
        const winding = this.#winding(walls, cx, cy);
        fill(left, top, right, bottom, [crossed, winding, this.#addList(near), this.#addList(passing)]);
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
    const cell = cellSize * ((heads[head + 6] as number) + row * across + column);
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
    while (at < end) {
      const edge = lists[++at] as number;
      const squared = squaredDistanceTo(edges, edge, x, y);
      if (squared < least) least = squared;
    }
    // Every part of a tracing that passes through the cell is listed: count those crossed on the way from its centre.
    const cx = (heads[head] as number) + (column + 0.5) * width;
    const cy = (heads[head + 1] as number) + (row + 0.5) * height;
    const vx = x - cx;
    const vy = y - cy;
    const walls = this.#walls.values;
    let winding = this.#sealedCells[cell + 1] as number;
    let passing = this.#sealedCells[cell + 3] as number;
    const last = passing + (lists[passing] as number);
    while (passing < last) {
      const wall = lists[++passing] as number;
      const ax = walls[wall] as number;
      const ay = walls[wall + 1] as number;
      const bx = walls[wall + 2] as number;
      const by = walls[wall + 3] as number;
      const startSide = vx * (ay - cy) - vy * (ax - cx) > 0;
      if (startSide === vx * (by - cy) - vy * (bx - cx) > 0) continue;
      const leftNow = leftOf(ax, ay, bx - ax, by - ay, x, y);
      if (leftNow === leftOf(ax, ay, bx - ax, by - ay, cx, cy)) continue;
      winding += leftNow ? 1 : -1;
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

  #wallDistance(wall: number, x: number, y: number): number {
    const [ax, ay, bx, by] = this.#walls.values.subarray(wall, wall + 4) as unknown as [number, number, number, number];
    const [dx, dy] = [bx - ax, by - ay];
    const share = Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy)));
    return Math.hypot(x - ax - share * dx, y - ay - share * dy);
  }

  /** Winding number of tracings about a point. */
  #winding(walls: readonly number[], x: number, y: number): number {
    const w = this.#walls.values;
    let winding = 0;
    for (const wall of walls) {
      const ay = w[wall + 1] as number;
      const by = w[wall + 3] as number;
      if (ay <= y === by <= y) continue;
      const ax = w[wall] as number;
      const left = leftOf(ax, ay, (w[wall + 2] as number) - ax, by - ay, x, y);
      if (by > y && left) winding++;
      else if (by <= y && !left) winding--;
    }
    return winding;
  }
}

/**
 * Whether a point lies to the left of a part of a tracing (x right, y up). A point on it counts as a hair
 * above, or to the right of an upright one, so that tracings that run back on themselves cancel there too.
 */
const leftOf = (ax: number, ay: number, dx: number, dy: number, x: number, y: number): boolean => {
  const side = dx * (y - ay) - dy * (x - ax);
  return side > 0 || (side === 0 && (dx > 0 || (dx === 0 && dy < 0)));
};

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
