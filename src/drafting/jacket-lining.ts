import {
  applyToPath,
  line,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathStart,
  reversePath,
  translation,
} from '../geometry/index.ts';
import type { Piece } from '../pattern/index.ts';
import { heightOverUnderarm, raisedUnderarm, splitArmhole } from './jacket-armhole.ts';
import { facingLines } from './jacket-facings.ts';
import type { JacketDraft } from './jacket-fit.ts';
import { jacketAllowances, lengthenLines, notchDown } from './jacket-marks.ts';
import { notchFromPitch } from './jacket-panels.ts';
import { allowances, closeRuns, edge, edgeRun, landmark, level, lining, straightRun } from './pieces.ts';
import { type Fall, fallAt, shortened } from './princess.ts';
import { type Side, sideAt } from './side-seam.ts';

/** Depth of the pleat at the centre back, each half: room to reach forward, mm. */
export const pleatDepth = 20;

/** How much higher the lining's underarm lies than the jacket's, where the armhole has room: it goes over the seam, mm. */
const raise = { most: 12, share: 0.3 } as const;

const liningEdges = (ids: readonly string[]) =>
  ids.map((id) => (id === 'hem' ? edge(id, 'hem', jacketAllowances.liningHem) : edge(id, 'seam', allowances.seam)));

const upright = (x: number, from: number, to: number) => ({ from: { x, y: from }, to: { x, y: to } });

/** The waist, and the lines at which the lining is lengthened with the cloth. */
const lengthened = (
  draft: JacketDraft,
  left: (y: number) => Point,
  right: (y: number) => Point,
): Pick<Piece, 'levels' | 'lines'> => ({
  levels: [level('waist', left(draft.plan.waistLevel), right(draft.plan.waistLevel))],
  lines: lengthenLines(draft, left, right),
});

const waistNotch = (princess: Fall, runs: 'down' | 'up') =>
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

/** Both armholes below the sleeve's seams as the lining has them: the underarm raised as much in front as behind. */
export const liningUnderarms = ({ body, sleeve }: JacketDraft): { readonly front: Path; readonly back: Path } => {
  const front = splitArmhole(body.sideFront.armhole, sleeve.under.capFront).under;
  const back = splitArmhole(body.sideBack.armhole, sleeve.under.capBack).under;
  const by = Math.min(raise.most, raise.share * Math.min(heightOverUnderarm(front), heightOverUnderarm(back)));
  return { front: raisedUnderarm(front, by), back: raisedUnderarm(back, by) };
};

const liningSide = (draft: JacketDraft, which: 'front' | 'back') => {
  const lines = facingLines(draft);
  const panel = which === 'front' ? draft.body.sideFront : draft.body.sideBack;
  const { upper } = splitArmhole(
    panel.armhole,
    which === 'front' ? draft.sleeve.under.capFront : draft.sleeve.under.capBack,
  );
  const raised = liningUnderarms(draft)[which];
  const princess = shortened(panel.princess, lines.liningHem);
  const side = shortened(panel.side, lines.liningHem) as unknown as Side;
  const sideRun: Path = [line(pathEnd(raised), pathStart(side)), ...side];
  return { panel, upper, raised, princess, side: sideRun };
};

const liningSidePanel = (
  draft: JacketDraft,
  which: 'front' | 'back',
): Pick<Piece, 'cut' | 'runs' | 'edges' | 'darts' | 'grain' | 'levels' | 'landmarks' | 'lines'> => {
  const { panel, upper, raised, princess, side } = liningSide(draft, which);
  return {
    cut: [lining(2, true)],
    runs: closeRuns([
      edgeRun('shoulder', panel.shoulder),
      edgeRun('armhole', upper),
      edgeRun('armhole-under', raised),
      edgeRun('side', side),
      straightRun('hem', pathEnd(side), pathEnd(princess)),
      edgeRun('princess', reversePath(princess)),
    ]),
    edges: liningEdges(['shoulder', 'armhole', 'armhole-under', 'side', 'hem', 'princess']),
    darts: [],
    grain: upright((panel.bust[0].x + panel.bust[1].x) / 2, panel.bust[1].y + 15, draft.plan.hipLevel - 20),
    ...lengthened(
      draft,
      (y) => fallAt(princess, y),
      (y) => sideAt(panel.side, y),
    ),
    landmarks: [landmark('underarm', pathEnd(raised))],
  };
};

const liningSideNotches = (draft: JacketDraft, which: 'front' | 'back') => {
  const { upper, side } = liningSide(draft, which);
  return [
    notchDown(
      `armhole-${which}`,
      'armhole',
      upper,
      pathLength(upper) - notchFromPitch(upper),
      'down',
      which === 'front' ? 1 : 2,
    ),
    notchDown('waist-side', 'side', side, pathLength(side.slice(0, 3)), 'down'),
  ];
};

export const liningSideFront = (draft: JacketDraft): Piece => {
  const { princess } = liningSide(draft, 'front');
  return {
    ...liningSidePanel(draft, 'front'),
    id: 'lining-side-front',
    name: 'Side front lining',
    role: 'side-front',
    notches: [
      ...liningSideNotches(draft, 'front'),
      notchDown('bust-above', 'princess', princess, pathLength(princess.slice(0, 1)), 'up'),
      waistNotch(princess, 'up'),
    ],
  };
};

export const liningSideBack = (draft: JacketDraft): Piece => {
  const { princess } = liningSide(draft, 'back');
  return {
    ...liningSidePanel(draft, 'back'),
    id: 'lining-side-back',
    name: 'Side back lining',
    role: 'side-back',
    notches: [
      ...liningSideNotches(draft, 'back'),
      notchDown('blade', 'princess', princess, pathLength(princess.slice(0, 2)), 'up'),
      waistNotch(princess, 'up'),
    ],
  };
};
