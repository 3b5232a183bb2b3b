import { tolerance } from '../geometry/index.ts';
import { type Garment, type Piece, pieceOf, type Seam, type SeamSide } from '../pattern/index.ts';
import { held } from './checks.ts';
import type { Tape } from './tape.ts';
import type { Held } from './types.ts';
import type { Work } from './work-type.ts';

/** How far a notch lies from the start of the walk along its side, mm; null where the piece has no such notch. */
const along = (tape: Tape, piece: Piece, side: SeamSide, id: string): number | null => {
  const notch = piece.notches.find((one) => one.id === id && one.edge === side.edge);
  if (!notch) return null;
  return tape.edge(piece, side.edge) * (side.reversed ? 1 - notch.at : notch.at);
};

/** How far a pair of notches lies apart beyond what the seam's ease up to there explains, mm. */
const apart = (tape: Tape, garment: Garment, seam: Seam, [a, b]: readonly [string, string]): number | null => {
  const first = along(tape, pieceOf(garment, seam.a.piece), seam.a, a);
  const second = along(tape, pieceOf(garment, seam.b.piece), seam.b, b);
  if (first === null || second === null) return null;
  const difference = first - second;
  const [low, high] = [Math.min(0, seam.easeMin), Math.max(0, seam.easeMax)];
  return difference < low ? difference - low : difference > high ? difference - high : 0;
};

/** The garment with one notch set so many mm from the start of the walk. */
const withNotch = (tape: Tape, garment: Garment, side: SeamSide, id: string, at: number): Garment => {
  const piece = pieceOf(garment, side.piece);
  const share = Math.min(Math.max(at / tape.edge(piece, side.edge), 0), 1);
  const notches = piece.notches.map((notch) =>
    notch.id === id && notch.edge === side.edge ? { ...notch, at: side.reversed ? 1 - share : share } : notch,
  );
  return { ...garment, pieces: garment.pieces.map((one) => (one === piece ? { ...piece, notches } : one)) };
};

/**
 * Notches that met and no longer do are marked again, as at the table: the seam is walked and the mark made on the piece
 * that followed, or on the seam's second where both were altered.
 */
export const meetNotches = (work: Work): Work => {
  let { garment } = work;
  // A notch that meets three others, as that of a pocket's mouth does, is marked once and the others by it.
  const marked = new Set<string>();
  const { before, tape, worked } = work;
  for (const seam of garment.seams) {
    if (!worked.has(seam.a.piece) && !worked.has(seam.b.piece)) continue;
    const old = before.seams.find(({ id }) => id === seam.id);
    if (!old) continue;
    for (const pair of seam.notches) {
      const now = apart(tape, garment, seam, pair);
      if (now === null) continue;
      const [first, second] = [`${seam.a.piece}/${pair[0]}`, `${seam.b.piece}/${pair[1]}`];
      const known = marked.has(first) === marked.has(second) ? null : marked.has(first) ? 'a' : 'b';
      marked.add(first).add(second);
      if (Math.abs(now) <= tolerance.notch / 2) continue;
      const was = apart(tape, before, old, pair);
      if (was === null || Math.abs(was) > tolerance.notch) continue;
      const led =
        known === 'b' ||
        (known === null && worked.get(seam.b.piece)?.led === true && worked.get(seam.a.piece)?.led !== true);
      const [side, id] = led ? [seam.a, pair[0]] : [seam.b, pair[1]];
      const at = along(tape, pieceOf(garment, side.piece), side, id) as number;
      garment = withNotch(tape, garment, side, id, at + (led ? -now : now));
    }
  }
  return garment === work.garment ? work : { ...work, garment };
};

/** Notch pairs of changed pieces that meet, or at least no worse than before. */
export const heldNotches = (
  tape: Tape,
  before: Garment,
  after: Garment,
  changed: ReadonlySet<string>,
): readonly Held[] =>
  after.seams
    .filter(({ a, b }) => changed.has(a.piece) || changed.has(b.piece))
    .flatMap((seam) => {
      const old = before.seams.find(({ id }) => id === seam.id);
      const over = seam.notches.flatMap((pair) => {
        const now = apart(tape, after, seam, pair);
        if (now === null) return [];
        const was = old ? (apart(tape, before, old, pair) ?? 0) : 0;
        return [Math.abs(now) <= Math.abs(was) ? 0 : now];
      });
      if (over.length === 0) return [];
      const worst = over.reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a), 0);
      return [held('notches-meet', worst, { seam: seam.id }, tolerance.notch)];
    });
