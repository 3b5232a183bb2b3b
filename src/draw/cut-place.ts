import type { Path, Point } from '../geometry/index.ts';

/** One place where a piece was cut, as it lay before its parts moved, and what was put in there. */
export interface CutPlace {
  readonly piece: string;
  /** Which step of the list, from 1. */
  readonly step: number;
  readonly path: Path;
  /** Put in (positive) or taken out (negative), mm: the same all along a band, at the open end of a wedge; null where nothing is. */
  readonly amount: number | null;
  /** Where the parts stay joined; null where they come apart all along. */
  readonly hinge: Point | null;
}
