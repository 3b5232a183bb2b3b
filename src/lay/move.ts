import type { Arrangement } from './arrangement.ts';
import type { Random } from './random.ts';
import type { Shape } from './table.ts';

/** How many places a move tries: over the whole strip, around the copy, and how many of the best are refined. */
export interface MoveEffort {
  readonly anywhere: number;
  readonly nearby: number;
  readonly refined: number;
}

interface Trial {
  shape: number;
  x: number;
  y: number;
  cost: number;
}

/** Looks for the place of least weighted overlap for one copy at a time. Holds only scratch space. */
export class Mover {
  readonly #arrangement: Arrangement;
  readonly #random: Random;
  readonly #best: Trial[] = [];

  constructor(arrangement: Arrangement, random: Random) {
    this.#arrangement = arrangement;
    this.#random = random;
  }

  /** Moves the copy to the best place found, if that is no worse than where it lies. Says whether it moved. */
  move(copy: number, effort: MoveEffort): boolean {
    const a = this.#arrangement;
    const random = this.#random;
    const item = a.table.copies[copy] as number;
    const shapes = a.table.shapesOf[item] as Int32Array;
    const onFold = a.table.strip.items[item]?.onFold === true;
    const before = a.weighted(copy);
    this.#best.length = 0;
    this.#consider(
      { shape: a.shape[copy] as number, x: a.x[copy] as number, y: a.y[copy] as number, cost: before },
      effort.refined + 1,
    );
    const [nowX, nowY] = [a.x[copy] as number, a.y[copy] as number];
    a.lookEverywhere(copy);
    for (let i = 0; i < effort.anywhere + effort.nearby; i++) {
      const shape = shapes[random.below(shapes.length)] as number;
      const { width, height } = a.table.shapes[shape] as Shape;
      const mostX = a.length - width;
      const mostY = a.table.strip.height - height;
      if (mostX < 0 || mostY < 0) continue;
      let x: number;
      let y: number;
      if (i < effort.nearby) {
        x = Math.min(mostX, Math.max(0, nowX + (random.next() - 0.5) * width));
        y = Math.min(mostY, Math.max(0, nowY + (random.next() - 0.5) * height));
      } else {
        x = random.next() * mostX;
        y = random.next() * mostY;
      }
      if (onFold) y = 0;
      const bound = this.#bound(effort.refined + 1);
      const cost = a.cost(copy, shape, x, y, bound);
      if (cost < bound) this.#consider({ shape, x, y, cost }, effort.refined + 1);
    }
    let chosen: Trial | null = null;
    for (const trial of this.#best) {
      this.#refine(copy, trial, onFold, 0.25, 0.02);
      if (chosen === null || trial.cost < chosen.cost) chosen = trial;
      if (trial.cost === 0) break;
    }
    if (chosen === null) return false;
    if (chosen.cost > 0) this.#refine(copy, chosen, onFold, 0.02, 0.001);
    if (chosen.cost > before) return false;
    a.place(copy, chosen.shape, chosen.x, chosen.y);
    a.measure(copy);
    return true;
  }

  #bound(most: number): number {
    return this.#best.length < most ? Infinity : (this.#best[this.#best.length - 1] as Trial).cost;
  }

  #consider(trial: Trial, most: number): void {
    const best = this.#best;
    let at = best.length;
    while (at > 0 && (best[at - 1] as Trial).cost > trial.cost) at--;
    best.splice(at, 0, trial);
    if (best.length > most) best.pop();
  }

  /** Coordinate descent, axes and diagonals in random order; steps from `first` to `last` of the shape's lesser extent. */
  #refine(copy: number, trial: Trial, onFold: boolean, first: number, last: number): void {
    const a = this.#arrangement;
    const { width, height } = a.table.shapes[trial.shape] as Shape;
    const mostX = a.length - width;
    const mostY = a.table.strip.height - height;
    const least = Math.min(width, height);
    let stepX = least * first;
    let stepY = onFold ? 0 : least * first;
    let looked = { x: Number.NaN, y: Number.NaN, reach: 0 };
    while (trial.cost > 0 && Math.max(stepX, stepY) >= least * last) {
      const axis = onFold ? 0 : this.#random.below(4);
      const dx = axis === 1 ? 0 : stepX;
      const dy = axis === 0 ? 0 : axis === 3 ? -stepY : stepY;
      const farX = Math.abs(trial.x - looked.x) + dx;
      const farY = Math.abs(trial.y - looked.y) + Math.abs(dy);
      if (!(farX <= looked.reach && farY <= looked.reach)) {
        looked = { x: trial.x, y: trial.y, reach: 3 * Math.max(stepX, stepY) };
        a.lookAround(copy, trial.shape, trial.x, trial.y, looked.reach);
      }
      let improved = false;
      for (let sign = 1; sign >= -1 && !improved; sign -= 2) {
        const x = Math.min(mostX, Math.max(0, trial.x + sign * dx));
        const y = onFold ? 0 : Math.min(mostY, Math.max(0, trial.y + sign * dy));
        const cost = a.cost(copy, trial.shape, x, y, trial.cost);
        if (cost < trial.cost) {
          trial.x = x;
          trial.y = y;
          trial.cost = cost;
          improved = true;
        }
      }
      const change = improved ? 1.1 : 0.5;
      if (axis !== 1) stepX *= change;
      if (axis !== 0) stepY *= change;
    }
  }
}
