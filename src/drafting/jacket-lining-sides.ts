import { line, type Path, pathEnd, pathLength, pathStart, reversePath } from '../geometry/index.ts';
import type { Piece } from '../pattern/index.ts';
import { heightOverUnderarm, raisedUnderarm, splitArmhole } from './jacket-armhole.ts';
import { facingLines } from './jacket-facings.ts';
import type { JacketDraft } from './jacket-fit.ts';
import { lengthened, liningEdges, waistNotch } from './jacket-lining.ts';
import { notchDown } from './jacket-marks.ts';
import { upright } from './jacket-panels.ts';
import { notchFromPitch, sleeveSeamNotch } from './jacket-side-panels.ts';
import { closeRuns, edgeRun, landmark, lining, straightRun } from './pieces.ts';
import { fallAt, shortened } from './princess.ts';
import { type Side, sideAt } from './side-seam.ts';

/** How much higher the lining's underarm lies than the jacket's, where the armhole has room: it goes over the seam, mm. */
const raise = { most: 12, share: 0.3 } as const;

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
    sleeveSeamNotch,
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
