import type { Rings } from './nofit.ts';

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

/**
 * Exact signed distances to the borders of no-fit regions: how far a piece must move at least to come
 * free of another (the penetration depth), or how far apart they are. Each region is covered by a grid; a
 * cell knows the few border edges that can be nearest to a point in it, so a question costs a handful of
 * point-to-segment distances. Questions go through `depth`.
 */
export class DistanceFields {
  /** Pieces are to stay at least this far apart. */
  readonly clearance: number;
  /** Per field: left, top, cells per unit across and down, cells across and down, first cell. */
  readonly #heads = new Growing();
  /** Per border edge: start x, y, end − start x, y, 1 / length², whether start and end corners are outward (1) or inward (0). */
  readonly #edges = new Growing();
  /** Per cell: where its edge list begins; it ends where the number stored before the list says. */
  readonly #cells = new Growing();
  /** Lists of edges by number, each led by its length. */
  readonly #lists = new Growing();
  #sealedCells = new Int32Array(0);
  #sealedLists = new Int32Array(0);
  /** Where the last question's nearest border point lay. */
  nearestX = 0;
  nearestY = 0;

  constructor(clearance: number) {
    this.clearance = clearance;
    this.#lists.push(0);
  }

  /** Adds a region and gives its number. */
  add(rings: Rings): number {
    const firstEdge = this.#edges.count / 7;
    let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
    for (const ring of rings) {
      const n = ring.length;
      const outward = ring.map((q, i) => {
        const p = ring[(i + n - 1) % n] as { x: number; y: number };
        const r = ring[(i + 1) % n] as { x: number; y: number };
        return (q.x - p.x) * (r.y - q.y) - (q.y - p.y) * (r.x - q.x) > 0 ? 1 : 0;
      });
      ring.forEach((p, i) => {
        const j = (i + 1) % n;
        const q = ring[j] as { x: number; y: number };
        const [dx, dy] = [q.x - p.x, q.y - p.y];
        for (const value of [p.x, p.y, dx, dy, 1 / (dx * dx + dy * dy), outward[i] as number, outward[j] as number]) {
          this.#edges.push(value);
        }
        minX = Math.min(minX, p.x);
        minY = Math.min(minY, p.y);
        maxX = Math.max(maxX, p.x);
        maxY = Math.max(maxY, p.y);
      });
    }
    minX -= this.clearance;
    minY -= this.clearance;
    maxX += this.clearance;
    maxY += this.clearance;
    const size = Math.max(maxX - minX, maxY - minY) / cellsAlong;
    const across = Math.max(1, Math.ceil((maxX - minX) / size));
    const down = Math.max(1, Math.ceil((maxY - minY) / size));
    const [width, height] = [(maxX - minX) / across, (maxY - minY) / down];
    const number = this.#heads.count / 7;
    const firstCell = this.#cells.count;
    for (const value of [minX, minY, 1 / width, 1 / height, across, down, firstCell]) this.#heads.push(value);
    for (let i = 0; i < across * down; i++) this.#cells.push(0);
    const all = Array.from({ length: this.#edges.count / 7 - firstEdge }, (_, i) => firstEdge + i);
    const divide = (left: number, top: number, right: number, bottom: number, edges: readonly number[]): void => {
      const cx = minX + ((left + right) / 2) * width;
      const cy = minY + ((top + bottom) / 2) * height;
      const reach = Math.hypot((right - left) * width, (bottom - top) * height) / 2;
      const distances = edges.map((edge) => Math.sqrt(this.#squaredDistance(edge, cx, cy)));
      const least = Math.min(...distances);
      const near = edges.filter((_, i) => (distances[i] as number) <= least + 2 * reach * (1 + 1e-9));
      const clear = least - reach > this.clearance && this.#signed(edges, cx, cy) > 0;
      if (clear || near.length <= 1 || (right - left <= 1 && bottom - top <= 1)) {
        const list = clear ? 0 : this.#addList(near);
        for (let y = top; y < bottom; y++) {
          this.#cells.values.fill(list, firstCell + y * across + left, firstCell + y * across + right);
        }
        return;
      }
      if (right - left >= bottom - top) {
        const middle = (left + right) >> 1;
        divide(left, top, middle, bottom, near);
        divide(middle, top, right, bottom, near);
      } else {
        const middle = (top + bottom) >> 1;
        divide(left, top, right, middle, near);
        divide(left, middle, right, bottom, near);
      }
    };
    divide(0, 0, across, down, all);
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
    const head = field * 7;
    const column = (x - (heads[head] as number)) * (heads[head + 2] as number);
    const row = (y - (heads[head + 1] as number)) * (heads[head + 3] as number);
    const across = heads[head + 4] as number;
    if (!(column >= 0 && row >= 0 && column < across && row < (heads[head + 5] as number))) return 0;
    const cell = (heads[head + 6] as number) + Math.floor(row) * across + Math.floor(column);
    const lists = this.#sealedLists;
    let at = this.#sealedCells[cell] as number;
    const end = at + (lists[at] as number);
    if (end === at) return 0;
    const edges = this.#edges.values;
    let least = Infinity;
    let outside = false;
    while (at < end) {
      at++;
      const edge = lists[at] as number;
      const startX = edges[edge] as number;
      const startY = edges[edge + 1] as number;
      const dx = edges[edge + 2] as number;
      const dy = edges[edge + 3] as number;
      const px = x - startX;
      const py = y - startY;
      const share = (px * dx + py * dy) * (edges[edge + 4] as number);
      if (share <= 0) {
        const squared = px * px + py * py;
        if (squared < least) {
          least = squared;
          outside = edges[edge + 5] === 1;
          this.nearestX = startX;
          this.nearestY = startY;
        }
      } else if (share >= 1) {
        const qx = px - dx;
        const qy = py - dy;
        const squared = qx * qx + qy * qy;
        if (squared < least) {
          least = squared;
          outside = edges[edge + 6] === 1;
          this.nearestX = startX + dx;
          this.nearestY = startY + dy;
        }
      } else {
        const cross = dx * py - dy * px;
        const squared = cross * cross * (edges[edge + 4] as number);
        if (squared < least) {
          least = squared;
          outside = cross < 0;
          this.nearestX = startX + dx * share;
          this.nearestY = startY + dy * share;
        }
      }
    }
    const distance = Math.sqrt(least);
    const depth = this.clearance + (outside ? -distance : distance);
    return Math.max(depth, 0);
  }

  #addList(edges: readonly number[]): number {
    const at = this.#lists.count;
    this.#lists.push(edges.length);
    for (const edge of edges) this.#lists.push(edge * 7);
    return at;
  }

  #squaredDistance(edge: number, x: number, y: number): number {
    const e = this.#edges.values;
    const at = edge * 7;
    const [px, py] = [x - (e[at] as number), y - (e[at + 1] as number)];
    const [dx, dy] = [e[at + 2] as number, e[at + 3] as number];
    const share = Math.min(1, Math.max(0, (px * dx + py * dy) * (e[at + 4] as number)));
    return (px - dx * share) ** 2 + (py - dy * share) ** 2;
  }

  /** Positive outside the region; only its sign is used. */
  #signed(edges: readonly number[], x: number, y: number): number {
    const list = this.#lists.count;
    this.#addList(edges);
    const e = this.#edges.values;
    let least = Infinity;
    let sign = 1;
    for (let i = list + 1; i < this.#lists.count; i++) {
      const at = this.#lists.values[i] as number;
      const [px, py] = [x - (e[at] as number), y - (e[at + 1] as number)];
      const [dx, dy] = [e[at + 2] as number, e[at + 3] as number];
      const share = (px * dx + py * dy) * (e[at + 4] as number);
      const squared = this.#squaredDistance(at / 7, x, y);
      if (squared >= least) continue;
      least = squared;
      if (share <= 0) sign = e[at + 5] === 1 ? 1 : -1;
      else if (share >= 1) sign = e[at + 6] === 1 ? 1 : -1;
      else sign = dx * py - dy * px < 0 ? 1 : -1;
    }
    this.#lists.count = list;
    return sign;
  }
}
