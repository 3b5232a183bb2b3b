import type { Garment, Piece } from '../pattern/index.ts';
import type { Put } from './put.ts';
import type { Tape } from './tape.ts';
import type { PieceCut } from './types.ts';

/** What has been done to one piece so far. `led`: by the alteration itself, so that nothing else may move it to follow. */
export interface Worked {
  readonly untrued: Piece;
  readonly puts: readonly Put[];
  readonly cuts: readonly PieceCut[];
  readonly led: boolean;
  /** The very piece that this one was last traced from, whole, nothing having been done to it since. */
  readonly tracedFrom: Piece | null;
}

/**
 * A garment on the table while one alteration is carried out on it: as it was, as it is now, and what was done to which
 * piece. A value like any other: every verb gives a new one.
 */
export interface Work {
  readonly before: Garment;
  readonly garment: Garment;
  readonly worked: ReadonlyMap<string, Worked>;
  readonly tape: Tape;
}
