import { type Path, type Point, pathEnd, pathLength, pathStart, reversePath } from '../geometry/index.ts';
import type { Piece } from '../pattern/index.ts';
import { type Collar, type CollarLayer, draftCollar } from './collar.ts';
import type { JacketDraft } from './jacket-fit.ts';
import { jacketAllowances } from './jacket-marks.ts';
import { allowances, closeRuns, edge, edgeRun, interfacing, shell, straightRun } from './pieces.ts';

/** The jacket's collar: stand and fall at the centre back, length and lean of the point, raise, turn of cloth. */
const shape = { stand: 30, fall: 46, point: 72, lean: 0.2, raise: 20, turn: 2.5 } as const;

export const jacketCollar = ({ body }: JacketDraft): Collar =>
  draftCollar({ ...shape, backNeck: pathLength(body.back.neck), frontNeck: pathLength(body.front.neck) });

const collarRuns = ({ neckBack, neckFront, outer, end }: CollarLayer) =>
  closeRuns([
    edgeRun('outer', outer),
    edgeRun('end', end),
    edgeRun('neck-front', reversePath(neckFront)),
    edgeRun('neck-back', reversePath(neckBack)),
    straightRun('centre-back', pathStart(neckBack), pathStart(outer)),
  ]);

const collarEdges = (centre: 'fold' | 'seam') => [
  edge('outer', 'seam', jacketAllowances.edge),
  edge('end', 'seam', jacketAllowances.edge),
  edge('neck-front', 'seam', jacketAllowances.edge),
  edge('neck-back', 'seam', jacketAllowances.edge),
  edge('centre-back', centre, centre === 'fold' ? 0 : allowances.seam),
];

const collarNotches = [
  { id: 'neck-front', edge: 'neck-front', at: 0.5, strokes: 1 },
  { id: 'shoulder', edge: 'neck-front', at: 1, strokes: 1 },
  { id: 'neck-back', edge: 'neck-back', at: 0.5, strokes: 1 },
] as const;

/** The roll line, as far as it lies on both layers. */
const rollLine = (roll: Path) => ({ id: 'roll', kind: 'fold' as const, path: roll });

/** The top collar, on the fold: larger by the turn of the cloth. */
export const topCollarPiece = (draft: JacketDraft): Piece => {
  const { top, roll } = jacketCollar(draft);
  const along: Point = { x: 0.3 * pathEnd(top.outer).x, y: 0 };
  return {
    id: 'collar',
    name: 'Top collar',
    role: 'collar',
    cut: [shell(1, false), interfacing(1, false)],
    runs: collarRuns(top),
    edges: collarEdges('fold'),
    darts: [],
    notches: collarNotches,
    grain: { from: { x: along.x, y: -shape.stand - shape.fall + 10 }, to: { x: along.x, y: -8 } },
    levels: [],
    landmarks: [],
    lines: [rollLine(roll)],
  };
};

/** The under collar, in two on the bias with a seam at the centre back, so that it can be shaped by the iron. */
export const underCollarPiece = (draft: JacketDraft): Piece => {
  const { under, roll } = jacketCollar(draft);
  const x = 0.35 * pathEnd(under.outer).x;
  return {
    id: 'under-collar',
    name: 'Under collar',
    role: 'collar',
    cut: [shell(2, true), interfacing(2, true)],
    runs: collarRuns(under),
    edges: collarEdges('seam'),
    darts: [],
    notches: collarNotches,
    grain: { from: { x, y: -shape.stand - shape.fall + 14 }, to: { x: x + 52, y: -shape.stand - shape.fall + 66 } },
    levels: [],
    landmarks: [],
    lines: [rollLine(roll)],
  };
};
