import {
  line,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathPointAtLength,
  pathStart,
  reversePath,
} from '../geometry/index.ts';
import type { InnerLine, Piece } from '../pattern/index.ts';
import { splitArmhole } from './jacket-armhole.ts';
import type { SidePanel } from './jacket-body.ts';
import type { JacketDraft } from './jacket-fit.ts';
import { jacketAllowances, lengthenLines, notchDown } from './jacket-marks.ts';
import { pocketLines } from './jacket-pocket.ts';
import { allowances, closeRuns, edge, edgeRun, interfacing, landmark, level, shell, straightRun } from './pieces.ts';
import { type Fall, fallAt } from './princess.ts';
import { sideAt } from './side-seam.ts';

/** How far down a falling seam its levels lie: lengths from its start to the end of its first segments. */
const lengthTo = (fall: Path, segments: number): number => pathLength(fall.slice(0, segments));

/** Buttons of a view: its top one this far below the neck, the lowest this share of the way from waist to hip. */
const buttons = { below: 15, lowest: 0.4, diameter: 22 } as const;

export const buttonCount = { collar: 5, collarless: 4 } as const;

/** Buttonholes lie across, from 3 outside the centre inwards, as long as the button and its thickness need. */
const buttonholes = ({ plan, body }: JacketDraft): readonly InnerLine[] => {
  const top = pathStart(body.front.neck).y + buttons.below;
  const low = plan.waistLevel + buttons.lowest * (plan.hipLevel - plan.waistLevel);
  const count = buttonCount[plan.view];
  return Array.from({ length: count }, (_, i): InnerLine => {
    const y = top + (i / (count - 1)) * (low - top);
    return { id: `button-${i + 1}`, kind: 'placement', path: [line({ x: -3, y }, { x: buttons.diameter, y })] };
  });
};

/** The notch below the bust: from there down both edges of the front's princess seam are alike. */
const belowBust = (princess: Fall): number =>
  lengthTo(princess, princess.length) - lengthTo(princess.slice(-2), 2) - 0.5 * pathLength(princess.slice(2, 3));

const panelEdges = (ids: readonly string[]) =>
  ids.map((id) =>
    id === 'hem'
      ? edge(id, 'hem', jacketAllowances.hem)
      : edge(id, 'seam', id.startsWith('neck') || id === 'front-edge' ? jacketAllowances.edge : allowances.seam),
  );

const upright = (x: number, from: number, to: number) => ({ from: { x, y: from }, to: { x, y: to } });

/** The centre front panel, a mirrored pair with its stand grown on, of cloth and of interfacing. */
export const frontPanel = (draft: JacketDraft): Piece => {
  const { plan, body } = draft;
  const { front } = body;
  const centreNeck = pathStart(front.neck);
  const hem = pathEnd(front.princess);
  const corner: Point = { x: -plan.stand, y: plan.hemLevel };
  const top: Point = { x: -plan.stand, y: centreNeck.y };
  const at = (y: number): Point => fallAt(front.princess, y);
  const down = (id: string, length: number) => notchDown(id, 'princess', front.princess, length, 'down');
  const level0 = (id: string, y: number) => ({ ...level(id, { x: 0, y }, at(y)), stops: 'from' as const });
  return {
    id: 'front',
    name: 'Centre front',
    role: 'front',
    cut: [shell(2, true), interfacing(2, true)],
    runs: closeRuns([
      edgeRun('neck', front.neck),
      edgeRun('shoulder', front.shoulder),
      edgeRun('princess', front.princess),
      straightRun('hem', hem, corner),
      straightRun('front-edge', corner, top),
      straightRun('neck-stand', top, centreNeck),
    ]),
    edges: panelEdges(['neck', 'shoulder', 'princess', 'hem', 'front-edge', 'neck-stand']),
    darts: [],
    notches: [
      { id: 'neck-front', edge: 'neck', at: 0.5, strokes: 1 },
      { id: 'centre-front', edge: 'neck', at: 0, strokes: 1 },
      down('bust-above', lengthTo(front.princess, 1)),
      down('bust-below', belowBust(front.princess)),
      down('waist', lengthTo(front.princess, 3)),
      { id: 'waist-edge', edge: 'front-edge', at: (plan.hemLevel - plan.waistLevel) / (corner.y - top.y), strokes: 1 },
    ],
    grain: upright(0.5 * front.bust.x, front.bust.y + 40, plan.hipLevel - 20),
    levels: [level0('bust', front.bust.y), level0('waist', plan.waistLevel), level0('hip', plan.hipLevel)],
    landmarks: [
      landmark('centre-neck', centreNeck),
      landmark('neck-point', pathEnd(front.neck)),
      landmark('bust-point', { x: Math.min(front.bustPoint.x, front.bust.x), y: front.bustPoint.y }),
      landmark('apex', front.bust),
    ],
    lines: [
      { id: 'centre-front', kind: 'placement', path: [line(centreNeck, { x: 0, y: plan.hemLevel })] },
      ...buttonholes(draft),
      pocketLines(draft).front,
      ...lengthenLines(draft, (y) => ({ x: -plan.stand, y }), at),
    ],
  };
};

/** The centre back panel, a mirrored pair with a seam shaped to the spine. */
export const backPanel = (draft: JacketDraft): Piece => {
  const { plan, body } = draft;
  const { back } = body;
  const at = (y: number): Point => fallAt(back.princess, y);
  const centreAt = (y: number): Point => fallAt(back.centre, y);
  const down = (id: string, length: number) => notchDown(id, 'princess', back.princess, length, 'down');
  return {
    id: 'back',
    name: 'Centre back',
    role: 'back',
    cut: [shell(2, true)],
    runs: closeRuns([
      edgeRun('neck', back.neck),
      edgeRun('shoulder', back.shoulder),
      edgeRun('princess', back.princess),
      straightRun('hem', pathEnd(back.princess), pathEnd(back.centre)),
      edgeRun('centre-back', reversePath(back.centre)),
    ]),
    edges: panelEdges(['neck', 'shoulder', 'princess', 'hem', 'centre-back']),
    darts: [],
    notches: [
      { id: 'neck-back', edge: 'neck', at: 0.5, strokes: 1 },
      down('blade', lengthTo(back.princess, 2)),
      down('waist', lengthTo(back.princess, 3)),
      notchDown('waist-centre', 'centre-back', back.centre, lengthTo(back.centre, 2), 'up'),
    ],
    grain: upright(0.45 * back.bust.x, back.blade.y, plan.hipLevel - 20),
    levels: [
      level('bust', centreAt(back.bust.y), back.bust),
      level('waist', centreAt(plan.waistLevel), at(plan.waistLevel)),
      level('hip', centreAt(plan.hipLevel), at(plan.hipLevel)),
    ],
    landmarks: [
      landmark('nape', pathStart(back.neck)),
      landmark('neck-point', pathEnd(back.neck)),
      landmark('blade', back.blade),
    ],
    lines: lengthenLines(draft, centreAt, at),
  };
};

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

const sideNotches = (panel: SidePanel, underCap: Path, id: string, strokes: 1 | 2) => {
  const { upper } = splitArmhole(panel.armhole, underCap);
  const side = panel.side;
  return [
    notchDown(id, 'armhole', upper, pathLength(upper) - notchFromPitch(upper), 'down', strokes),
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
