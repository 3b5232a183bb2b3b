import {
  blendCorner,
  distance,
  joinPaths,
  line,
  nearestOnPath,
  type Path,
  type Point,
  pathBounds,
  pathEnd,
  pathLength,
  pathStart,
  splitPathAtLength,
  tolerance,
} from '../../geometry/index.ts';
import { type Garment, landmarkOf, outlineOf, type Piece, pieceOf, walkAll } from '../../pattern/index.ts';
import { bad, good, type Result } from '../../units/index.ts';
import { heldEdges, heldSeams, replacePieces } from '../checks.ts';
import { cut } from '../cut.ts';
import { join } from '../join.ts';
import { motionOf, partBeside, slide, swing } from '../move.ts';
import { createTape } from '../tape.ts';
import type { Held, PieceCut } from '../types.ts';

/** A sleeve widened at the upper arm by the construction, and what became of its heights, mm. */
export interface WidenedSleeve {
  readonly after: Garment;
  readonly piece: string;
  readonly cuts: readonly PieceCut[];
  readonly held: readonly Held[];
  /** How much lower the cap is, and how much shorter the whole sleeve. */
  readonly capFalls: number;
  readonly shorter: number;
  /** Where an underarm corner came to lie, and where it was. */
  readonly underarm: { readonly before: Point; readonly after: Point };
  /** Sleeve-head ease before and after, mm. */
  readonly headEase: { readonly before: number; readonly after: number };
}

/** The cap may not fall under this share of its height (trade): beyond it the sleeve no longer hangs. */
const leastCap = 0.75;

/** How far on each side of its top a cap is redrawn, mm. */
const capReach = 45;

/** What half-widths b and c grow by in all when their squares grow by q. */
const gained = (b: number, c: number, q: number): number => Math.sqrt(b * b + q) - b + Math.sqrt(c * c + q) - c;

