import {
  applyToPath,
  type Cubic,
  line,
  mirrorX,
  type Path,
  type Point,
  pathEnd,
  pathStart,
  reversePath,
  segmentPointAt,
  splitSegment,
} from '../geometry/index.ts';
import type { InnerLine, Level, Notch, Piece } from '../pattern/index.ts';
import { allowances, closeRuns, edge, edgeRun, interfacing, landmark, shell, straightRun } from './pieces.ts';
import { solveBetween } from './solve.ts';

/** A neckline drawn outward from the centre, in two at a distance from it: what a button stand covers, and the rest; null where it ends before. */
export const splitAtStand = (neck: Cubic, half: number): readonly [covered: Cubic, kept: Cubic] | null => {
  const t = solveBetween((at) => segmentPointAt(neck, at).x - half, 0, 1, 1e-12);
  return t === null ? null : (splitSegment(neck, t) as readonly [Cubic, Cubic]);
};

export interface ButtonStandRequest {
  /** The front's neckline that it covers, from the centre front to the stand's seam, mm. */
  readonly neck: Cubic;
  /** The pieces it is sewn to from the top down, each with the length of its edge. */
  readonly joined: readonly { readonly id: string; readonly length: number }[];
  /** Heights of the buttons, and of the levels that run across it. */
  readonly buttons: readonly number[];
  readonly levels: readonly { readonly id: string; readonly y: number }[];
  /** Heights at which it may be lengthened. */
  readonly lengthen: readonly { readonly id: string; readonly y: number }[];
}

/** Length of the mark a button and its hole stand on, mm. */
const hole = 14;

const through = (x: number, from: number, to: number): Path => [line({ x, y: from }, { x, y: to })];

/**
 * A button stand cut apart and folded along its outer edge: sewn to the front edges of everything from neck to hem, it
 * hides the ends of every gather. Its width is laid evenly over the centre front (x = 0), so a buttoned front measures
 * from centre to centre. Its top copies the neckline and the neckline's mirror image, since beyond the centre it
 * lies over the other front. A mirrored pair. As taught in manuals of dressmaking (separate front bands).
 */
export const draftButtonStand = (asked: ButtonStandRequest): Piece => {
  const outerNeck: Path = [...applyToPath(mirrorX(), reversePath([asked.neck])), asked.neck];
  const seam = pathEnd(outerNeck);
  const fold = pathStart(outerNeck);
  const innerNeck = reversePath(applyToPath(mirrorX(fold.x), outerNeck));
  const inner = pathStart(innerNeck);
  const below = (count: number): number => asked.joined.slice(0, count).reduce((sum, { length }) => sum + length, 0);
  const corners = [...asked.joined.keys(), asked.joined.length].map(
    (count): Point => ({ x: seam.x, y: seam.y + below(count) }),
  );
  const hem = corners.at(-1) as Point;
  const outside = asked.joined.map(({ id }, i) => straightRun(id, corners[i] as Point, corners[i + 1] as Point));
  const inside = asked.joined
    .map(({ id }, i) =>
      straightRun(
        `${id}-inside`,
        { x: inner.x, y: (corners[i + 1] as Point).y },
        { x: inner.x, y: (corners[i] as Point).y },
      ),
    )
    .toReversed();
  const narrow = allowances.neck;
  return {
    id: 'button-stand',
    name: 'Button stand',
    role: 'placket',
    cut: [shell(2, true), interfacing(2, true)],
    runs: closeRuns([
      edgeRun('neck-inside', innerNeck),
      edgeRun('neck', outerNeck),
      ...outside,
      straightRun('hem', hem, { x: fold.x, y: hem.y }),
      straightRun('hem-inside', { x: fold.x, y: hem.y }, { x: inner.x, y: hem.y }),
      ...inside,
    ]),
    edges: [
      edge('neck-inside', 'seam', narrow),
      edge('neck', 'seam', narrow),
      ...asked.joined.flatMap(({ id }) => [edge(id, 'seam', narrow), edge(`${id}-inside`, 'seam', narrow)]),
      edge('hem', 'seam', narrow),
      edge('hem-inside', 'seam', narrow),
    ],
    darts: [],
    notches: [
      { id: 'centre-front', edge: 'neck', at: 0.5, strokes: 1 },
      // Where one piece's front edge ends and the next one's begins, on both halves.
      ...asked.joined.slice(0, -1).flatMap(({ id }): readonly Notch[] => [
        { id: `${id}-end`, edge: id, at: 1, strokes: 1 },
        { id: `${id}-end-inside`, edge: `${id}-inside`, at: 0, strokes: 1 },
      ]),
    ],
    grain: { from: { x: -0.5 * seam.x, y: seam.y + 60 }, to: { x: -0.5 * seam.x, y: hem.y - 60 } },
    levels: asked.levels.map(({ id, y }): Level => ({ id, from: { x: 0, y }, to: { x: seam.x, y }, stops: 'from' })),
    landmarks: [landmark('centre-neck', asked.neck.from), landmark('hem-centre', { x: 0, y: hem.y })],
    lines: [
      { id: 'fold', kind: 'fold', path: through(fold.x, fold.y, hem.y) },
      { id: 'centre-front', kind: 'placement', path: through(0, asked.neck.from.y, hem.y) },
      ...asked.buttons.map(
        (y, i): InnerLine => ({
          id: `button-${i + 1}`,
          kind: 'placement',
          path: through(0, y - hole / 2, y + hole / 2),
        }),
      ),
      ...asked.lengthen.map(
        ({ id, y }): InnerLine => ({
          id,
          kind: 'lengthen-or-shorten',
          path: [line({ x: inner.x, y }, { x: seam.x, y })],
        }),
      ),
    ],
  };
};

/** How a row of buttons is spaced. Heights, mm. */
export interface ButtonRow {
  /** The collar's button, above. */
  readonly collar: number;
  /** A button lies here: gaping starts at the bust. */
  readonly bust: number;
  readonly hem: number;
  /** Seams a buttonhole must stay clear of. */
  readonly clear: readonly number[];
  /** How many lie below the bust's. */
  readonly below: number;
}

/** How far above the hem the last button may lie, and how many spacings are weighed between. */
const lastAboveHem = { least: 80, most: 205 } as const;
const looks = 51;

/**
 * Heights of the buttons on the stand, top down: one between collar and bust, one at the bust, the others evenly below
 * it. Of the spacings that end well above the hem, the one that keeps holes furthest from the seams across (where
 * layers are thick), and, where several do, the widest. As taught in manuals of dressmaking.
 */
export const buttonHeights = ({ collar, bust, hem, clear, below }: ButtonRow): readonly number[] => {
  const rows = Array.from({ length: looks }, (_, i) => {
    const last = lastAboveHem.least + ((lastAboveHem.most - lastAboveHem.least) * i) / (looks - 1);
    const apart = (hem - last - bust) / below;
    const heights = Array.from({ length: below + 1 }, (__, k) => bust + k * apart);
    const nearest = Math.min(...heights.flatMap((at) => clear.map((seam) => Math.abs(at - seam))));
    return { heights, nearest };
  });
  const best = rows.reduce((found, row) => (row.nearest > found.nearest + 0.5 ? row : found));
  return [(collar + bust) / 2, ...best.heights];
};
