import type { Arrangement, Positions } from './arrangement.ts';
import { construct } from './construct.ts';
import type { MoveEffort } from './move.ts';
import { Random } from './random.ts';
import { type Patience, Separation } from './separate.ts';
import type { Table } from './table.ts';

const hurried: Patience = { rounds: 40, strikes: 1 };
const exploring: Patience = { rounds: 200, strikes: 3 };
const compressing: Patience = { rounds: 60, strikes: 4 };
const effort: MoveEffort = { anywhere: 40, nearby: 20, refined: 2 };

/** Shares of the strip's length that are cut away: while that goes well, and from when on it is fine work. */
const coarseCut = 0.02;
const fineCut = 0.001;

/** Shares the compression cuts away at first and at last. */
const firstSqueeze = 0.0005;
const lastSqueeze = 0.00001;

/**
 * The search for the shortest plan of one strip: explore by shrinking the strip and separating, with a
 * disturbance whenever that fails, then compress the best plan in ever smaller cuts
 * (DOI 10.48550/arXiv.2509.13329). `explore` and `compress` yield after every round for as long as there is
 * time; `best` is always free of overlap.
 */
export class StripSearch {
  readonly #table: Table;
  readonly #random: Random;
  readonly #arrangement: Arrangement;
  readonly #separation: Separation;
  readonly #floor: number;
  #best: Positions;

  private constructor(table: Table, random: Random, first: Arrangement) {
    this.#table = table;
    this.#random = random;
    this.#arrangement = first;
    this.#separation = new Separation(first, random, effort);
    this.#best = first.save();
    const widths = table.shapesOf.map((shapes) => Math.min(...Array.from(shapes, (s) => table.shapes[s]?.width ?? 0)));
    this.#floor = Math.max(table.area / table.strip.height, ...widths) * (1 + 1e-6);
  }

  /** Makes the first plan. */
  static *start(table: Table, seed: number): Generator<void, StripSearch> {
    const random = new Random(seed);
    return new StripSearch(table, random, yield* construct(table, random));
  }

  get best(): Positions {
    return this.#best;
  }

  /** Forgets what was found since these positions, which were best then. */
  goBackTo(positions: Positions): void {
    this.#best = positions;
  }

  *explore(): Generator<void, void> {
    const a = this.#arrangement;
    let share = coarseCut;
    for (;;) {
      a.restore(this.#best);
      if (a.length <= this.#floor) return;
      this.#shrinkTo(a.length * (1 - share), a.length);
      if (share > fineCut) {
        if (yield* this.#separation.run(hurried)) this.#accept();
        else share = Math.max(fineCut, share / 3);
      } else yield* this.#insist();
    }
  }

  /** Separates at this length whatever it takes: failed attempts are kept, and the better ones disturbed and tried again. */
  *#insist(): Generator<void, void> {
    const a = this.#arrangement;
    const failed: { readonly positions: Positions; readonly total: number }[] = [];
    while (!(yield* this.#separation.run(exploring))) {
      failed.push({ positions: a.save(), total: a.total() });
      failed.sort((p, q) => p.total - q.total);
      const pick = Math.floor(Math.abs(this.#random.normal()) * 0.25 * failed.length);
      a.restore((failed[Math.min(failed.length - 1, pick)] as { positions: Positions }).positions);
      this.#disturb();
    }
    this.#accept();
  }

  *compress(): Generator<void, void> {
    const a = this.#arrangement;
    let share = firstSqueeze;
    let failures = 0;
    while (share >= lastSqueeze && this.#best.length > this.#floor) {
      a.restore(this.#best);
      this.#shrinkTo(a.length * (1 - share), this.#random.next() * a.length);
      if (yield* this.#separation.run(compressing)) {
        this.#accept();
        failures = 0;
      } else if (++failures >= 3) {
        share /= 2;
        failures = 0;
      }
    }
  }

  #accept(): void {
    const a = this.#arrangement;
    a.length = a.usedLength();
    if (a.length < this.#best.length) this.#best = a.save();
  }

  /** Cuts the strip; copies beyond `from` follow its end. */
  #shrinkTo(length: number, from: number): void {
    const a = this.#arrangement;
    const target = Math.max(this.#floor, length);
    const cut = a.length - target;
    a.length = target;
    for (let copy = 0; copy < a.count; copy++) {
      const x = a.x[copy] as number;
      const width = a.width[copy] as number;
      const moved = x + width / 2 > from ? x - cut : x;
      a.x[copy] = Math.max(0, Math.min(moved, target - width));
    }
    a.measureAll();
  }

  /** Swaps two bulky copies of different items. */
  #disturb(): void {
    const a = this.#arrangement;
    const t = this.#table;
    const bulk = (copy: number): number => t.bulk[t.copies[copy] as number] as number;
    const order = Array.from({ length: a.count }, (_, i) => i).sort((p, q) => bulk(q) - bulk(p));
    const bulky = order.slice(0, Math.max(2, Math.ceil(a.count * 0.4)));
    const one = bulky[this.#random.below(bulky.length)] as number;
    const others = bulky.filter((copy) => t.copies[copy] !== t.copies[one]);
    if (others.length === 0) return;
    const two = others[this.#random.below(others.length)] as number;
    const centre = (copy: number): readonly [number, number] => [
      (a.x[copy] as number) + (a.width[copy] as number) / 2,
      (a.y[copy] as number) + (a.height[copy] as number) / 2,
    ];
    const [first, second] = [centre(one), centre(two)];
    this.#centreAt(one, second);
    this.#centreAt(two, first);
    a.measureAll();
  }

  #centreAt(copy: number, [x, y]: readonly [number, number]): void {
    const a = this.#arrangement;
    const { strip, copies } = this.#table;
    const [width, height] = [a.width[copy] as number, a.height[copy] as number];
    a.x[copy] = Math.max(0, Math.min(a.length - width, x - width / 2));
    const onFold = strip.items[copies[copy] as number]?.onFold === true;
    a.y[copy] = onFold ? 0 : Math.max(0, Math.min(strip.height - height, y - height / 2));
  }
}