/** q of the trade's construction: Σ(√(b² + q) − b) = w over front and back, by halving. */
const squareFor = (b: number, c: number, w: number): number => {
  let [low, high] = [0, (b + c + w) ** 2];
  for (let i = 0; i < 80; i += 1) {
    const middle = (low + high) / 2;
    if (gained(b, c, middle) < w) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

interface SleeveAnatomy {
  readonly piece: Piece;
  readonly top: Point;
  readonly wrist: Point;
  readonly front: Point;
  readonly back: Point;
  readonly capFront: string;
  readonly capBack: string;
  readonly underarmFront: string;
  readonly underarmBack: string;
  readonly hem: string;
}

/** A set-in sleeve of one piece: two cap edges that meet at the top, two underarm edges, one hem; told by how they follow one another. */
const anatomyOf = (piece: Piece): SleeveAnatomy | null => {
  const top = landmarkOf(piece, 'cap-top');
  const edges = piece.runs.flatMap((run) => (run.kind === 'edge' ? [run] : []));
  if (!top || edges.length !== 5 || piece.runs.length !== 5) return null;
  const first = edges.findIndex(({ path }) => distance(pathStart(path), top) <= tolerance.walk);
  if (first < 0) return null;
  const [capBack, underarmBack, hem, underarmFront, capFront] = [0, 1, 2, 3, 4].map((i) => edges[(first + i) % 5]);
  if (!capBack || !underarmBack || !hem || !underarmFront || !capFront) return null;
  const [front, back] = [pathStart(capFront.path), pathEnd(capBack.path)];
  const wrist = { x: top.x, y: nearestOnPath(hem.path, { x: top.x, y: pathStart(hem.path).y }).point.y };
  if (Math.abs(front.y - back.y) > 1 || !(front.x < top.x && back.x > top.x)) return null;
  return {
    piece,
    top,
    wrist,
    front,
    back,
    capFront: capFront.edge,
    capBack: capBack.edge,
    underarmFront: underarmFront.edge,
    underarmBack: underarmBack.edge,
    hem: hem.edge,
  };
};

/** How far one has to be turned to lie along the other, radians, clockwise as seen. */
const turn = (from: Point, to: Point): number => Math.atan2(to.y, to.x) - Math.atan2(from.y, from.x);

/**
 * Full upper arm by w (trade, Alterations): the sleeve is cut down its middle from the cap's top T to the wrist W and
 * across from underarm U to underarm. Four quarters: the upper ones turn about T, the lower ones about W, hinged at U,
 * until the middle is w wide. With half-widths b, cap height h and lower length l, h′ = √(h² − q), l′ = √(l² − q).
 * Cap, underarm and wrist keep their lengths; the cap falls by about h − h′ and the sleeve is shorter by about that and
 * l − l′, less what redrawing cap and hem smoothly over their hinges gives back.
 *
 * Problems: `alter.no-piece` without such a sleeve; `alter.cap-too-flat` where the cap would fall under three quarters.
 */
export const widenSleeve = (garment: Garment, w: number): Result<WidenedSleeve> => {
  const sleeve = garment.pieces
    .filter(({ role }) => role === 'sleeve')
    .map(anatomyOf)
    .find((one) => one !== null);
  if (!sleeve) return bad('alter.no-piece', { role: 'sleeve' });
  const { piece, top, wrist, front, back } = sleeve;
  const level = (front.y + back.y) / 2;
  const [b, c] = [top.x - front.x, back.x - top.x];
  const [h, l] = [level - top.y, wrist.y - level];
  const q = squareFor(b, c, w);
  if (q > (1 - leastCap ** 2) * h * h) {
    const most = gained(b, c, (1 - leastCap ** 2) * h * h);
    return bad('alter.cap-too-flat', { amount: { mm: w }, most: { mm: Math.floor(most) } });
  }
  const [cap, lower] = [Math.sqrt(h * h - q), Math.sqrt(l * l - q)];
  const raised = h - cap + (l - lower);
  const centre = { x: top.x, y: level };
  const node = { node: 'centre' };
  const hem = outlineRun(piece, sleeve.hem);
  const made = cut(piece, {
    nodes: { centre },
    cuts: [
      { id: 'top', from: node, to: { edge: sleeve.capBack, at: 0 } },
      { id: 'wrist', from: node, to: { edge: sleeve.hem, at: nearestOnPath(hem, wrist).atLength / pathLength(hem) } },
      { id: 'front', from: node, to: { edge: sleeve.underarmFront, at: 1 } },
      { id: 'back', from: node, to: { edge: sleeve.underarmBack, at: 0 } },
    ],
  });
  if (!made.ok) return made;
  const [wide, wideBack] = [Math.sqrt(b * b + q), Math.sqrt(c * c + q)];
  const quarters = [
    { part: partBeside(made.value, 'top', 'left'), hinge: top, from: { x: -b, y: h }, to: { x: -wide, y: cap } },
    { part: partBeside(made.value, 'top', 'right'), hinge: top, from: { x: c, y: h }, to: { x: wideBack, y: cap } },
    {
      part: partBeside(made.value, 'wrist', 'right'),
      hinge: wrist,
      from: { x: -b, y: -l },
      to: { x: -wide, y: -lower },
    },
    {
      part: partBeside(made.value, 'wrist', 'left'),
      hinge: wrist,
      from: { x: c, y: -l },
      to: { x: wideBack, y: -lower },
    },
  ];
  let moved = made.value;
  for (const { part, hinge, from, to } of quarters) {
    moved = swing(moved, part, hinge, turn(from, to));
    if (hinge === wrist) moved = slide(moved, part, { x: 0, y: -raised });
  }
  const joined = join(moved);
  const redrawn = redrawnSleeve(joined.piece, sleeve);
  const after = { ...redrawn, levels: piece.levels.map((one) => movedLevel(one, moved, piece)) };
  const whole = replacePieces(garment, [after]);
  const tape = createTape();
  // Measured down the middle of the sleeve as redrawn: the cap rises a little over its hinge, the hem is straight.
  const crown = landmarkOf(after, 'cap-top') ?? top;
  const hemAfter = nearestOnPath(outlineRun(after, sleeve.hem), { x: top.x, y: wrist.y - raised }).point;
  const kept = [sleeve.underarmFront, sleeve.underarmBack];
  return good({
    after: whole,
    piece: piece.id,
    cuts: joined.cuts.map((one) => ({ ...one, piece: piece.id })),
    held: [...heldEdges(tape, piece, after, kept), ...heldSeams(tape, garment, whole)],
    capFalls: h - (top.y + cap - crown.y),
    shorter: wrist.y - top.y - (hemAfter.y - crown.y),
    underarm: { before: back, after: { x: top.x + wideBack, y: top.y + cap } },
    headEase: { before: easeOf(garment, piece), after: easeOf(whole, pieceOf(whole, piece.id)) },
  });
};

const outlineRun = (piece: Piece, edge: string): Path =>
  piece.runs.flatMap((run) => (run.kind === 'edge' && run.edge === edge ? run.path : []));

/** What its cap is longer than the armholes it is sewn into, mm. */
const easeOf = (garment: Garment, sleeve: Piece): number =>
  walkAll(garment)
    .filter(({ seam }) => (seam.a.piece === sleeve.id) !== (seam.b.piece === sleeve.id))
    .reduce(
      (sum, { seam, lengthA, lengthB }) => sum + (seam.a.piece === sleeve.id ? lengthA - lengthB : lengthB - lengthA),
      0,
    );

/** Each end of a level goes with the quarter it lies on. */
const movedLevel = (level: Piece['levels'][number], pieces: Parameters<typeof motionOf>[0], piece: Piece) => {
  const carried = (p: Point): Point => {
    const part = pieces.parts.findIndex(({ outline }) => nearestOnPath(outline, p).distance <= tolerance.walk);
    const { a, b, c, d, e, f } = motionOf(pieces, Math.max(part, 0));
    return part < 0 ? p : { x: a * p.x + c * p.y + e, y: b * p.x + d * p.y + f };
  };
  if (pathBounds(outlineOf(piece)).maxY < level.from.y) return level;
  return { id: level.id, from: carried(level.from), to: carried(level.to) };
};

/** The cap drawn smoothly over its top, the hem straight again, grain down the middle. Lines to lengthen at are left out: they no longer lie level. */
const redrawnSleeve = (piece: Piece, { capFront, capBack, hem, top }: SleeveAnatomy): Piece => {
  const [front, back] = [outlineRun(piece, capFront), outlineRun(piece, capBack)];
  const whole = joinPaths(front, back);
  const at = pathLength(front);
  const reach = Math.min(capReach, at / 2, pathLength(back) / 2);
  const smooth = blendCorner(whole, at, reach, reach);
  const middle = nearestOnPath(smooth, top);
  const [before, after] = splitPathAtLength(smooth, middle.atLength);
  if (!before || !after) return piece;
  const { minY, maxY } = pathBounds(outlineOf(piece));
  const inset = (maxY - minY) / 6;
  return {
    ...piece,
    runs: piece.runs.map((run) => {
      if (run.kind !== 'edge') return run;
      if (run.edge === capFront) return { ...run, path: before };
      if (run.edge === capBack) return { ...run, path: after };
      return run.edge === hem ? { ...run, path: [line(pathStart(run.path), pathEnd(run.path))] } : run;
    }),
    lines: [],
    landmarks: piece.landmarks.map((mark) => (mark.id === 'cap-top' ? { ...mark, at: middle.point } : mark)),
    grain: { from: { x: top.x, y: minY + inset }, to: { x: top.x, y: maxY - inset } },
  };
};
