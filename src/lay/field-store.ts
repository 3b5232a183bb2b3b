/** How a cell stands to the region: wholly inside, wholly outside, or crossed by its border. */
export const within = 1;
export const without = 2;
export const crossed = 3;

/** Numbers kept for a border edge: start, end − start, 1 / length². */
export const edgeSize = 5;
/** Numbers kept for a tracing's part: its ends. */
export const wallSize = 4;
/** Numbers kept for a field: left, top, cells per unit across and down, cells across and down, first cell. */
export const headSize = 7;

/** The numbers of distance fields while they are being collected; see `DistanceFields` for what stands where. */
export interface FieldStore {
  readonly heads: number[];
  readonly edges: number[];
  readonly walls: number[];
  readonly cells: number[];
  readonly leaves: number[];
}

/**
 * Whether a point lies to the left of a part of a tracing (x right, y up). A point on it counts as a hair
 * above, or to the right of an upright one, so that tracings that run back on themselves cancel there too.
 */
export const leftOf = (ax: number, ay: number, dx: number, dy: number, x: number, y: number): boolean => {
  const side = dx * (y - ay) - dy * (x - ax);
  return side > 0 || (side === 0 && (dx > 0 || (dx === 0 && dy < 0)));
};
