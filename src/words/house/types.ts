/** One step of the order of work, and what kind of work it is: pressing and trying on have their own moments. */
export interface WorkStep {
  readonly do: 'prepare' | 'sew' | 'press' | 'try-on' | 'finish';
  /** Lengths in it stand as `{70 mm}` and are filled in the reader's unit. */
  readonly text: string;
  /** Views it belongs to; every view when left out. */
  readonly views?: readonly string[];
}

/** Everything a person reads of one house pattern. */
export interface HouseWords {
  readonly name: string;
  readonly about: string;
  /** By view id, in the order they are shown; the first is the one shown unless another is asked for. */
  readonly views: Readonly<Record<string, { readonly name: string; readonly about: string }>>;
  /** By piece id. */
  readonly pieces: Readonly<Record<string, string>>;
  readonly work: readonly WorkStep[];
  /** Where the work or the wearing can hurt someone: short, with where to look up the rules. */
  readonly cautions?: readonly string[];
}
