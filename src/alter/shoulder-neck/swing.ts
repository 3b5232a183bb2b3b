import {
  add,
  applyToPath,
  applyToPoint,
  compose,
  distance,
  type Path,
  type Point,
  pathLength,
  rotation,
  subtract,
  type Transform,
  tolerance,
  translation,
  turnBetween,
} from '../../geometry/index.ts';
import { dartsOf, edgeRuns, type Piece } from '../../pattern/index.ts';
import { bad, good, type Result } from '../../units/index.ts';
import type { Drawn } from '../reshape.ts';
import { endOf, slidEnd } from './lines.ts';
import { type Chain, type EdgeAt, endPoint, other, type Panel } from './upper.ts';

/** One stretch of a shoulder swung: how it moved, and the new lines of it and of the princess seam that meets it. */
export interface SwungPanel {
  readonly panel: Panel;
  readonly motion: Transform;
  /** By how many radians, positive clockwise as seen. */
  readonly turn: number;
  readonly drawn: Drawn;
}

const innerOf = ({ piece, edge, inner }: Panel): Point => endPoint(piece, { edge, end: inner });
const outerOf = ({ piece, edge, inner }: Panel): Point => endPoint(piece, { edge, end: other(inner) });

/** The motion that lays a stretch's inner end on a point and lets its outer end rise or fall so far from where it was; null where it is not that long. */
const swungTo = (inner: Point, outer: Point, innerNow: Point, down: number): Transform | null => {
  const y = outer.y + down;
  const size = distance(inner, outer);
  const square = size * size - (y - innerNow.y) ** 2;
  if (square <= 0) return null;
  const outerNow: Point = { x: innerNow.x + Math.sign(outer.x - inner.x) * Math.sqrt(square), y };
  const turn = turnBetween(subtract(outer, inner), subtract(outerNow, innerNow));
  return compose(rotation(turn, inner), translation(subtract(innerNow, inner)));
};

const turnOf = ({ a, b }: Transform): number => Math.atan2(b, a);

/** How much of the whole shoulder each stretch and those before it make. */
const shares = (chain: Chain): readonly number[] => {
  const lengths = chain.map((panel) => distance(innerOf(panel), outerOf(panel)));
  const whole = lengths.reduce((sum, one) => sum + one, 0);
  let passed = 0;
  return lengths.map((one) => {
    passed += one;
    return passed / whole;
  });
};

const lengthOf = (runs: readonly Path[]): number => runs.reduce((sum, path) => sum + pathLength(path), 0);

/** A princess seam whose upper end goes to a point: its last stretch drawn there. */
const drawnTo = (piece: Piece, at: EdgeAt, to: Point): readonly Path[] => {
  const runs = edgeRuns(piece, at.edge);
  const index = at.end === 'end' ? runs.length - 1 : 0;
  return runs.map((path, i) => {
    if (i !== index) return path;
    const k = at.end === 'end' ? path.length - 1 : 0;
    return path.map((segment, j) => {
      if (j !== k) return segment;
      const by = subtract(to, at.end === 'end' ? segment.to : segment.from);
      const end = at.end === 'end' ? { to } : { from: to };
      if (segment.kind === 'line') return { ...segment, ...end };
      return at.end === 'end'
        ? { ...segment, ...end, control2: add(segment.control2, by) }
        : { ...segment, ...end, control1: add(segment.control1, by) };
    });
  });
};

/**
 * A shoulder swung about the neck point until its outer end lies so many mm lower (negative: higher), every stretch of it
 * as long as it was and a princess seam between lengthened on both sides alike. A lining that begins further out than its shell is
 * carried by the motion of the shell's first stretch. Problem `alter.shoulder-too-steep`.
 */
export const swungShoulder = (chain: Chain, down: number, shell?: SwungPanel): Result<readonly SwungPanel[]> => {
  const swung: SwungPanel[] = [];
  const upTo = shares(chain);
  let longer = 0;
  for (const [i, panel] of chain.entries()) {
    const { piece, edge, innerMeets, outerMeets } = panel;
    const [inner, outer] = [innerOf(panel), outerOf(panel)];
    const drawn: Record<string, readonly Path[]> = {};
    let innerNow = inner;
    if (i > 0) {
      const seam = slidEnd(piece, innerMeets.edge, innerMeets.end, longer);
      if (!seam.ok) return seam;
      drawn[innerMeets.edge] = seam.value;
      innerNow = endOf(seam.value, innerMeets.end);
    }
    const last = i === chain.length - 1;
    const alike = i === 0 && shell && distance(outerOf(shell.panel), outer) <= tolerance.kink;
    const motion = alike ? shell.motion : swungTo(inner, outer, innerNow, down * (last ? 1 : (upTo[i] as number)));
    if (!motion) return bad('alter.shoulder-too-steep', { piece: piece.name });
    drawn[edge] = edgeRuns(piece, edge).map((path) => applyToPath(motion, path));
    if (!last) {
      const seam = drawnTo(piece, outerMeets, applyToPoint(motion, outer));
      longer = lengthOf(seam) - lengthOf(edgeRuns(piece, outerMeets.edge));
      drawn[outerMeets.edge] = seam;
    }
    swung.push({ panel, motion, turn: turnOf(motion), drawn });
  }
  return good(swung);
};

/** Where a swung shoulder's outer end went. */
export const movedBy = ({ panel, motion }: SwungPanel): Point => {
  const outer = outerOf(panel);
  return subtract(applyToPoint(motion, outer), outer);
};

/** A piece after its shoulder was swung, its darts in the shoulder turned with it so that their legs stay equal. */
export const dartsSwung = (before: Piece, after: Piece, { panel, motion }: SwungPanel): Piece => {
  const inEdge = new Set(
    dartsOf(before)
      .filter(({ id }) => {
        const mouth = before.runs.findIndex((run) => run.kind === 'mouth' && run.dart === id);
        const beside = before.runs[(mouth + before.runs.length - 1) % before.runs.length];
        return beside?.kind === 'edge' && beside.edge === panel.edge;
      })
      .map(({ id }) => id),
  );
  if (inEdge.size === 0) return after;
  return {
    ...after,
    darts: after.darts.map((dart) =>
      inEdge.has(dart.id) ? { ...dart, point: applyToPoint(motion, dart.point) } : dart,
    ),
  };
};
