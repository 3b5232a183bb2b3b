import { type Path, type Point, pathEnd, pathLength, segmentPointAt } from '../geometry/index.ts';
import type { Piece, Run } from '../pattern/index.ts';
import { mouthOf } from './darted-waist.ts';
import { allowances, closeRuns, edge, edgeRun, landmark, lengthenLine, level, shell, straightRun } from './pieces.ts';
import { parameterAtHeight } from './side-seam.ts';
import type { SkirtDraft, SkirtPanel, SkirtSide } from './skirt-panel.ts';
import { type BandSection, straightWaistband } from './waistband.ts';

/** Allowances of the skirt, mm: the waist narrow, for the band lies on it. */
export const skirtAllowances = { ...allowances, waist: 10, hem: 40, liningHem: 25 } as const;

export type Half = 'front' | 'back';

export const centreOf = (which: Half): 'centre-front' | 'centre-back' =>
  which === 'front' ? 'centre-front' : 'centre-back';

/** Darts from the centre outward. */
export const dartIds = { front: ['waist'], back: ['waist-inner', 'waist-outer'] } as const;

/** The side seam's point at a height below the hip. */
const onSide = ([, straight]: SkirtSide, y: number): Point => ({
  ...segmentPointAt(straight, parameterAtHeight(straight, y)),
  y,
});

/** Where the skirt is lengthened or shortened: well below the darts and the zip, above the hem. */
export const lengthenLevel = ({ plan }: SkirtDraft): number => plan.hipLevel + 0.45 * (plan.hemLevel - plan.hipLevel);

export const lengthenAt = (draft: SkirtDraft, side: SkirtSide) => {
  const y = lengthenLevel(draft);
  return lengthenLine('below-hip', { x: 0, y }, onSide(side, y));
};

export const hipNotch = (side: SkirtSide): number => pathLength([side[0]]) / pathLength(side);

const waistRuns = ({ waist }: SkirtPanel, which: Half): readonly Run[] =>
  waist.runs.flatMap((path: Path, i): Run[] => {
    const dart = waist.darts[i];
    return [
      edgeRun('waist', path),
      ...(dart ? [{ kind: 'mouth' as const, dart: dartIds[which][i] ?? '', path: mouthOf(dart) }] : []),
    ];
  });

/** Front, cut once on the fold, or back, cut twice with a seam down the centre. */
export const skirtPiece = (draft: SkirtDraft, which: Half): Piece => {
  const { plan } = draft;
  const panel = draft[which];
  const centre = centreOf(which);
  const [hipCurve, straight] = panel.side;
  const hemCentre = pathEnd(panel.hem);
  const back = which === 'back';
  const grainAt = 0.35 * hipCurve.to.x;
  return {
    id: which,
    name: back ? 'Back' : 'Front',
    role: which,
    cut: [back ? shell(2, true) : shell(1, false)],
    runs: closeRuns([
      ...waistRuns(panel, which),
      edgeRun('side', panel.side),
      edgeRun('hem', panel.hem),
      straightRun(centre, hemCentre, panel.centre),
    ]),
    edges: [
      edge('waist', 'seam', skirtAllowances.waist),
      edge('side', 'seam', skirtAllowances.seam),
      edge('hem', 'hem', skirtAllowances.hem),
      back ? edge(centre, 'seam', skirtAllowances.seam) : edge(centre, 'fold', 0),
    ],
    darts: panel.waist.darts.map(({ point }, i) => ({ id: dartIds[which][i] ?? '', point, pressed: 'before' })),
    notches: [
      { id: 'hip', edge: 'side', at: hipNotch(panel.side), strokes: back ? 2 : 1 },
      ...(back
        ? [
            {
              id: 'zip-end',
              edge: centre,
              at: 1 - plan.zip / (hemCentre.y - panel.centre.y),
              strokes: 1 as const,
            },
          ]
        : []),
    ],
    grain: { from: { x: grainAt, y: plan.hipLevel + 30 }, to: { x: grainAt, y: plan.hemLevel - 60 } },
    levels: [level('hip', { x: 0, y: plan.hipLevel }, hipCurve.to)],
    landmarks: [
      landmark(back ? 'waist-centre-back' : 'waist-centre-front', panel.centre),
      landmark('waist-side', hipCurve.from),
      landmark('hip-side', hipCurve.to),
      landmark('hem-side', straight.to),
      landmark('hem-centre', hemCentre),
    ],
    lines: [lengthenAt(draft, panel.side)],
  };
};

/** The waistband, from the right half's centre back round the front to the left's; what closes lies under on from the right. */
export const skirtBand = ({ plan }: SkirtDraft): Piece => {
  const { front, back } = plan;
  const sections: readonly BandSection[] = [
    { id: 'back-right', length: back.waist },
    { id: 'front-right', length: front.waist },
    { id: 'front-left', length: front.waist },
    { id: 'back-left', length: back.waist },
  ];
  return straightWaistband({
    name: 'Waistband',
    width: plan.band.width,
    sections,
    underlap: plan.band.underlap,
    allowances: { seam: skirtAllowances.waist, long: skirtAllowances.waist },
  });
};
