/**
 * What a person reads when something was wrong: what happened, and what she can do about it.
 * `{name}` in either is filled with the problem's value of that name.
 */
export interface ProblemWords {
  readonly message: string;
  readonly remedy: string;
}

/** The sentences of one room, by problem code (`room.what`). */
export type ProblemCatalogue = Readonly<Record<string, ProblemWords>>;
