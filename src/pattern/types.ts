import type { MeasureId, Measures } from '../body/types.ts';
import type { Path, Point } from '../geometry/index.ts';

/** What a piece is in the garment. Alterations find pieces by role, never by a pattern's own names. */
export type PieceRole =
  | 'front'
  | 'back'
  /** The panel between a princess seam and the side. */
  | 'side-front'
  | 'side-back'
  | 'sleeve'
  /** The under sleeve of a two-piece sleeve; its upper part is the `sleeve`. */
  | 'under-sleeve'
  | 'yoke'
  /** A gathered or flared length joined below. */
  | 'tier'
  | 'bib'
  | 'strap'
  | 'hood'
  | 'placket'
  | 'front-facing'
  | 'back-facing'
  | 'neck-band'
  | 'cuff'
  | 'collar'
  | 'waistband'
  | 'pocket'
  | 'other';

export type Layer = 'shell' | 'lining' | 'interfacing';

/**
 * One run of the outline. Runs follow one another around the piece, each beginning exactly where the
 * last ended. A run belongs to a named edge, or is the straight mouth of a dart between its legs' ends.
 * An edge interrupted by a dart is two runs with the same edge id, in order.
 */
export type Run =
  | { readonly kind: 'edge'; readonly edge: string; readonly path: Path }
  | { readonly kind: 'mouth'; readonly dart: string; readonly path: Path };

/** How the allowance behaves at an edge, which decides the corners of the cut line. */
export type Finish =
  /** Stitched to a mate; corners are mitred and cut off at a limit. */
  | 'seam'
  /** Turned up along the edge; the allowance mirrors the piece at the fold. */
  | 'hem'
  /** Laid to folded cloth; no allowance, the piece opens to double. */
  | 'fold'
  /** Left raw or overlocked; no allowance is turned. */
  | 'raw';

/** What holds for a whole named edge, whatever number of runs it has. */
export interface Edge {
  readonly id: string;
  readonly finish: Finish;
  /** Seam allowance in mm, outward; 0 on the fold. */
  readonly allowance: number;
}

/**
 * A wedge stitched away. Its legs run from `point` to the two ends of its mouth run, which carries the
 * same id. `pressed` says to which neighbour the folded wedge is pressed, in outline order: 'before' is
 * towards the edge run that precedes the mouth, 'after' towards the one that follows.
 */
export interface Dart {
  readonly id: string;
  readonly point: Point;
  /** The landmark the dart aims at; its point stops short of it. */
  readonly aims?: string;
  readonly pressed: 'before' | 'after';
}

/** A mark on an edge that meets its mate: a fraction of the edge's whole length (its runs joined, darts closed) from its start in outline order. */
export interface Notch {
  readonly id: string;
  readonly edge: string;
  readonly at: number;
  /** How many strokes: one at the front, two at the back is the trade's habit. */
  readonly strokes: 1 | 2;
}

/** Where the body's level (bust, waist, hip, upper-arm, elbow…) lies across the piece. `from` is at the centre or, on a sleeve, its front. */
export interface Level {
  readonly id: string;
  readonly from: Point;
  readonly to: Point;
  /** Where the line bends, as a tape does over the bust point once the side has been swung. Straight when absent. */
  readonly over?: Point;
  /** Ends at which the width is measured to the line's own end, though the piece goes on: at the centre line of an overlap, at a pleat's fold. */
  readonly stops?: 'from' | 'to' | 'both';
}

/** A named point: bust-point, shoulder-point, neck-point, underarm, waist-side… */
export interface Landmark {
  readonly id: string;
  readonly at: Point;
}

/** A line inside the piece: fold, placement, stitching, lengthen-or-shorten. */
export interface InnerLine {
  readonly id: string;
  readonly kind: 'fold' | 'placement' | 'stitching' | 'lengthen-or-shorten';
  readonly path: Path;
}

export interface Grain {
  readonly from: Point;
  readonly to: Point;
}

export interface CutOrder {
  readonly layer: Layer;
  /** How many cut from this layer's cloth. A piece on the fold counts as one. */
  readonly count: number;
  /** Half of them are mirror images. */
  readonly mirrored: boolean;
}

/**
 * One shape to cut, lying face up, centre front or back along y. `runs` is the seam line: closed,
 * simple, and clockwise as seen (x right, y down). Millimetres at full precision.
 */
export interface Piece {
  readonly id: string;
  readonly name: string;
  readonly role: PieceRole;
  readonly cut: readonly CutOrder[];
  readonly runs: readonly Run[];
  readonly edges: readonly Edge[];
  readonly darts: readonly Dart[];
  readonly notches: readonly Notch[];
  readonly grain: Grain;
  readonly levels: readonly Level[];
  readonly landmarks: readonly Landmark[];
  readonly lines: readonly InnerLine[];
}

/** One side of a seam: an edge walked from its start (in outline order), or from its end when `reversed`. */
export interface SeamSide {
  readonly piece: string;
  readonly edge: string;
  readonly reversed: boolean;
}

