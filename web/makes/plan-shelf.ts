import { type Layout, type LayoutProblem, verifyLayout } from '../../src/lay/index.ts';

/** Plans kept in the browser; older ones are found again by the same search. */
const mostKept = 8;
const place = 'easewright.plans';

interface Kept {
  readonly problem: string;
  readonly plan: Layout;
}

/** The best plans found so far, by what they are plans of, so that one found yesterday lies there today. */
export class PlanShelf {
  readonly #storage: () => Pick<Storage, 'getItem' | 'setItem'>;

  constructor(storage: () => Pick<Storage, 'getItem' | 'setItem'>) {
    this.#storage = storage;
  }

  #all(): readonly Kept[] {
    try {
      const read: unknown = JSON.parse(this.#storage().getItem(place) ?? '[]');
      return Array.isArray(read) ? (read as readonly Kept[]) : [];
    } catch {
      return [];
    }
  }

  /** The plan kept for a problem; null where there is none, or where what was kept can no longer be cut. */
  find(problem: LayoutProblem): Layout | null {
    const key = JSON.stringify(problem);
    const plan = this.#all().find((one) => one.problem === key)?.plan;
    if (!plan) return null;
    try {
      return verifyLayout(problem, plan).length === 0 ? plan : null;
    } catch {
      return null;
    }
  }

  /** Keeps a plan, last come first; a full storage keeps none, and the search finds it again. */
  keep(problem: LayoutProblem, plan: Layout): void {
    const key = JSON.stringify(problem);
    const all = [{ problem: key, plan }, ...this.#all().filter((one) => one.problem !== key)].slice(0, mostKept);
    try {
      this.#storage().setItem(place, JSON.stringify(all));
    } catch {
      // See above.
    }
  }
}

export const planShelf = new PlanShelf(() => window.localStorage);
