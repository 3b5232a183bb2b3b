import { type Path, pathEnd, pathLength, pathStart, reversePath } from '../geometry/index.ts';
import type { Notch, Piece } from '../pattern/index.ts';
import { splitArmhole } from './jacket-armhole.ts';
import type { JacketDraft } from './jacket-fit.ts';
import { jacketAllowances, notchDown } from './jacket-marks.ts';
import { notchFromPitch } from './jacket-side-panels.ts';
import { allowances, closeRuns, edge, edgeRun, landmark, lengthenLine, level, shell, straightRun } from './pieces.ts';
import { partAt, type SleevePart, type TwoPieceSleeve } from './two-piece-sleeve.ts';

/** What top and under sleeve have alike: runs, edges, levels, notches at the elbow. */
const sleevePart = (sleeve: TwoPieceSleeve, part: SleevePart): Omit<Piece, 'id' | 'name' | 'role' | 'landmarks'> => {
  const { armLevel, elbowLevel, hemLevel } = sleeve;
  const toElbow = (seam: Path): number => pathLength(seam.slice(0, 2));
  const middle = (pathEnd(part.capFront).x * 2 + pathStart(part.capFront).x + pathEnd(part.capBack).x) / 4;
  return {
    cut: [shell(2, true)],
    runs: closeRuns([
      edgeRun('cap-front', part.capFront),
      edgeRun('cap-back', part.capBack),
      edgeRun('back-seam', part.back),
      straightRun('hem', pathEnd(part.back), pathEnd(part.front)),
      edgeRun('front-seam', reversePath(part.front)),
    ]),
    edges: [
      edge('cap-front', 'seam', allowances.seam),
      edge('cap-back', 'seam', allowances.seam),
      edge('back-seam', 'seam', allowances.seam),
      edge('hem', 'hem', jacketAllowances.hem),
      edge('front-seam', 'seam', allowances.seam),
    ],
    darts: [],
    notches: [
      notchDown('elbow-back', 'back-seam', part.back, toElbow(part.back), 'down'),
      notchDown('elbow-front', 'front-seam', part.front, toElbow(part.front), 'up'),
    ],
    grain: { from: { x: middle, y: armLevel + 10 }, to: { x: middle, y: hemLevel - 60 } },
    levels: [level('upper-arm', ...partAt(part, armLevel)), level('elbow', ...partAt(part, elbowLevel))],
    lines: [
      lengthenLine('above-elbow', ...partAt(part, (armLevel + elbowLevel) / 2)),
      lengthenLine('below-elbow', ...partAt(part, (elbowLevel + hemLevel) / 2)),
    ],
  };
};

/** The top sleeve: the left one, seen from outside, its front to the left. */
export const topSleevePiece = ({ sleeve, body }: JacketDraft): Piece => {
  const { top } = sleeve;
  const shared = sleevePart(sleeve, top);
  const front = splitArmhole(body.sideFront.armhole, sleeve.under.capFront).upper;
  const back = splitArmhole(body.sideBack.armhole, sleeve.under.capBack).upper;
  return {
    ...shared,
    id: 'sleeve',
    name: 'Top sleeve',
    role: 'sleeve',
    notches: [
      {
        id: 'cap-front',
        edge: 'cap-front',
        at: notchFromPitch(front) / pathLength(top.capFront),
        strokes: 1,
      },
      { id: 'shoulder', edge: 'cap-front', at: 1, strokes: 1 },
      { id: 'cap-back', edge: 'cap-back', at: 1 - notchFromPitch(back) / pathLength(top.capBack), strokes: 2 },
      ...shared.notches,
    ],
    landmarks: [
      landmark('cap-top', pathEnd(top.capFront)),
      landmark('pitch-front', pathStart(top.capFront)),
      landmark('pitch-back', pathEnd(top.capBack)),
    ],
  };
};

/** The under sleeve's mark for the side seam, at the lowest of its cap. */
export const underarmNotch: Notch = { id: 'underarm', edge: 'cap-front', at: 1, strokes: 1 };

/** The under sleeve, its front to the left as it lies under the top sleeve. */
export const underSleevePiece = ({ sleeve }: JacketDraft): Piece => {
  const { under } = sleeve;
  const shared = sleevePart(sleeve, under);
  return {
    ...shared,
    id: 'under-sleeve',
    name: 'Under sleeve',
    role: 'under-sleeve',
    notches: [underarmNotch, ...shared.notches],
    landmarks: [
      landmark('pitch-front', pathStart(under.capFront)),
      landmark('underarm', pathEnd(under.capFront)),
      landmark('pitch-back', pathEnd(under.capBack)),
    ],
  };
};