/**
 * Two edges stitched together. `easeMin` ≤ length a − length b ≤ easeMax, millimetres: side a is the one
 * eased, gathered or (negative) stretched on to b.
 */
export interface Seam {
  readonly id: string;
  readonly a: SeamSide;
  readonly b: SeamSide;
  readonly easeMin: number;
  readonly easeMax: number;
  /** What is done with the difference. Pleated: folded away at marked lines. */
  readonly how: 'plain' | 'eased' | 'gathered' | 'stretched' | 'pleated';
  /** Pairs of notch ids, a's and b's, that should meet. */
  readonly notches: readonly (readonly [string, string])[];
}

/** How a finished girth is read off the pieces at a level, and which body measure it goes round. */
export interface Girth {
  readonly level: string;
  readonly measure: MeasureId;
  /** Round the whole body, or round one arm or leg (then a mirrored pair counts once). */
  readonly around: 'body' | 'limb';
  /**
   * Pieces that carry the level. Factor: times counted, 2 on the fold or for a mirrored pair round the body. `level`: the
   * piece's own name for it, where a piece opened from the fold carries it once for each half.
   */
  readonly pieces: readonly { readonly piece: string; readonly factor: number; readonly level?: string }[];
  /** Told for one arm or leg where the two differ; the right one's is told first, without this. */
  readonly half?: 'left';
}

/** Pieces, how they join, and where they are measured: a pattern in one size, or one being altered. */
export interface Garment {
  readonly pieces: readonly Piece[];
  readonly seams: readonly Seam[];
  readonly girths: readonly Girth[];
}

export interface Size {
  readonly id: string;
  /** The body this size is drafted for: the printed body chart, in mm. */
  readonly body: Measures;
  readonly garment: Garment;
}

export interface ClothAdvice {
  readonly structure: 'woven' | 'knit';
  /** Weight in g/m², from and to. */
  readonly weight: readonly [number, number];
  /** Crosswise stretch needed, as a fraction; 0 for wovens. */
  readonly stretch: number;
  /** Words of the trade for suitable cloths. */
  readonly cloths: readonly string[];
}

/** What is bought beside the cloth; the trade's words for each stand in words/notions.ts. */
export type NotionKind =
  | 'concealed-zip'
  | 'zip'
  | 'open-ended-zip'
  | 'elastic'
  | 'button'
  | 'press-stud'
  | 'hook-and-bar'
  | 'buckle'
  | 'stay-tape'
  | 'bias-binding'
  | 'cord-stop'
  | 'shoulder-pad'
  | 'interfacing';

/**
 * How much of a notion a garment takes, read off its pieces or the body, so that it follows every size and
 * alteration. Length, mm: (edges named, each as often as it is met, + a body measure) × `share` + `plus`,
 * up to the next `step`. A count may follow from a length instead: one each `every` mm, and one more.
 */
export interface NotionRule {
  readonly what: NotionKind;
  readonly count?: number;
  /** Width of an elastic, tape or binding; diameter of a button, mm. */
  readonly size?: number;
  readonly along?: readonly NotionEdge[];
  readonly around?: MeasureId;
  readonly share?: number;
  readonly plus?: number;
  readonly step?: number;
  readonly every?: number;
}

/** An edge a notion runs along, the whole of it or between two notches on it. */
export interface NotionEdge {
  readonly piece: string;
  readonly edge: string;
  readonly times: number;
  readonly from?: string;
  readonly to?: string;
}

/** One version of a pattern: a length, a sleeve, a collar. */
export interface PatternView {
  readonly id: string;
  readonly name: string;
  readonly about: string;
}

/** A pattern with its pieces: one readable JSON document, see docs/pattern-format.md. */
export interface Pattern {
  readonly format: 'easewright-pattern/1';
  readonly id: string;
  readonly name: string;
  readonly about: string;
  readonly for: 'women' | 'men' | 'child';
  readonly kind: 'top' | 'dress' | 'jacket' | 'coat' | 'trousers' | 'skirt';
  /** Bust girth − upper bust girth it is drafted for, mm; absent where there is no bust shaping. */
  readonly draftedCup?: number;
  /** Stature it is drafted for, mm. */
  readonly draftedStature: number;
  /** The view these pieces make, where the pattern has several. */
  readonly view?: PatternView;
  readonly cloth: ClothAdvice;
  /** As rules that follow the pieces, or in the words they are printed with. */
  readonly notions: readonly (string | NotionRule)[];
  readonly sizes: readonly Size[];
}

/** One step of an alteration list. */
export interface AlterationStep {
  readonly id: string;
  readonly alteration: string;
  readonly version: number;
  readonly on: boolean;
  readonly params: Readonly<Record<string, number | string | boolean>>;
}

export interface AlterationList {
  readonly format: 'easewright-alterations/1';
  readonly pattern: string;
  readonly steps: readonly AlterationStep[];
}
