import type { AlterationStep } from '../pattern/types.ts';

/** How the cloth lies on the table. */
export type Fold = 'single' | 'lengthwise';

export type Paper = 'a4' | 'letter' | 'a0' | 'roll36';

/** One garment, from plan on: wearer × pattern × cloth, and every choice made for it. */
export interface Make {
  readonly format: 'easewright-make/1';
  readonly name: string;
  /** Document ids. A house pattern is named `house:ID`. */
  readonly wearer: string;
  readonly pattern: string;
  /** Id of the pattern's view; its first where none is named. */
  readonly view?: string;
  /** Cup a multi-cup pattern is cut in, bust girth − upper bust girth in mm; the wearer's nearest where none is named. */
  readonly cup?: number;
  readonly cloth: string | null;
  /** Starting size; null until chosen, then the recommended one is shown. */
  readonly size: string | null;
  readonly steps: readonly AlterationStep[];
  readonly fold: Fold;
  /** Gap between pieces for the blade, mm. */
  readonly gap: number;
  readonly paper: Paper;
  readonly state: 'planned' | 'cut' | 'sewn' | 'worn' | 'set-aside';
  readonly note: string;
}
