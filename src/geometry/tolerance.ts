/**
 * Every tolerance the program uses, in millimetres. Nowhere else may one be written as a number.
 * Each says on which side the approximation may err.
 */
export const tolerance = {
  /** Two points nearer than this are the same point. Well under a sharpened pencil's 200 µm and well over rounding. */
  same: 1e-6,
  /** Arc length is computed to within this, either side. */
  length: 1e-4,
  /** An offset curve strays from the true offset by at most this, either side. */
  offset: 0.02,
  /** Curves flattened for drawing and checks lie inside the curve by at most this. */
  flatten: 0.02,
  /** What an alteration says it holds must hold to this. */
  holds: 0.1,
  /** Smoothing the kink a hinge leaves in a curve may move the curve by at most this. */
  kink: 1,
  /** Beyond the ease a seam allows, its two sides may differ by at most this. */
  seam: 0.1,
  /** Notches that should meet may lie this far apart when the seam is walked: a pencil line's width. */
  notch: 1,
  /** A line that starts on an edge does not count that edge as crossed within this. */
  walk: 1e-3,
  /** A dart's legs may differ by at most this, so that it folds flat. */
  leg: 0.1,
  /** mm²: an altered piece's area is what it was plus what was put in, to this before truing, either side. */
  area: 1e-3,
  /** A finished girth drafted for a body may differ from body + ease by at most this. */
  girth: 1,
  /** Lengthening or shortening may change a finished girth at a level by at most this, from blending the edges. */
  girthKept: 3,
  /** A layout may overlap by at most this: pieces for layout are flattened outward, so real overlap is none. */
  layout: 0.01,
  /** Curves flattened for layout lie outside the curve, never inside, by at most this. */
  outward: 0.5,
  /** The ends of a grain arrow may lie this far from parallel before the grain counts as off. */
  grain: 3,
} as const;
