import type { Result } from '../units/index.ts';

/** What is said to a worker. Jobs are told apart by an id of the caller's. */
export type ToWorker =
  | {
      readonly say: 'start';
      readonly id: number;
      readonly kind: string;
      readonly seed: number;
      readonly input: unknown;
    }
  | { readonly say: 'cancel'; readonly id: number };

/** What a worker says. */
export type FromWorker =
  | { readonly say: 'progress'; readonly id: number; readonly progress: number; readonly partial?: unknown }
  | { readonly say: 'result'; readonly id: number; readonly result: Result<unknown> }
  /** The job broke: a fault of ours, not of what was given. */
  | { readonly say: 'broken'; readonly id: number; readonly message: string };

/** One end of a line between two threads, whatever carries it. */
export interface Port<Out, In> {
  send(message: Out): void;
  /** Called once, before anything is sent. */
  listen(hear: (message: In) => void): void;
}

/** What a worker must be given of its surroundings. */
export interface Surroundings {
  now(): number;
  /** Resolves after messages that wait have been heard. */
  pause(): Promise<void>;
}
