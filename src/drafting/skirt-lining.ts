import {
  add,
  line,
  type Path,
  pathEnd,
  pathLength,
  pathPointAtLength,
  pathTangentAtLength,
  perpendicular,
  scale,
} from '../geometry/index.ts';
import type { InnerLine, Piece } from '../pattern/index.ts';
import { closeRuns, edge, edgeRun, landmark, level, lining, straightRun } from './pieces.ts';
import type { SkirtDraft } from './skirt-panel.ts';
import { centreOf, type Half, hipNotch, lengthenAt, skirtAllowances } from './skirt-pieces.ts';

/** The lining hangs open this much further down than the zip, so that nothing pulls at its end, mm. */
const pastZip = 20;

/** How far down a tuck's folds are marked, mm. */
const tuckMarked = 45;

/** What the tucks of a half take in together: the lining's waist less the shell's with its darts stitched, mm. */
export const tuckedIn = (draft: SkirtDraft, which: Half): number =>
  pathLength((which === 'front' ? draft.liningFront : draft.liningBack).waist) - draft.plan[which].waist;

/** The two folds of each tuck, laid where the shell has its darts and shared as they share. */
const tucks = (draft: SkirtDraft, which: Half, waist: Path): readonly InnerLine[] => {
  const { darts, waist: finished } = draft.plan[which];
  const whole = darts.reduce((sum, { intake }) => sum + intake, 0);
  const all = tuckedIn(draft, which);
  let laid = 0;
  return darts.flatMap(({ at, intake }, i): InnerLine[] => {
    const from = at * finished + laid;
    laid += (all * intake) / whole;
    return [from, at * finished + laid].map((mm, end): InnerLine => {
      const place = pathPointAtLength(waist, mm);
      const down = scale(perpendicular(pathTangentAtLength(waist, mm)), -tuckMarked);
      return {
        id: `tuck-${i + 1}-${end === 0 ? 'fold' : 'meets'}`,
        kind: 'fold',
        path: [line(place, add(place, down))],
      };
    });
  });
};

/** The shell's panel without darts and shorter, cut in lining; what the darts take in is laid in tucks. */
export const liningPiece = (draft: SkirtDraft, which: Half): Piece => {
  const { plan } = draft;
  const panel = which === 'front' ? draft.liningFront : draft.liningBack;
  const centre = centreOf(which);
  const back = which === 'back';
  const [hipCurve, straight] = panel.side;
  const hemCentre = pathEnd(panel.hem);
  const grainAt = 0.35 * hipCurve.to.x;
  return {
    id: `lining-${which}`,
    name: back ? 'Back lining' : 'Front lining',
    role: which,
    cut: [back ? lining(2, true) : lining(1, false)],
    runs: closeRuns([
      edgeRun('waist', panel.waist),
      edgeRun('side', panel.side),
      edgeRun('hem', panel.hem),
      straightRun(centre, hemCentre, panel.centre),
    ]),
    edges: [
      edge('waist', 'seam', skirtAllowances.waist),
      edge('side', 'seam', skirtAllowances.seam),
      edge('hem', 'hem', skirtAllowances.liningHem),
      back ? edge(centre, 'seam', skirtAllowances.seam) : edge(centre, 'fold', 0),
    ],
    darts: [],
    notches: [
      { id: 'hip', edge: 'side', at: hipNotch(panel.side), strokes: back ? 2 : 1 },
      ...(back
        ? [
            {
              id: 'opening-end',
              edge: centre,
              at: 1 - (plan.zip + pastZip) / (hemCentre.y - panel.centre.y),
              strokes: 1 as const,
            },
          ]
        : []),
    ],
    grain: { from: { x: grainAt, y: plan.hipLevel + 30 }, to: { x: grainAt, y: plan.hemLevel - 80 } },
    levels: [level('hip', { x: 0, y: plan.hipLevel }, hipCurve.to)],
    landmarks: [
      landmark(back ? 'waist-centre-back' : 'waist-centre-front', panel.centre),
      landmark('waist-side', hipCurve.from),
      landmark('hip-side', hipCurve.to),
      landmark('hem-side', straight.to),
      landmark('hem-centre', hemCentre),
    ],
    lines: [lengthenAt(draft, panel.side), ...tucks(draft, which, panel.waist)],
  };
};
