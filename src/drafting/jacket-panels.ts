import { line, type Path, type Point, pathEnd, pathLength, pathStart, reversePath } from '../geometry/index.ts';
import type { InnerLine, Piece } from '../pattern/index.ts';
import type { JacketDraft } from './jacket-fit.ts';
import { jacketAllowances, lengthenLines, notchDown } from './jacket-marks.ts';
import { pocketLines } from './jacket-pocket.ts';
import { allowances, closeRuns, edge, edgeRun, interfacing, landmark, level, shell, straightRun } from './pieces.ts';
import { type Fall, fallAt } from './princess.ts';

/** How far down a falling seam its levels lie: lengths from its start to the end of its first segments. */
export const lengthTo = (fall: Path, segments: number): number => pathLength(fall.slice(0, segments));

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
export const belowBust = (princess: Fall): number =>
  lengthTo(princess, princess.length) - lengthTo(princess.slice(-2), 2) - 0.5 * pathLength(princess.slice(2, 3));

export const panelEdges = (ids: readonly string[]) =>
  ids.map((id) =>
    id === 'hem'
      ? edge(id, 'hem', jacketAllowances.hem)
      : edge(id, 'seam', id.startsWith('neck') || id === 'front-edge' ? jacketAllowances.edge : allowances.seam),
  );

export const upright = (x: number, from: number, to: number) => ({ from: { x, y: from }, to: { x, y: to } });

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
