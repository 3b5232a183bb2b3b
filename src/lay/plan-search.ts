import type { Positions } from './arrangement.ts';
import { copyArea } from './place.ts';
import type { PlannedStretch, StretchPlan } from './stretches.ts';
import { StripSearch } from './strip-search.ts';
import { makeTable, type Shape, type Strip, type Table } from './table.ts';
import type { Layout, LayoutProblem, Placement, Stretch } from './types.ts';

interface Work {
  readonly planned: PlannedStretch;
  readonly table: Table;
  readonly search: StripSearch;
  /** The borders are kept free of pieces by this, so that rounding cannot put one outside. */
  readonly marginX: number;
  readonly marginY: number;
  rounds: Generator<void, void>;
  /** The best positions when the plan last stood up to being verified. */
  proven: Positions;
}

/** A hair's breadth, as a share of the width, that the search leaves free along the borders. */
const marginShare = 1e-7;

function* startWork(planned: PlannedStretch, seed: number): Generator<void, Work> {
  const { strip } = planned;
  const margin = strip.height * marginShare;
  const folded = strip.items.some(({ onFold }) => onFold);
  const narrowed: Strip = { ...strip, height: strip.height - (folded ? margin : 2 * margin) };
  const narrow = yield* makeTable(narrowed);
  const fits = narrow.shapesOf.every((shapes) =>
    shapes.some((s) => (narrow.shapes[s] as Shape).height <= narrowed.height),
  );
  const table = fits ? narrow : { ...narrow, strip };
  const search = yield* StripSearch.start(table, seed);
  const marginY = folded || !fits ? 0 : margin;
  return { planned, table, search, marginX: margin, marginY, rounds: search.explore(), proven: search.best };
}

/** The search over all stretches of one way of dividing the work. */
export class PlanSearch {
  readonly #problem: LayoutProblem;
  readonly #plan: StretchPlan;
  readonly #works: readonly Work[];
  #next = 0;
  #compressing = false;

  private constructor(problem: LayoutProblem, plan: StretchPlan, works: readonly Work[]) {
    this.#problem = problem;
    this.#plan = plan;
    this.#works = works;
  }

  static *start(problem: LayoutProblem, plan: StretchPlan, seed: number): Generator<void, PlanSearch> {
    const works: Work[] = [];
    for (const planned of plan.stretches) works.push(yield* startWork(planned, seed + 7919 * works.length));
    return new PlanSearch(problem, plan, works);
  }

  /** One round of work on one stretch; false when nothing is left to do. */
  step(): boolean {
    for (let tried = 0; tried < this.#works.length; tried++) {
      const work = this.#works[this.#next++ % this.#works.length] as Work;
      if (work.rounds.next().done !== true) return true;
    }
    return false;
  }

  /** The plan as it is has been verified. */
  prove(): void {
    for (const work of this.#works) work.proven = work.search.best;
  }

  /** The plan as it is did not stand up to being verified: goes on from the last that did. */
  disprove(): void {
    for (const work of this.#works) work.search.goBackTo(work.proven);
    this.#begin();
  }

  /** Turns from exploring to compressing. */
  compress(): void {
    this.#compressing = true;
    this.#begin();
  }

  #begin(): void {
    for (const work of this.#works) {
      work.rounds = this.#compressing ? work.search.compress() : work.search.explore();
    }
  }

  /** Cloth the best plan takes, mm along it. */
  get length(): number {
    const between = this.#problem.cloth.gap * Math.max(0, this.#works.length - 1);
    return this.#works.reduce((sum, { search, marginX }) => sum + search.best.length + 2 * marginX, between);
  }

  /** The best plan so far. */
  layout(): Layout {
    const { cloth, items } = this.#problem;
    const stretches: Stretch[] = [];
    const placed: Placement[] = [];
    let from = 0;
    for (const work of this.#works) {
      placed.push(...placements(work, from, stretches.length));
      const length = work.search.best.length + 2 * work.marginX;
      stretches.push({ kind: work.planned.kind, from, length, height: work.planned.strip.height });
      from += length + cloth.gap;
    }
    const wanted = items.reduce((sum, item) => sum + (item.plain + item.mirrored) * copyArea(item), 0);
    const density = (100 * wanted) / (cloth.width * this.length);
    return { stretches, placed, length: this.length, density, spare: this.#plan.spare };
  }
}

const placements = (work: Work, from: number, stretch: number): Placement[] =>
  Array.from(work.table.copies, (item, copy) => {
    const at = work.search.best;
    const shape = work.table.shapes[at.shape[copy] as number] as Shape;
    const source = work.planned.sources[item] as PlannedStretch['sources'][number];
    return {
      id: source.item.id,
      rotation: shape.turn.rotation,
      mirrored: shape.turn.mirrored,
      x: (at.x[copy] as number) + shape.shiftX + work.marginX + from,
      // Adding zero turns −0 into 0.
      y: (at.y[copy] as number) + shape.shiftY + work.marginY + 0,
      stretch,
      opened: source.opened,
    };
  });
