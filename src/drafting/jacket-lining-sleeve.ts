import {
  applyToPath,
  type Path,
  pathEnd,
  pathLength,
  pathStart,
  reversePath,
  splitPathAtLength,
  tolerance,
} from '../geometry/index.ts';
import type { Piece } from '../pattern/index.ts';
import { splitArmhole } from './jacket-armhole.ts';
import type { JacketDraft } from './jacket-fit.ts';
import { liningUnderarms } from './jacket-lining-sides.ts';
import { jacketAllowances, notchDown } from './jacket-marks.ts';
import { notchFromPitch } from './jacket-side-panels.ts';
import { underarmNotch } from './jacket-sleeve-pieces.ts';
import { allowances, closeRuns, edge, edgeRun, lengthenLine, level, lining, straightRun } from './pieces.ts';
import { solveBetween } from './solve.ts';
import { partAt, type SleevePart, type TwoPieceSleeve } from './two-piece-sleeve.ts';

/** The sleeve's lining ends this much above the sleeve's hem, mm. */
const shorter = 20;

/** Half of an under cap with the underarm raised: its end at the seam stays, all heights below it shrink alike. */
const raisedHalf = (half: Path, seamEnd: number, by: number): Path => {
  const k = (Math.abs(seamEnd) - by) / Math.abs(seamEnd);
  return applyToPath({ a: 1, b: 0, c: 0, d: k, e: 0, f: seamEnd - k * seamEnd }, half);
};

/**
 * The under sleeve's cap raised until it is as long as the lining's armhole below the sleeve's seams. Its underarm is
 * one point, so front and back may each differ by a little, which is eased or stretched.
 */
const raisedCap = (draft: JacketDraft): readonly [Path, Path] => {
  const { capFront, capBack } = draft.sleeve.under;
  const armholes = liningUnderarms(draft);
  const wanted = pathLength(armholes.front) + pathLength(armholes.back);
  const [atFront, atBack] = [pathStart(capFront).y, pathEnd(capBack).y];
  const raised = (by: number): readonly [Path, Path] => [
    raisedHalf(capFront, atFront, by),
    raisedHalf(capBack, atBack, by),
  ];
  const most = 0.9 * Math.min(Math.abs(atFront), Math.abs(atBack));
  const by = solveBetween(
    (candidate) => {
      const [front, back] = raised(candidate);
      return pathLength(front) + pathLength(back) - wanted;
    },
    0,
    most,
    tolerance.same,
  );
  return raised(by ?? most / 2);
};

const sleeveLining = (
  sleeve: TwoPieceSleeve,
  part: SleevePart,
  capFront: Path,
  capBack: Path,
): Pick<Piece, 'cut' | 'runs' | 'edges' | 'darts' | 'levels' | 'landmarks' | 'lines'> => {
  const cut = (seam: Path): Path => splitPathAtLength(seam, pathLength(seam) - shorter)[0] as Path;
  const [front, back] = [cut(part.front), cut(part.back)];
  return {
    cut: [lining(2, true)],
    runs: closeRuns([
      edgeRun('cap-front', capFront),
      edgeRun('cap-back', capBack),
      edgeRun('back-seam', back),
      straightRun('hem', pathEnd(back), pathEnd(front)),
      edgeRun('front-seam', reversePath(front)),
    ]),
    edges: [
      ...['cap-front', 'cap-back', 'back-seam'].map((id) => edge(id, 'seam', allowances.seam)),
      edge('hem', 'hem', jacketAllowances.liningHem),
      edge('front-seam', 'seam', allowances.seam),
    ],
    darts: [],
    levels: [level('elbow', ...partAt(part, sleeve.elbowLevel))],
    landmarks: [],
    lines: [
      lengthenLine('above-elbow', ...partAt(part, (sleeve.armLevel + sleeve.elbowLevel) / 2)),
      lengthenLine('below-elbow', ...partAt(part, (sleeve.elbowLevel + sleeve.hemLevel) / 2)),
    ],
  };
};

const elbows = (part: SleevePart) => {
  const elbow = (seam: Path) => pathLength(seam.slice(0, 2));
  const short = (seam: Path) => splitPathAtLength(seam, pathLength(seam) - shorter)[0] as Path;
  return [
    notchDown('elbow-back', 'back-seam', short(part.back), elbow(part.back), 'down'),
    notchDown('elbow-front', 'front-seam', short(part.front), elbow(part.front), 'up'),
  ];
};

const grainOf = (part: SleevePart, armLevel: number, hemLevel: number) => {
  const x = (pathStart(part.front).x + pathStart(part.back).x) / 2;
  return { from: { x, y: armLevel + 10 }, to: { x, y: hemLevel - 60 } };
};

export const liningSleeve = ({ sleeve, body }: JacketDraft): Piece => {
  const { top, under } = sleeve;
  const front = splitArmhole(body.sideFront.armhole, under.capFront).upper;
  const back = splitArmhole(body.sideBack.armhole, under.capBack).upper;
  return {
    ...sleeveLining(sleeve, top, top.capFront, top.capBack),
    id: 'lining-sleeve',
    name: 'Top sleeve lining',
    role: 'sleeve',
    notches: [
      { id: 'cap-front', edge: 'cap-front', at: notchFromPitch(front) / pathLength(top.capFront), strokes: 1 },
      { id: 'shoulder', edge: 'cap-front', at: 1, strokes: 1 },
      { id: 'cap-back', edge: 'cap-back', at: 1 - notchFromPitch(back) / pathLength(top.capBack), strokes: 2 },
      ...elbows(top),
    ],
    grain: grainOf(top, sleeve.armLevel, sleeve.hemLevel),
  };
};

export const liningUnderSleeve = (draft: JacketDraft): Piece => {
  const { sleeve } = draft;
  const [capFront, capBack] = raisedCap(draft);
  return {
    ...sleeveLining(sleeve, sleeve.under, capFront, capBack),
    id: 'lining-under-sleeve',
    name: 'Under sleeve lining',
    role: 'under-sleeve',
    notches: [underarmNotch, ...elbows(sleeve.under)],
    grain: grainOf(sleeve.under, sleeve.armLevel, sleeve.hemLevel),
  };
};
