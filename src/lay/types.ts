import type { Point } from '../geometry/index.ts';
import type { Polygon, Turn } from './polygon.ts';

/** How the cloth lies on the table: one layer, or folded along its length with the selvages together. */
export type ClothFold = 'single' | 'lengthwise';

/** The cloth a plan is made for. Millimetres. */
export interface LayoutCloth {
  /** Usable width between the selvages, opened out. */
  readonly width: number;
  /** Length in hand; null when it is still to be bought. */
  readonly length: number | null;
  readonly fold: ClothFold;
  /** Everything is laid one way: nap, one-way print. */
  readonly oneWay: boolean;
  /** Room for the blade between pieces. */
  readonly gap: number;
}

/** A shape to cut. */
export interface LayoutItem {
  readonly id: string;
  readonly name: string;
  /** In the piece's own coordinates; a piece on the fold is its half. Encloses the cut line, so that nothing laid can really overlap. */
  readonly outline: Polygon;
  /** Copies cut as drawn, and copies cut as its mirror image. A piece on the fold counts as one copy, as drawn. */
  readonly plain: number;
  readonly mirrored: number;
  /** How its grain allows it to lie; turns of copies as drawn and of mirrored copies both. */
  readonly turns: readonly Turn[];
  /** The two ends of the edge that is laid to the fold, which are corners of the outline; null for other pieces. */
  readonly fold: readonly [Point, Point] | null;
}

export interface LayoutProblem {
  readonly cloth: LayoutCloth;
  readonly items: readonly LayoutItem[];
}

/** One stretch of the cloth, from selvage to selvage or, folded, from the fold to the selvages. */
export interface Stretch {
  readonly kind: 'single' | 'folded';
  /** Where it begins along the cloth. */
  readonly from: number;
  readonly length: number;
  /** The cloth's width, or half of it where folded. */
  readonly height: number;
}

/**
 * One laying down of a piece. A point p of its outline goes to R(rotation)·p + (x, y), p.x negated first
 * when mirrored; x runs along the cloth, y from the fold (folded) or one selvage (single).
 * On a folded stretch it cuts two layers: a mirrored pair, or one opened piece where it lies on the fold.
 */
export interface Placement {
  readonly id: string;
  /** Degrees, from x towards y. */
  readonly rotation: number;
  readonly mirrored: boolean;
  readonly x: number;
  readonly y: number;
  /** Which stretch of the layout it lies on. */
  readonly stretch: number;
  /** The piece is drawn as half and laid opened to double. */
  readonly opened: boolean;
}

/** A plan a person can cut from. */
export interface Layout {
  readonly stretches: readonly Stretch[];
  readonly placed: readonly Placement[];
  /** Cloth taken, mm along it. */
  readonly length: number;
  /** Percent of the cloth taken that is pieces. */
  readonly density: number;
  /** Copies that are cut and not wanted, because folded cloth yields pairs. */
  readonly spare: readonly { readonly id: string; readonly copies: number }[];
}
