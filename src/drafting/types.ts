import type { Measures } from '../body/index.ts';
import type { Garment, Pattern } from '../pattern/index.ts';
import type { Result } from '../units/index.ts';

/** One size of a house pattern's body chart: the body the size is drafted for, millimetres. */
export interface ChartSize {
  readonly id: string;
  readonly body: Measures;
}

/**
 * Ease by level id (`bust`, `waist`, `hip`, `upper-arm` …): finished girth minus the body's girth
 * there, millimetres over the whole girth.
 */
export type EaseByLevel = Readonly<Record<string, number>>;

/** What may be asked of a draft beyond the body. Anything left out is the design's own. */
export interface DraftOptions {
  /** Ease wished for, by level; levels left out keep the design's. */
  readonly ease?: EaseByLevel;
}

/**
 * A pattern of our own: a function from measures and ease to pieces, and a chart of bodies it is
 * graded through. Every size, and every body, has the same pieces, edges, notches, darts and levels.
 */
export interface HousePattern {
  readonly id: string;
  readonly name: string;
  readonly about: string;
  readonly for: 'women' | 'men' | 'child';
  readonly chart: readonly ChartSize[];
  /**
   * The ease the design states for this body, by level, before anything is drafted. A finished girth
   * read off the drafted pieces equals body + this ease within `tolerance.girth`. Where the design
   * hangs free of the body (a waist with no waist darts) the ease follows from the line of the side.
   */
  readonly ease: (body: Measures, options?: DraftOptions) => Result<EaseByLevel>;
  /** Drafts the garment for one body. */
  readonly draft: (body: Measures, options?: DraftOptions) => Result<Garment>;
  /** The whole pattern: every size of its chart, drafted. */
  readonly pattern: () => Pattern;
}
