import type { ProblemCatalogue } from '../catalogue.ts';

/** What one step of an alteration list needs to be said aloud. */
export interface SpokenStep {
  readonly alteration: string;
  readonly params: Readonly<Record<string, number | string | boolean>>;
}

/** Says an amount on each piece, or that many times it in all, as it is marked on paper. */
export type SayAmount = (mm: number, times?: number) => string;

/** What a step may name by its id. */
export type NamedKind = 'piece' | 'edge' | 'dart' | 'notch' | 'seam' | 'landmark';

/** Says a named thing as the trade does, in the middle of a sentence: `front bust dart`, `front hem`. */
export type SayNamed = (of: NamedKind, id: string) => string;

type Words = Readonly<Record<string, string>>;

/** What a person reads of one alteration. */
export interface AlterationWords {
  readonly name: string;
  /** What it is for, in a sentence or two. */
  readonly about: string;
  /** What to look out for before or after, where there is something. */
  readonly caution?: string;
  /** Where the construction comes from: a standard, a paper, or the practice it is reckoned from. */
  readonly source?: string;
  /** The step as it is written on paper or read out. */
  readonly sentence?: (step: SpokenStep, say: SayAmount, name: SayNamed) => string;
  /** What its amount is on, where “on each half, in all” would not say it: `on each sleeve`; `{twice}` is twice the amount. */
  readonly per?: string;
  /** The same where it is done on one half of the body only, if that is said otherwise: `on the sleeve`. */
  readonly perOne?: string;
  /** Names of its parameters and choices where they differ from the general ones. */
  readonly parameters?: Words;
  readonly choices?: Words;
  /** What an amount more than nothing does and one less, as verbs, where “Add” and “Take out” would not say it. */
  readonly more?: string;
  readonly less?: string;
}

/** The words of one family of alterations; what is not said here is said by the general ones. */
export interface FamilyWords {
  readonly alterations: Readonly<Record<string, AlterationWords>>;
  readonly parameters?: Words;
  readonly choices?: Words;
  readonly holds?: Words;
  readonly follows?: Words;
  readonly held?: Words;
  readonly changed?: Words;
  readonly problems?: ProblemCatalogue;
}
