import { bad, good, type Result } from '../../units/index.ts';
import type { FlatMeasure } from './types.ts';

/** No garment measures more round its hem or along its back, mm: a whole circle of four lengths of cloth. */
const longest = 20_000;

/**
 * The finished measurement that pieces measured flat come to, mm: of each (flat − allowances − what is taken out) ×
 * times cut, summed (trade §3: seams excluded, darts, pleats and gathers closed, a piece on the fold counted twice).
 * Refused: no pieces, a length that is none, and a piece of which nothing is left.
 */
export const finishedFromFlat = (flat: Pick<FlatMeasure, 'pieces'>): Result<number> => {
  if (flat.pieces.length === 0) return bad('envelope.flat-no-pieces');
  let sum = 0;
  for (const piece of flat.pieces) {
    const lengths = [piece.flat, piece.allowances, piece.takenOut];
    if (!lengths.every((mm) => Number.isFinite(mm) && mm >= 0) || piece.flat === 0) {
      return bad('envelope.flat-no-length', { piece: piece.name });
    }
    if (!Number.isInteger(piece.times) || piece.times < 1 || piece.times > 20) {
      return bad('envelope.flat-times', { piece: piece.name });
    }
    const left = piece.flat - piece.allowances - piece.takenOut;
    if (left <= 0) {
      return bad('envelope.flat-nothing-left', {
        piece: piece.name,
        flat: { mm: piece.flat },
        out: { mm: piece.allowances + piece.takenOut },
      });
    }
    sum += left * piece.times;
  }
  return sum <= longest ? good(sum) : bad('envelope.flat-too-long', { sum: { mm: sum } });
};
