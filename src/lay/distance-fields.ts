import { growField } from './field-grid.ts';
import { crossed, type FieldStore, headSize, leftOf, within } from './field-store.ts';
import type { Region } from './nofit.ts';

/**
 * Exact signed distances to the borders of no-fit regions: how far a piece must move at least to come
 * free of another (the penetration depth), or how far apart they are. Each region is covered by a grid; a
 * cell knows the few border edges that can be nearest to a point in it and the winding number at its centre, so
 * a question costs a handful of point-to-segment distances. Inside and outside are told by winding number, so
 * regions may touch themselves.
 */
export class DistanceFields {
  /** Pieces are to stay at least this far apart. */
  readonly clearance: number;
  readonly heads: Float64Array;
  readonly edges: Float64Array;
  readonly walls: Float64Array;
  /** By cell: where its leaf begins; 0 for cells farther out than the clearance. */
  readonly cells: Int32Array;
  /** Leaves: standing, winding number at the centre, how many edges, how many passing walls, then those. */
  readonly leaves: Int32Array;

  constructor(clearance: number, { heads, edges, walls, cells, leaves }: FieldStore) {
    this.clearance = clearance;
    this.heads = Float64Array.from(heads);
    this.edges = Float64Array.from(edges);
    this.walls = Float64Array.from(walls);
    this.cells = Int32Array.from(cells);
    this.leaves = Int32Array.from(leaves);
  }

  /**
   * How much deeper than allowed the second piece lies in the first when moved to (x, y): clearance −
   * signed distance, or 0 when far enough apart.
   */
  depth(field: number, x: number, y: number): number {
    const heads = this.heads;
    const head = field * headSize;
    const left = heads[head] as number;
    const top = heads[head + 1] as number;
    const column = Math.floor((x - left) * (heads[head + 2] as number));
    const row = Math.floor((y - top) * (heads[head + 3] as number));
    const across = heads[head + 4] as number;
    if (!(column >= 0 && row >= 0 && column < across && row < (heads[head + 5] as number))) return 0;
    const leaf = this.cells[(heads[head + 6] as number) + row * across + column] as number;
    if (leaf === 0) return 0;
    const leaves = this.leaves;
    const edges = this.edges;
    const standing = leaves[leaf] as number;
    const end = leaf + 4 + (leaves[leaf + 2] as number);
    let least = Infinity;
    for (let at = leaf + 4; at < end; at++) {
      const edge = leaves[at] as number;
      const px = x - (edges[edge] as number);
      const py = y - (edges[edge + 1] as number);
      const dx = edges[edge + 2] as number;
      const dy = edges[edge + 3] as number;
      const inverse = edges[edge + 4] as number;
      const share = (px * dx + py * dy) * inverse;
      let squared: number;
      if (share <= 0) squared = px * px + py * py;
      else if (share >= 1) squared = (px - dx) * (px - dx) + (py - dy) * (py - dy);
      else squared = (dx * py - dy * px) * (dx * py - dy * px) * inverse;
      if (squared < least) least = squared;
    }
    const distance = Math.sqrt(least);
    if (standing === within) return this.clearance + distance;
    if (standing === crossed && this.#windingIn(leaf, end, x, y, head, column, row) > 0)
      return this.clearance + distance;
    return distance < this.clearance ? this.clearance - distance : 0;
  }

  /** Winding number at a point, counted on the way from its cell's centre: every part that passes the cell is listed. */
  #windingIn(leaf: number, firstWall: number, x: number, y: number, head: number, column: number, row: number): number {
    const { heads, leaves, walls } = this;
    const cx = (heads[head] as number) + (column + 0.5) / (heads[head + 2] as number);
    const cy = (heads[head + 1] as number) + (row + 0.5) / (heads[head + 3] as number);
    const vx = x - cx;
    const vy = y - cy;
    let winding = leaves[leaf + 1] as number;
    const end = firstWall + (leaves[leaf + 3] as number);
    for (let at = firstWall; at < end; at++) {
      const wall = leaves[at] as number;
      const ax = walls[wall] as number;
      const ay = walls[wall + 1] as number;
      const bx = walls[wall + 2] as number;
      const by = walls[wall + 3] as number;
      const startSide = vx * (ay - cy) - vy * (ax - cx) > 0;
      if (startSide === vx * (by - cy) - vy * (bx - cx) > 0) continue;
      const leftNow = leftOf(ax, ay, bx - ax, by - ay, x, y);
      if (leftNow !== leftOf(ax, ay, bx - ax, by - ay, cx, cy)) winding += leftNow ? 1 : -1;
    }
    return winding;
  }
}

/** Collects regions until all are known. */
export class DistanceFieldsMaker {
  readonly #clearance: number;
  // Leaf 0 stands for cells clear of the region.
  readonly #store: FieldStore = { heads: [], edges: [], walls: [], cells: [], leaves: [0, 0, 0, 0] };

  constructor(clearance: number) {
    this.#clearance = clearance;
  }

  /** Adds a region and gives its number. */
  add(region: Region): number {
    growField(this.#store, region, this.#clearance);
    return this.#store.heads.length / headSize - 1;
  }

  make(): DistanceFields {
    return new DistanceFields(this.#clearance, this.#store);
  }
}
