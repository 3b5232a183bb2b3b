import { type Path, type Point, pathEnd, pathLength, pathPointAtLength, reversePath } from '../geometry/index.ts';
import type { Notch, Piece } from '../pattern/index.ts';
import { splitArmhole } from './jacket-armhole.ts';
import type { SidePanel } from './jacket-body.ts';
import type { JacketDraft } from './jacket-fit.ts';
import { lengthenLines, notchDown } from './jacket-marks.ts';
import { belowBust, lengthTo, panelEdges, upright } from './jacket-panels.ts';
import { pocketLines } from './jacket-pocket.ts';
import { closeRuns, edgeRun, landmark, level, shell, straightRun } from './pieces.ts';
import { fallAt } from './princess.ts';
import { sideAt } from './side-seam.ts';

/** What front and back side panel have alike. */
const sidePanel = (
  draft: JacketDraft,
  panel: SidePanel,
  underCap: Path,
): Omit<Piece, 'id' | 'name' | 'role' | 'notches'> => {
  const { plan } = draft;
  const { upper, under } = splitArmhole(panel.armhole, underCap);
  const [, bustToWaist, waistToHip] = panel.side;
  const inner = (y: number): Point => fallAt(panel.princess, y);
  const outer = (y: number): Point => sideAt(panel.side, y);
  return {
    cut: [shell(2, true)],
    runs: closeRuns([
      edgeRun('shoulder', panel.shoulder),
      edgeRun('armhole', upper),
      edgeRun('armhole-under', under),
      edgeRun('side', panel.side),
      straightRun('hem', pathEnd(panel.side), pathEnd(panel.princess)),
      edgeRun('princess', reversePath(panel.princess)),
    ]),
    edges: panelEdges(['shoulder', 'armhole', 'armhole-under', 'side', 'hem', 'princess']),
    darts: [],
    grain: upright((panel.bust[0].x + panel.bust[1].x) / 2, panel.bust[1].y + 15, plan.hipLevel - 20),
    levels: [
      level('bust', ...panel.bust),
      level('waist', inner(plan.waistLevel), bustToWaist.to),
      level('hip', inner(plan.hipLevel), waistToHip.to),
    ],
    landmarks: [
      landmark('shoulder-point', pathEnd(panel.shoulder)),
      landmark('arm-hinge', pathPointAtLength(panel.armhole, (2 / 3) * pathLength(panel.armhole))),
      landmark('underarm', pathEnd(panel.armhole)),
      landmark('waist-side', bustToWaist.to),
      landmark('hip-side', waistToHip.to),
    ],
    lines: lengthenLines(draft, inner, outer),
  };
};

/** Distance up the armhole from the sleeve's seam to the notch the sleeve's cap has too: below it the cap is set in flat. */
export const notchFromPitch = (upper: Path): number => 0.3 * pathLength(upper);

/** Where the sleeve's seam meets the armhole, which runs on there without a corner. */
export const sleeveSeamNotch: Notch = { id: 'sleeve-seam', edge: 'armhole', at: 1, strokes: 1 };

const sideNotches = (panel: SidePanel, underCap: Path, id: string, strokes: 1 | 2) => {
  const { upper } = splitArmhole(panel.armhole, underCap);
  const side = panel.side;
  return [
    notchDown(id, 'armhole', upper, pathLength(upper) - notchFromPitch(upper), 'down', strokes),
    sleeveSeamNotch,
    notchDown('waist', 'side', side, lengthTo(side, 2), 'down'),
    notchDown('hip', 'side', side, lengthTo(side, 3), 'down'),
  ];
};

/** The side front, its princess seam rounded over the bust. */
export const sideFrontPanel = (draft: JacketDraft): Piece => {
  const panel = draft.body.sideFront;
  const underCap = draft.sleeve.under.capFront;
  const shared = sidePanel(draft, panel, underCap);
  const up = (id: string, length: number) => notchDown(id, 'princess', panel.princess, length, 'up');
  return {
    ...shared,
    lines: [pocketLines(draft).sideFront, ...shared.lines],
    id: 'side-front',
    name: 'Side front',
    role: 'side-front',
    notches: [
      ...sideNotches(panel, underCap, 'armhole-front', 1),
      up('bust-above', lengthTo(panel.princess, 1)),
      up(
        'bust-below',
        pathLength(panel.princess) - (pathLength(draft.body.front.princess) - belowBust(draft.body.front.princess)),
      ),
      up('princess-waist', lengthTo(panel.princess, 3)),
    ],
    landmarks: [...shared.landmarks, landmark('across-front', panel.across), landmark('apex', panel.bust[0])],
  };
};

/** The side back. */
export const sideBackPanel = (draft: JacketDraft): Piece => {
  const panel = draft.body.sideBack;
  const underCap = draft.sleeve.under.capBack;
  const shared = sidePanel(draft, panel, underCap);
  const up = (id: string, length: number) => notchDown(id, 'princess', panel.princess, length, 'up');
  return {
    ...shared,
    id: 'side-back',
    name: 'Side back',
    role: 'side-back',
    notches: [
      ...sideNotches(panel, underCap, 'armhole-back', 2),
      up('blade', lengthTo(panel.princess, 2)),
      up('princess-waist', lengthTo(panel.princess, 3)),
    ],
    landmarks: [...shared.landmarks, landmark('across-back', panel.across)],
  };
};
