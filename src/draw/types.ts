import type { Bounds, Path, Point } from '../geometry/index.ts';

/**
 * What a line or a word is for. The page, the SVG writer and the PDF writer each turn an ink into a
 * stroke of their own; nothing that draws names a colour or a width. Conventions: docs/look.md.
 */
export type Ink =
  /** The firm line that is cut along. */
  | 'cut'
  /** The thin line that is stitched. */
  | 'seam'
  /** Notches, darts, levels, names and other marks. */
  | 'mark'
  | 'grain'
  | 'fold'
  | 'level'
  /** The pattern as bought, under an alteration. */
  | 'original'
  /** What an alteration changed: red pencil, and a wavering dash so that it is told without colour. */
  | 'changed'
  /** The wearer's body: blue. */
  | 'body'
  | 'cloth'
  | 'selvage'
  | 'dimension'
  | 'paper'
  | 'faint';

/** Layers of a printed sheet; a drawing on the page can show and hide them too. */
export type DrawingLayer = 'cut' | 'seam' | 'marks' | 'original' | 'cloth' | 'body' | 'words';

export interface PathMark {
  readonly kind: 'path';
  readonly layer: DrawingLayer;
  readonly ink: Ink;
  /** One or more runs; all closed when `filled`. */
  readonly paths: readonly Path[];
  readonly filled?: boolean;
  /** Cloth's own colour, as CSS writes it. Only with ink 'cloth': nothing else chooses a colour. */
  readonly colour?: string;
}

export interface TextMark {
  readonly kind: 'text';
  readonly layer: DrawingLayer;
  readonly ink: Ink;
  /** On the baseline, at the text's start, middle or end. */
  readonly at: Point;
  readonly text: string;
  /** The em of the type in drawing mm: 3.53 is 10 point when printed at full scale. */
  readonly size: number;
  readonly anchor: 'start' | 'middle' | 'end';
  /** Radians, clockwise as seen. */
  readonly angle?: number;
  readonly weight?: 'regular' | 'bold';
}

/** A thing that can be pointed at: a piece, a placement, a size's bar. */
export interface GroupMark {
  readonly kind: 'group';
  readonly id: string;
  /** What a screen reader says of it. */
  readonly label: string;
  readonly marks: readonly Mark[];
}

export type Mark = PathMark | TextMark | GroupMark;

/** Anything drawn: one display list, in millimetres, that the page, SVG, PDF and docs all render. */
export interface Drawing {
  readonly bounds: Bounds;
  readonly label: string;
  readonly marks: readonly Mark[];
}
