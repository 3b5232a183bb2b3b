import {
  angleOf,
  applyToPath,
  joinPaths,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  rotation,
  segmentPointAt,
  splitPathAtLength,
  subtract,
} from '../geometry/index.ts';
import type { Piece, Run } from '../pattern/index.ts';
import { mouthOf } from './darted-waist.ts';
import { allowances, closeRuns, edge, edgeRun, landmark, lengthenLine, level, shell, straightRun } from './pieces.ts';
import { seamPocket } from './pocket-in-seam.ts';
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

/** Down the side from the waist: where a pocket's mouth begins, and the least to where it ends, a little past the hip, mm. */
const mouth = { from: 52, least: 205, pastHip: 8 } as const;

/** A side seam in the edges it is sewn as: whole, or down to the end of a pocket's mouth and on from there. */
export const sideEdges = ({ plan }: SkirtDraft, side: SkirtSide): readonly (readonly [id: string, path: Path])[] => {
  if (!plan.pocketed) return [['side', side]];
  const [upper, below] = splitPathAtLength(side, Math.max(mouth.least, pathLength([side[0]]) + mouth.pastHip));
  if (!upper || !below) throw new Error('A pocket is longer than the side it lies in');
  return [
    ['side-upper', upper],
    ['side', below],
  ];
};

/** Front, cut once on the fold, or back, cut twice with a seam down the centre. */
export const skirtPiece = (draft: SkirtDraft, which: Half): Piece => {
  const { plan } = draft;
  const panel = draft[which];
  const centre = centreOf(which);
  const [hipCurve, straight] = panel.side;
  const hemCentre = pathEnd(panel.hem);
  const sides = sideEdges(draft, panel.side);
  const top = sides[0] as readonly [string, Path];
  const back = which === 'back';
  const grainAt = 0.35 * hipCurve.to.x;
  return {
    id: which,
    name: back ? 'Back' : 'Front',
    role: which,
    cut: [back ? shell(2, true) : shell(1, false)],
    runs: closeRuns([
      ...waistRuns(panel, which),
      ...sides.map(([id, path]) => edgeRun(id, path)),
      edgeRun('hem', panel.hem),
      straightRun(centre, hemCentre, panel.centre),
    ]),
    edges: [
      edge('waist', 'seam', skirtAllowances.waist),
      ...sides.map(([id]) => edge(id, 'seam', skirtAllowances.seam)),
      edge('hem', 'hem', skirtAllowances.hem),
      back ? edge(centre, 'seam', skirtAllowances.seam) : edge(centre, 'fold', 0),
    ],
    darts: panel.waist.darts.map(({ point }, i) => ({ id: dartIds[which][i] ?? '', point, pressed: 'before' })),
    notches: [
      ...(plan.pocketed
        ? [
            { id: 'mouth', edge: 'side-upper', at: mouth.from / pathLength(top[1]), strokes: 1 as const },
            { id: 'mouth-end', edge: 'side-upper', at: 1, strokes: 1 as const },
          ]
        : []),
      { id: 'hip', edge: top[0], at: pathLength([hipCurve]) / pathLength(top[1]), strokes: back ? 2 : 1 },
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

/** The bag of a pocket in the side seam, hung from the front's waist as it is once the dart is stitched. */
export const skirtPocket = (draft: SkirtDraft): Piece => {
  const { waist, side } = draft.front;
  const [dart] = waist.darts;
  const [inner, outer] = waist.runs;
  const [upper] = sideEdges(draft, side);
  if (!dart || !inner || !outer || !upper) throw new Error('A front without a dart');
  const [from, to] = dart.legs.map((leg) => angleOf(subtract(leg, dart.point))) as [number, number];
  const bag = seamPocket({
    name: 'Pocket bag',
    waist: joinPaths(applyToPath(rotation(to - from, dart.point), inner), outer),
    side: upper[1],
    mouthFrom: mouth.from,
    sideAbove: side[0],
  });
  const edges = bag.edges.map((one) => (one.id === 'waist' ? edge('waist', 'seam', skirtAllowances.waist) : one));
  return { ...bag, edges };
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
