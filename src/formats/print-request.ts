import type { CutPlace } from '../draw/index.ts';
import type { Paper } from '../make/index.ts';
import type { Garment } from '../pattern/index.ts';
import type { Problem, Unit } from '../units/index.ts';
import type { FontFiles } from './pdf-fonts.ts';

/** What is to be printed, on what. */
export interface SheetRequest {
  readonly garment: Garment;
  /** The garment before its alterations; printed dotted in the layer `original`, piece by piece, at the same place. */
  readonly original?: Garment;
  /** The pattern's name. */
  readonly title: string;
  readonly size: string;
  /** The name of the make it is printed for. */
  readonly make?: string;
  /** Left out unless she asked for the name to be printed: who a garment is for is private. */
  readonly wearer?: string;
  /** What was altered, each a sentence, and the ids of the pieces it touched; all pieces when left out. */
  readonly alterations?: readonly PrintedAlteration[];
  readonly paper: Paper;
  readonly unit: Unit;
  readonly locale?: string;
  /**
   * Only the pieces that differ from `original`, whole or as overlays to lay on the tissue; every piece when left out. A
   * piece that `original` does not have is new and printed whole.
   */
  readonly only?: 'changed' | 'overlay';
  /** Where pieces were cut, for overlays. */
  readonly cuts?: readonly CutPlace[];
  /**
   * What was printed before of the same pattern on the same paper, and how: then only the sheets that are different now
   * are printed, to be exchanged for those. For paper that is joined at home; `only` is then passed over.
   */
  readonly printed?: PrintedBefore;
}

/** The garment an earlier print was of. */
export interface PrintedBefore {
  readonly garment: Garment;
  /** The garment before alterations that was dotted on it. */
  readonly original?: Garment;
  readonly alterations?: readonly PrintedAlteration[];
}

export interface PrintRequest extends SheetRequest {
  readonly fonts: FontFiles;
}

export interface PrintedAlteration {
  readonly text: string;
  readonly pieces?: readonly string[];
}

/** What the host of a long job gives; all may be left out. */
export interface PrintContext {
  /** Share of the work done, 0 to 1. */
  report?(progress: number): void;
  cancelled?(): boolean;
  /** Awaited before each page, so that a host with one thread can hear of a cancel. */
  pause?(): Promise<void>;
}

export interface PrintedPattern {
  readonly bytes: Uint8Array;
  readonly pages: number;
  /** Names of the sheets that carry the pattern, in page order. */
  readonly tiles: readonly string[];
  readonly warnings: readonly Problem[];
}
