import type { Measures, Survey } from '../body/index.ts';
import type { Garment, NotionRule, Pattern, PatternView } from '../pattern/index.ts';
import type { Result } from '../units/index.ts';
import type { WorkStep } from '../words/index.ts';
import type { ShapeCheck } from './shape-check.ts';
import type { FlatSketch } from './sketch.ts';

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
  /** One of the pattern's views; its first when left out. */
  readonly view?: string;
}

/** Which of a house pattern's versions: its first view and middle cup when left out. */
export interface HouseChoice {
  readonly view?: string;
  /** Bust girth − upper bust girth, mm: one of the pattern's cups. */
  readonly cup?: number;
}

/**
 * A pattern of our own: a function from measures and ease to pieces, and a chart of bodies it is
 * graded through. In one view every size, and every body, has the same pieces, edges, notches, darts and levels.
 */
export interface HousePattern {
  readonly id: string;
  readonly name: string;
  readonly about: string;
  readonly for: Pattern['for'];
  readonly kind: Pattern['kind'];
  /** After whom measures that were not taken are estimated: a survey, or the children's chart. */
  readonly estimatedAfter: Survey | 'children';
  readonly views: readonly PatternView[];
  /** Cups it is drafted for, mm of bust girth − upper bust girth; none where no dart or seam shapes the bust. */
  readonly cups: readonly number[];
  /** The cup nearest to a body's; undefined where there are none, or the body's bust and upper bust are not both known. */
  readonly nearestCup: (body: Measures) => number | undefined;
  /** The middle cup's chart. */
  readonly chart: readonly ChartSize[];
  /** The chart for one of the cups. */
  readonly chartFor: (cup?: number) => readonly ChartSize[];
  /**
   * The ease the design states for this body, by level, before anything is drafted. A finished girth
   * read off the drafted pieces equals body + this ease within `tolerance.girth`. Where the design
   * hangs free of the body (a waist with no waist darts) the ease follows from the line of the side.
   */
  readonly ease: (body: Measures, options?: DraftOptions) => Result<EaseByLevel>;
  /** Drafts the garment for one body. */
  readonly draft: (body: Measures, options?: DraftOptions) => Result<Garment>;
  /** The whole pattern in one view and cup: every size of its chart, drafted. */
  readonly pattern: (choice?: HouseChoice) => Pattern;
  readonly notions: (view?: string) => readonly NotionRule[];
  /** What a cutter looks at before cutting a view. */
  readonly shape: (view?: string) => readonly ShapeCheck[];
  /** The view's garment as it lies flat, front and back, put together from its pieces. */
  readonly sketch: (garment: Garment, view?: string) => FlatSketch;
  /** Order of work of a view, with pressing and trying on. */
  readonly work: (view?: string) => readonly WorkStep[];
  readonly cautions: readonly string[];
}
