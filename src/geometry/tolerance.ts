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
  /** An edge that changed its length by less than this, either way, is not told to have: half a pencil's line. */
  told: 0.2,
  /** An edge drawn smooth over the turn of a wedge is shorter than both its parts by at most this, never longer. */
  wedge: 2,
  /** A waist kept while the centre above it is blended may be wider or narrower by at most this. */
  waistKept: 3,
  /** A width asked for at a level that lies askew, or at a mark seated on its new line, may miss by at most this. */
  askew: 1.5,
  /** A sleeve's width at the upper arm, its cap and hem drawn smooth, may miss what was asked by at most this. */
  upperArm: 0.3,
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
