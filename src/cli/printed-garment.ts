import type { Measures } from '../body/index.ts';
import type { EaseByLevel } from '../drafting/index.ts';
import { finishedGirths, type Garment, printedPiece, printedSeams } from '../pattern/index.ts';

/**
 * Finished girths beside the body they go round. `ease` is what the design states where it states one, so that
 * finished = body + ease can be checked; where the garment hangs free it is what the pieces came to. Which pieces it is
 * measured over, and how often each, is printed with it: linings, overlaps and second layers count for nothing.
 */
export const printedGirths = (garment: Garment, body: Measures, stated: EaseByLevel = {}) =>
  finishedGirths(garment).map(({ level, measure, around, finished }, index) => {
    const round = body[measure] ?? null;
    const ease = stated[level] ?? (round === null ? null : finished - round);
    return { level, measure, around, body: round, ease, finished, pieces: garment.girths[index]?.pieces ?? [] };
  });

/** Seams and girths of a garment, and its pieces where they are asked for. */
export const printedGarment = (garment: Garment, body: Measures, stated: EaseByLevel, withPieces: boolean) => ({
  seams: printedSeams(garment),
  girths: printedGirths(garment, body, stated),
  ...(withPieces ? { pieces: garment.pieces.map(printedPiece) } : {}),
});
