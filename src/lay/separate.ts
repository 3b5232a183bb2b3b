import type { Arrangement, Positions } from './arrangement.ts';
import { type MoveEffort, Mover } from './move.ts';
import type { Random } from './random.ts';

/** When a separation gives up. */
export interface Patience {
  /** Rounds without a better total before a strike. */
  readonly rounds: number;
  /** Strikes in a row that hardly improved before giving up. */
  readonly strikes: number;
}

/**
 * Guided local search on overlap (Egeblad, Nielsen, Odgaard 2007; Umetani et al. 2009; weights as in
 * DOI 10.48550/arXiv.2509.13329): moves overlapping copies to places of least weighted overlap, makes
 * pairs that stay in each other's way weigh more, until none overlap or patience runs out. Yields after
 * every round so that the caller may stop; ends with true where the copies came apart, else with the
 * arrangement at the least total found.
 */
export class Separation {
  readonly #arrangement: Arrangement;
  readonly #random: Random;
  readonly #mover: Mover;
  readonly #effort: MoveEffort;
  readonly #order: Int32Array;

  constructor(arrangement: Arrangement, random: Random, effort: MoveEffort) {
    this.#arrangement = arrangement;
    this.#random = random;
    this.#mover = new Mover(arrangement, random);
    this.#effort = effort;
    this.#order = new Int32Array(arrangement.count);
  }

  *run(patience: Patience): Generator<void, boolean> {
    const a = this.#arrangement;
    let least = a.total();
    if (least === 0) return true;
    a.weight.fill(1);
    let best: Positions = a.save();
    for (let strikes = 0; strikes < patience.strikes; ) {
      const atStart = least;
      for (let idle = 0; idle < patience.rounds; ) {
        this.#round();
        yield;
        const total = a.total();
        if (total === 0) return true;
        if (total < least) {
          idle = total < 0.98 * least ? 0 : idle + 1;
          least = total;
          best = a.save();
        } else idle++;
        this.#reweigh();
      }
      a.restore(best);
      strikes = least < 0.98 * atStart ? 0 : strikes + 1;
    }
    return false;
  }

  #round(): void {
    const a = this.#arrangement;
    let count = 0;
    for (let copy = 0; copy < a.count; copy++) if (a.overlaps(copy)) this.#order[count++] = copy;
    this.#random.shuffle(this.#order, count);
    for (let i = 0; i < count; i++) {
      const copy = this.#order[i] as number;
      if (a.overlaps(copy)) this.#mover.move(copy, this.#effort);
    }
  }

  /** Overlapping pairs gain weight, the worst doubling; free ones slowly lose theirs again. */
  #reweigh(): void {
    const { overlap, weight } = this.#arrangement;
    let worst = 0;
    for (let i = 0; i < overlap.length; i++) if ((overlap[i] as number) > worst) worst = overlap[i] as number;
    for (let i = 0; i < overlap.length; i++) {
      const value = overlap[i] as number;
      const now = weight[i] as number;
      if (value > 0) weight[i] = now * (1.2 + (0.8 * value) / worst);
      else if (now > 1) weight[i] = Math.max(1, now * 0.95);
    }
  }
}
