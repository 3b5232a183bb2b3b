import type { Result } from '../units/index.ts';
import type { FromWorker, Port, ToWorker } from './protocol.ts';
import type { InputOf, JobKind, OutputOf, PartialOf } from './registry.ts';

export interface CallOptions<Kind extends JobKind> {
  readonly seed: number;
  readonly report?: (progress: number, partial?: PartialOf<Kind>) => void;
}

/** A job under way. */
export interface Running<Kind extends JobKind> {
  /** The job's result; rejects when the job or its worker broke. */
  readonly result: Promise<Result<OutputOf<Kind>>>;
  /** Calls it off. The result still comes: what the job had, or a problem. */
  cancel(): void;
}

interface Waiting {
  readonly report: ((progress: number, partial?: unknown) => void) | undefined;
  readonly settle: (result: Result<unknown>) => void;
  readonly fail: (error: Error) => void;
}

/** The caller's side of a worker. */
export interface Caller {
  start<Kind extends JobKind>(kind: Kind, input: InputOf<Kind>, options: CallOptions<Kind>): Running<Kind>;
  /** The worker is gone: every job under way fails with this. */
  lost(error: Error): void;
}

export const callJobs = (port: Port<ToWorker, FromWorker>): Caller => {
  const waiting = new Map<number, Waiting>();
  let last = 0;
  port.listen((message) => {
    const job = waiting.get(message.id);
    if (!job) return;
    if (message.say === 'progress') {
      job.report?.(message.progress, message.partial);
      return;
    }
    waiting.delete(message.id);
    if (message.say === 'result') job.settle(message.result);
    else job.fail(new Error(message.message));
  });
  return {
    start<Kind extends JobKind>(kind: Kind, input: InputOf<Kind>, options: CallOptions<Kind>): Running<Kind> {
      last += 1;
      const id = last;
      const result = new Promise<Result<OutputOf<Kind>>>((resolve, reject) => {
        waiting.set(id, {
          report: options.report as Waiting['report'],
          settle: (value) => resolve(value as Result<OutputOf<Kind>>),
          fail: reject,
        });
      });
      port.send({ say: 'start', id, kind, seed: options.seed, input });
      return {
        result,
        cancel: () => {
          if (waiting.has(id)) port.send({ say: 'cancel', id });
        },
      };
    },
    lost(error) {
      for (const job of waiting.values()) job.fail(error);
      waiting.clear();
    },
  };
};
