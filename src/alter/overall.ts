import type { Garment, Piece } from '../pattern/index.ts';
import { reportOf } from './checks.ts';
import type { Combined } from './halves/combine.ts';
import { leftId } from './halves/kinds.ts';
import type { Put } from './put.ts';
import { createTape } from './tape.ts';
import type { Applied, PieceReport } from './types.ts';

/** What one step did to the right half and to the left; null to one it left alone. */
interface DoneToHalves {
  readonly right: Applied | null;
  readonly left: Applied | null;
}

const putsOn = (done: readonly DoneToHalves[], half: 'right' | 'left', piece: string): readonly Put[] =>
  done.flatMap((step) =>
    (step[half]?.pieces ?? []).filter((report) => report.piece === piece).flatMap(({ puts }) => puts),
  );

/** Each piece from before the first step to after the last, truing summed over the steps. A new piece has no before. */
export const overall = (
  before: Garment,
  after: Garment,
  combined: Combined | null,
  done: readonly DoneToHalves[],
): readonly PieceReport[] => {
  const tape = createTape();
  const known = new Map((combined?.before ?? before).pieces.map((piece) => [piece.id, piece]));
  const stand = combined?.stand;
  const putsOf = ({ id }: Piece): readonly Put[] => {
    const standing = stand?.get(id);
    if (standing === 'opened') return [...putsOn(done, 'right', id), ...putsOn(done, 'left', id)];
    if (standing !== undefined || !stand) return putsOn(done, 'right', id);
    const right = [...stand.keys()].find((one) => leftId(one) === id);
    return right === undefined ? putsOn(done, 'right', id) : putsOn(done, 'left', right);
  };
  return after.pieces.map((piece) => {
    const old = known.get(piece.id) ?? null;
    // What was put into a piece that is new is within it already.
    return reportOf(tape, old, piece, old ? putsOf(piece) : []);
  });
};
