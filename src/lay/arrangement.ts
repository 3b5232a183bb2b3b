import { pairSize, type Shape, type Table } from './table.ts';

/** Where every copy lies: enough to go back to. */
export interface Positions {
  readonly shape: Int32Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly length: number;
}

/**
 * Copies lying on a strip of a given length, perhaps overlapping, with the weight each pair's overlap
 * has come to carry. All copies lie inside the strip always.
 */
export class Arrangement {
  readonly table: Table;
  readonly count: number;
  length: number;
  readonly shape: Int32Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly width: Float64Array;
  readonly height: Float64Array;
  /** Pair weights at a · count + b, symmetric. */
  readonly weight: Float64Array;
  /** Overlap of pairs, depth × bulk, at a · count + b, symmetric; 0 where depth is within what is allowed. */
  readonly overlap: Float64Array;
  readonly #bulk: Float64Array;
  /** The copies `cost` asks about. */
  readonly #near: Int32Array;
  #nearCount = 0;

  constructor(table: Table, length: number) {
    this.table = table;
    this.count = table.copies.length;
    this.length = length;
    this.shape = new Int32Array(this.count);
    this.x = new Float64Array(this.count);
    this.y = new Float64Array(this.count);
    this.width = new Float64Array(this.count);
    this.height = new Float64Array(this.count);
    this.weight = new Float64Array(this.count * this.count).fill(1);
    this.overlap = new Float64Array(this.count * this.count);
    this.#near = new Int32Array(this.count);
    this.#bulk = Float64Array.from(table.copies, (item) => table.bulk[item] as number);
  }

  place(copy: number, shape: number, x: number, y: number): void {
    const { width, height } = this.table.shapes[shape] as Shape;
    this.shape[copy] = shape;
    this.x[copy] = x;
    this.y[copy] = y;
    this.width[copy] = width;
    this.height[copy] = height;
  }

  /** Depth of `copy` as `shape` at (x, y) in `other`, bulk not counted. */
  depthIn(other: number, shape: number, x: number, y: number): number {
    const { pairs, shapes, fields } = this.table;
    const pair = ((this.shape[other] as number) * shapes.length + shape) * pairSize;
    return fields.depth(
      pairs[pair] as number,
      (pairs[pair + 1] as number) * (x - (this.x[other] as number)) + (pairs[pair + 2] as number),
      (pairs[pair + 3] as number) * (y - (this.y[other] as number)) + (pairs[pair + 4] as number),
    );
  }

  /** The greatest depth among the given copies. */
  deepest(others: readonly number[], shape: number, x: number, y: number): number {
    const { width, height } = this.table.shapes[shape] as Shape;
    const clear = this.table.fields.clearance;
    let deepest = 0;
    for (const other of others) {
      const dx = x - (this.x[other] as number);
      if (dx >= (this.width[other] as number) + clear || -dx >= width + clear) continue;
      const dy = y - (this.y[other] as number);
      if (dy >= (this.height[other] as number) + clear || -dy >= height + clear) continue;
      const depth = this.depthIn(other, shape, x, y);
      if (depth > deepest) deepest = depth;
    }
    return deepest;
  }

  /** From here on `cost` asks about all other copies. */
  lookEverywhere(copy: number): void {
    this.#nearCount = 0;
    for (let other = 0; other < this.count; other++) if (other !== copy) this.#near[this.#nearCount++] = other;
  }

  /** From here on `cost` asks only about copies that `copy` can meet within `reach` of (x, y) as this shape. */
  lookAround(copy: number, shape: number, x: number, y: number, reach: number): void {
    const { width, height } = this.table.shapes[shape] as Shape;
    const wide = reach + this.table.fields.clearance;
    this.#nearCount = 0;
    for (let other = 0; other < this.count; other++) {
      const ox = this.x[other] as number;
      if (ox >= x + width + wide || ox + (this.width[other] as number) <= x - wide) continue;
      const oy = this.y[other] as number;
      if (oy >= y + height + wide || oy + (this.height[other] as number) <= y - wide) continue;
      if (other !== copy) this.#near[this.#nearCount++] = other;
    }
  }

  /**
   * Weighted overlap `copy` would have as `shape` at (x, y) with the copies last looked for; gives up with a
   * number ≥ `bound` once past it.
   */
  cost(copy: number, shape: number, x: number, y: number, bound: number): number {
    const { shapes, fields, allowed } = this.table;
    const { width, height } = shapes[shape] as Shape;
    const clear = fields.clearance;
    const left = x - clear;
    const right = x + width + clear;
    const top = y - clear;
    const bottom = y + height + clear;
    const bulk = this.#bulk[copy] as number;
    const row = copy * this.count;
    const near = this.#near;
    let sum = 0;
    for (let i = 0; i < this.#nearCount; i++) {
      const other = near[i] as number;
      const ox = this.x[other] as number;
      if (ox >= right || ox + (this.width[other] as number) <= left) continue;
      const oy = this.y[other] as number;
      if (oy >= bottom || oy + (this.height[other] as number) <= top) continue;
      const depth = this.depthIn(other, shape, x, y);
      if (depth <= allowed) continue;
      sum += depth * bulk * (this.#bulk[other] as number) * (this.weight[row + other] as number);
      if (sum >= bound) return sum;
    }
    return sum;
  }

  /** Works out the copy's overlaps anew where it lies. */
  measure(copy: number): void {
    const n = this.count;
    const [shape, x, y] = [this.shape[copy] as number, this.x[copy] as number, this.y[copy] as number];
    for (let other = 0; other < n; other++) {
      if (other === copy) continue;
      const depth = this.depthIn(other, shape, x, y);
      const overlap =
        depth <= this.table.allowed ? 0 : depth * (this.#bulk[copy] as number) * (this.#bulk[other] as number);
      this.overlap[copy * n + other] = overlap;
      this.overlap[other * n + copy] = overlap;
    }
  }

  measureAll(): void {
    for (let copy = 0; copy < this.count; copy++) this.measure(copy);
  }

  /** Sum of overlaps over all pairs, unweighted. */
  total(): number {
    let sum = 0;
    const n = this.count;
    for (let a = 0; a < n; a++) for (let b = a + 1; b < n; b++) sum += this.overlap[a * n + b] as number;
    return sum;
  }

  /** Weighted overlap of one copy as it lies. */
  weighted(copy: number): number {
    let sum = 0;
    const row = copy * this.count;
    for (let other = 0; other < this.count; other++) {
      const overlap = this.overlap[row + other] as number;
      if (overlap > 0) sum += overlap * (this.weight[row + other] as number);
    }
    return sum;
  }

  overlaps(copy: number): boolean {
    const row = copy * this.count;
    for (let other = 0; other < this.count; other++) if ((this.overlap[row + other] as number) > 0) return true;
    return false;
  }

  /** How much of the strip's length is in use. */
  usedLength(): number {
    let used = 0;
    for (let copy = 0; copy < this.count; copy++) {
      used = Math.max(used, (this.x[copy] as number) + (this.width[copy] as number));
    }
    return used;
  }

  save(): Positions {
    return { shape: this.shape.slice(), x: this.x.slice(), y: this.y.slice(), length: this.length };
  }

  /** Goes back to saved positions; weights are kept. */
  restore(positions: Positions): void {
    this.length = positions.length;
    for (let copy = 0; copy < this.count; copy++) {
      this.place(copy, positions.shape[copy] as number, positions.x[copy] as number, positions.y[copy] as number);
    }
    this.measureAll();
  }
}
