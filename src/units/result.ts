import type { LengthPurpose } from './print-length.ts';

/**
 * A value a problem's sentence mentions: a word, a count, or a length that is printed in the reader's own unit,
 * as its purpose wants it (cloth in metres or yards) where it is said.
 */
export type ProblemValue = string | number | { readonly mm: number; readonly purpose?: LengthPurpose };

/**
 * Something that was wrong with what was given, as data. The sentence a person reads, and what
 * she can do about it, stand in words/ under the same code; `sentence(problem)` there joins them.
 */
export interface Problem {
  /** `room.what`, for example `pattern.open-edges`. */
  readonly code: string;
  readonly values?: Readonly<Record<string, ProblemValue>>;
}

export type Result<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: Problem };

export const good = <T>(value: T): Result<T> => ({ ok: true, value });

export const bad = (code: string, values?: Problem['values']): { readonly ok: false; readonly problem: Problem } => ({
  ok: false,
  problem: values ? { code, values } : { code },
});
