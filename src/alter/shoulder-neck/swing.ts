import {
  add,
  applyToPath,
  applyToPoint,
  compose,
  distance,
  dot,
  endTangent,
  type Path,
  type Point,
  pathLength,
  rotation,
  scale,
  startTangent,
  subtract,
  type Transform,
  tolerance,
  translation,
} from '../../geometry/index.ts';
import { dartsOf, edgeRuns, type Piece } from '../../pattern/index.ts';
import { bad, good, type Result } from '../../units/index.ts';
import { easedField } from '../fields.ts';
import { type EdgeAt, endPoint, other } from '../parts.ts';
import type { Drawn } from '../reshape.ts';
import { secant } from '../secant.ts';
import { warped } from '../warp.ts';
import { endOf } from './lines.ts';
import type { Chain, Panel } from './upper.ts';

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

const lengthOf = (runs: readonly Path[]): number => runs.reduce((sum, path) => sum + pathLength(path), 0);

/** How far down a princess seam follows its upper end, mm. */
const seamReach = 150;

/** A princess seam whose upper end goes to a point, the rest following evenly less; it keeps its direction there. */
const drawnTo = (piece: Piece, at: EdgeAt, to: Point): readonly Path[] => {
  const runs = edgeRuns(piece, at.edge);
  const index = at.end === 'end' ? runs.length - 1 : 0;
  const by = subtract(to, endPoint(piece, at));
  return runs.map((path, i) => {
    if (i !== index) return path;
    const length = pathLength(path);
    const reach = Math.min(seamReach, length);
    const field =
      at.end === 'end'
        ? easedField(length - reach, length, { by: still }, { by })
        : easedField(0, reach, { by }, { by: still });
    return warped(path, field);
  });
};

const still: Point = { x: 0, y: 0 };

/** Out of a seam at one of its ends, and square to that, towards the armhole. */
const frameAt = (piece: Piece, at: EdgeAt, towards: Point): { readonly out: Point; readonly across: Point } => {
  const runs = edgeRuns(piece, at.edge);
  const out = at.end === 'end' ? endTangent(runs.at(-1) as Path) : scale(startTangent(runs[0] as Path), -1);
  const across: Point = { x: out.y, y: -out.x };
  return { out, across: dot(across, towards) < 0 ? scale(across, -1) : across };
};

/** A princess seam at whose upper end something is put on, along it and to the side, and by how much it is longer. */
interface SeamEnd {
  readonly longer: number;
  readonly aside: number;
}

/** Rounds in which the second side of a princess seam is brought to the length of the first. */
const seamRounds = 3;

/** The other side of a princess seam: as much longer, and moved aside as much and the same way, so that the two still run on into one another over the shoulder. */
const seamAlike = (panel: Panel, { longer, aside }: SeamEnd): readonly Path[] => {
  const { piece, innerMeets } = panel;
  const inner = innerOf(panel);
  const { out, across } = frameAt(piece, innerMeets, subtract(outerOf(panel), inner));
  const was = lengthOf(edgeRuns(piece, innerMeets.edge));
  let along = longer;
  let drawn = drawnTo(piece, innerMeets, add(inner, add(scale(out, along), scale(across, aside))));
  for (let round = 0; round < seamRounds; round += 1) {
    along += was + longer - lengthOf(drawn);
    drawn = drawnTo(piece, innerMeets, add(inner, add(scale(out, along), scale(across, aside))));
  }
  return drawn;
};

/** Every stretch of a shoulder turned by the same angle, each from where the one before now ends. */
const turned = (chain: Chain, turn: number, shell?: SwungPanel): readonly SwungPanel[] => {
  const swung: SwungPanel[] = [];
  let seam: SeamEnd = { longer: 0, aside: 0 };
  for (const [i, panel] of chain.entries()) {
    const { piece, edge, innerMeets, outerMeets } = panel;
    const [inner, outer] = [innerOf(panel), outerOf(panel)];
    const drawn: Record<string, readonly Path[]> = {};
    let innerNow = inner;
    if (i > 0) {
      const alike = seamAlike(panel, seam);
      drawn[innerMeets.edge] = alike;
      innerNow = endOf(alike, innerMeets.end);
    }
    const carried = i === 0 && shell && distance(outerOf(shell.panel), outer) <= tolerance.kink;
    const motion = carried ? shell.motion : compose(rotation(turn, inner), translation(subtract(innerNow, inner)));
    drawn[edge] = edgeRuns(piece, edge).map((path) => applyToPath(motion, path));
    if (i < chain.length - 1) {
      const outerNow = applyToPoint(motion, outer);
      const line = drawnTo(piece, outerMeets, outerNow);
      const { across } = frameAt(piece, outerMeets, subtract(outer, inner));
      drawn[outerMeets.edge] = line;
      seam = {
        longer: lengthOf(line) - lengthOf(edgeRuns(piece, outerMeets.edge)),
        aside: dot(subtract(outerNow, outer), across),
      };
    }
    swung.push({ panel, motion, turn, drawn });
  }
  return swung;
};

/**
 * A shoulder swung about the neck point until its outer end lies so many mm lower (negative: higher), every stretch of it
 * as long as it was and a princess seam between lengthened on both sides alike. A lining that begins further out than its shell is
 * carried by the motion of the shell's first stretch. Problem `alter.shoulder-too-steep`.
 */
export const swungShoulder = (chain: Chain, down: number, shell?: SwungPanel): Result<readonly SwungPanel[]> => {
  const [first, last] = [chain[0] as Panel, chain.at(-1) as Panel];
  const across = outerOf(last).x - innerOf(first).x;
  const whole = chain.reduce((sum, panel) => sum + distance(innerOf(panel), outerOf(panel)), 0);
  const guess = (Math.sign(across) * down) / whole;
  const off = (turn: number): number => movedBy(turned(chain, turn, shell).at(-1) as SwungPanel).y - down;
  const alone = shell && chain.length === 1 ? shell.turn : secant(off, guess, guess * 1.05, tolerance.walk);
  return alone === null
    ? bad('alter.shoulder-too-steep', { piece: last.piece.name })
    : good(turned(chain, alone, shell));
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
