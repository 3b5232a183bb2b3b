import type { Altered } from '../alter/index.ts';
import type { Measures } from '../body/index.ts';
import { type Piece, printedPiece, printedSeams } from '../pattern/index.ts';
import type { Problem } from '../units/index.ts';
import { printedGirths } from './printed-garment.ts';

export interface AlteredPrinting {
  readonly body: Measures;
  /** How a problem is printed. */
  readonly problem: (problem: Problem) => { readonly code: string; readonly message: string; readonly remedy: string };
  /** How a piece is printed, where it is kept for pieces met again; `printedPiece` when left out. */
  readonly piece?: (piece: Piece) => ReturnType<typeof printedPiece>;
}

/** An altered garment, or why it was refused, in the shape docs/command-line.md promises. */
export const printedAltered = (altered: Altered, { body, problem, piece: print = printedPiece }: AlteredPrinting) => {
  if (altered.refusal) {
    const { step, problem: reason, largest } = altered.refusal;
    return {
      ok: false as const,
      step,
      ...problem(reason),
      ...(largest ? { largest: largest.amount, largestOf: largest.parameter } : {}),
    };
  }
  return {
    ok: true as const,
    pieces: altered.garment.pieces.map((piece) => {
      const report = altered.pieces.find((one) => one.piece === piece.id);
      return { ...print(piece), ...(report ? { ...report, piece: undefined } : {}) };
    }),
    seams: printedSeams(altered.garment),
    girths: printedGirths(altered.garment, body),
    // Where right and left differ the unaltered garment is told in the same pieces, so that the two can be laid side by side.
    ...(altered.apart
      ? {
          before: {
            pieces: altered.before.pieces.map(print),
            seams: printedSeams(altered.before),
            girths: printedGirths(altered.before, body),
          },
        }
      : {}),
    held: altered.outcomes.flatMap(({ step, applied }) => applied.held.map((one) => ({ step: step.id, ...one }))),
    changes: altered.outcomes.flatMap(({ step, applied }) =>
      applied.changes.map((change) => ({ step: step.id, ...change })),
    ),
    warnings: altered.warnings.map(problem),
  };
};
