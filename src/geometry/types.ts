/** A point or vector; millimetres, x to the right, y down. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Line {
  readonly kind: 'line';
  readonly from: Point;
  readonly to: Point;
}

/** A cubic Bézier curve. */
export interface Cubic {
  readonly kind: 'cubic';
  readonly from: Point;
  readonly control1: Point;
  readonly control2: Point;
  readonly to: Point;
}

export type Segment = Line | Cubic;

/** Segments end to start: each begins exactly where the one before it ends. Never empty. */
export type Path = readonly Segment[];

/** A path that ends exactly where it began. */
export type Outline = Path;

export interface Bounds {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** The affine map x' = a·x + c·y + e, y' = b·x + d·y + f. */
export interface Transform {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
}
