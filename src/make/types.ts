import type { Sign } from '../alter/index.ts';
import type { AlterationStep } from '../pattern/types.ts';

/** How the cloth lies on the table. */
export type Fold = 'single' | 'lengthwise';

export type Paper = 'a4' | 'letter' | 'a0' | 'roll36';

/** One round of fitting: what was tried on, cut by which alterations, what was seen, and what was taken up of it. */
export interface Fitting {
  readonly id: string;
  /** The day, ISO. */
  readonly date: string;
  readonly garment: 'toile' | 'make';
  /** The alteration list as it was cut for this round: the next round starts from what this one added. */
  readonly steps: readonly AlterationStep[];
  readonly signs: readonly Sign[];
  readonly notes: string;
  /** Ids of the steps that came into the list from this round. */
  readonly taken: readonly string[];
}

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
  /** Rounds of toile and fittings of the make itself, in the order they were held. */
  readonly fittings?: readonly Fitting[];
}
