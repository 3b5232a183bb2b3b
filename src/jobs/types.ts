import type { Result } from '../units/index.ts';

/** What a job may know of the world while it runs. */
export interface JobContext<Partial = unknown> {
  /** For anything random; the same seed gives the same result. */
  readonly seed: number;
  /** Milliseconds on a clock that does not go back. */
  now(): number;
  /** Says how far along the job is, 0 to 1, with what it has so far when that is worth showing. */
  report(progress: number, partial?: Partial): void;
  /** True once the person has called it off. Becomes true only across a `pause` where threads share nothing. */
  cancelled(): boolean;
  /** Lets the world in. A job that computes long awaits it every 30 ms or so. */
  pause(): Promise<void>;
}

/**
 * A long piece of work as a pure definition. Input, partials and output are plain values that survive
 * being sent to another thread. What was wrong with the input is a problem in the result; a broken
 * invariant throws.
 */
export interface Job<Input = unknown, Partial = unknown, Output = unknown> {
  readonly kind: string;
  run(input: Input, context: JobContext<Partial>): Promise<Result<Output>>;
}
