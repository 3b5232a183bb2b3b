import { type Path, type Point, pathLength } from '../geometry/index.ts';
import type { InnerLine, Notch } from '../pattern/index.ts';
import type { JacketDraft } from './jacket-fit.ts';
import { lengthenLine } from './pieces.ts';

/** Seam allowances particular to the jacket, mm: deep hems that weigh the cloth, narrow edges that are turned. */
export const jacketAllowances = { hem: 40, edge: 10, liningHem: 20 } as const;

/** A notch at a length down an edge that runs down in outline order, or up it. */
export const notchDown = (
  id: string,
  edge: string,
  path: Path,
  down: number,
  runs: 'down' | 'up',
  strokes: 1 | 2 = 1,
): Notch => {
  const share = down / pathLength(path);
  return { id, edge, at: runs === 'down' ? share : 1 - share, strokes };
};

/**
 * Shares of the way from the waist up to the bust, and down to the hip, and how far at least from the waist, mm: what is
 * folded out lies above the line, and edges are drawn anew on both sides of it.
 */
const lengthenAt = { above: 0.36, least: 54, below: 0.37 } as const;

/** Levels at which every panel may be lengthened, clear of the bust and of the pocket. */
export const lengthenLevels = ({ plan, body }: JacketDraft): { readonly above: number; readonly below: number } => ({
  above: plan.waistLevel - Math.max(lengthenAt.least, lengthenAt.above * (plan.waistLevel - body.sideFront.bust[1].y)),
  below: plan.waistLevel + lengthenAt.below * (plan.hipLevel - plan.waistLevel),
});

/** Both lines across a panel where it may be lengthened or shortened. */
export const lengthenLines = (
  draft: JacketDraft,
  left: (y: number) => Point,
  right: (y: number) => Point,
): readonly InnerLine[] => {
  const { above, below } = lengthenLevels(draft);
  return [
    lengthenLine('above-waist', left(above), right(above)),
    lengthenLine('below-waist', left(below), right(below)),
  ];
};
