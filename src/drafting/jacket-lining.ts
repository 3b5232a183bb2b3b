import {
  applyToPath,
  line,
  type Point,
  pathEnd,
  pathLength,
  pathStart,
  reversePath,
  translation,
} from '../geometry/index.ts';
import type { Piece } from '../pattern/index.ts';
import { facingLines } from './jacket-facings.ts';
import type { JacketDraft } from './jacket-fit.ts';
import { jacketAllowances, lengthenLines, notchDown } from './jacket-marks.ts';
import { upright } from './jacket-panels.ts';
import { allowances, closeRuns, edge, edgeRun, level, lining, straightRun } from './pieces.ts';
import { type Fall, fallAt, shortened } from './princess.ts';

/** Depth of the pleat at the centre back, each half: room to reach forward, mm. */
export const pleatDepth = 20;

export const liningEdges = (ids: readonly string[]) =>
  ids.map((id) => (id === 'hem' ? edge(id, 'hem', jacketAllowances.liningHem) : edge(id, 'seam', allowances.seam)));

/** The waist, and the lines at which the lining is lengthened with the cloth. */
export const lengthened = (
  draft: JacketDraft,
  left: (y: number) => Point,
  right: (y: number) => Point,
): Pick<Piece, 'levels' | 'lines'> => ({
  levels: [level('waist', left(draft.plan.waistLevel), right(draft.plan.waistLevel))],
  lines: lengthenLines(draft, left, right),
});

export const waistNotch = (princess: Fall, runs: 'down' | 'up') =>
  notchDown('waist', 'princess', princess, pathLength(princess.slice(0, 3)), runs);

/** The front's lining: what the facing leaves of the centre front panel. */
export const liningFront = (draft: JacketDraft): Piece => {
  const lines = facingLines(draft);
  const princess = shortened(draft.body.front.princess, lines.liningHem);
  const facing = reversePath(lines.front);
  const low = pathStart(facing);
  const middle = (low.x + fallAt(princess, draft.plan.waistLevel).x) / 2;
  return {
    id: 'lining-front',
    name: 'Front lining',
    role: 'front',
    cut: [lining(2, true)],
    runs: closeRuns([
      edgeRun('shoulder', lines.frontShoulder[1]),
      edgeRun('princess', princess),
      straightRun('hem', pathEnd(princess), low),
      edgeRun('facing', facing),
    ]),
    edges: liningEdges(['shoulder', 'princess', 'hem', 'facing']),
    darts: [],
    notches: [
      notchDown('bust-above', 'princess', princess, pathLength(princess.slice(0, 1)), 'down'),
      waistNotch(princess, 'down'),
      { id: 'bust', edge: 'facing', at: 1 - pathLength(lines.front.slice(0, 1)) / pathLength(lines.front), strokes: 1 },
    ],
    grain: upright(middle, draft.body.front.bust.y, draft.plan.hipLevel),
    ...lengthened(
      draft,
      (y) => ({ x: low.x, y }),
      (y) => fallAt(princess, y),
    ),
    landmarks: [],
  };
};

/** The back's lining: what the facing leaves of the centre back panel, with a pleat at its centre. */
export const liningBack = (draft: JacketDraft): Piece => {
  const { body, plan } = draft;
  const lines = facingLines(draft);
  const princess = shortened(body.back.princess, lines.liningHem);
  const low = pathEnd(lines.back);
  const fall = shortened(body.back.centre, lines.liningHem);
  const first = fall[0] as Fall[number];
  const aside = applyToPath(translation({ x: -pleatDepth, y: 0 }), [line(low, first.to), ...fall.slice(1)]) as Fall;
  const start = pathStart(aside);
  const across = lengthened(
    draft,
    (y) => fallAt(aside, y),
    (y) => fallAt(princess, y),
  );
  return {
    id: 'lining-back',
    name: 'Back lining',
    role: 'back',
    cut: [lining(2, true)],
    runs: closeRuns([
      edgeRun('facing', [line(start, low), ...reversePath(lines.back)]),
      edgeRun('shoulder', lines.backShoulder[1]),
      edgeRun('princess', princess),
      straightRun('hem', pathEnd(princess), pathEnd(aside)),
      edgeRun('centre-back', reversePath(aside)),
    ]),
    edges: liningEdges(['facing', 'shoulder', 'princess', 'hem', 'centre-back']),
    darts: [],
    notches: [
      notchDown('blade', 'princess', princess, pathLength(princess.slice(0, 2)), 'down'),
      waistNotch(princess, 'down'),
      notchDown('waist-centre', 'centre-back', aside, pathLength(aside.slice(0, 2)), 'up'),
    ],
    grain: upright(0.5 * body.back.bust.x, body.back.blade.y, plan.hipLevel),
    levels: across.levels,
    landmarks: [],
    lines: [
      ...across.lines,
      { id: 'pleat', kind: 'fold', path: [line(low, { x: 0, y: low.y + 90 })] },
      {
        id: 'pleat-waist',
        kind: 'stitching',
        path: [
          line(
            { x: plan.takenIn.centre, y: plan.waistLevel - 40 },
            { x: plan.takenIn.centre, y: plan.waistLevel + 40 },
          ),
        ],
      },
    ],
  };
};
