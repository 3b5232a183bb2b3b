import { bad } from '../units/index.ts';
import type { FromWorker, Port, Surroundings, ToWorker } from './protocol.ts';
import { jobOf } from './registry.ts';
import type { JobContext } from './types.ts';

/** The worker's side: runs the jobs it is told to start, side by side, and heeds cancelling. */
export const serveJobs = (port: Port<FromWorker, ToWorker>, { now, pause }: Surroundings): void => {
  const calledOff = new Set<number>();
  const start = async ({ id, kind, seed, input }: ToWorker & { say: 'start' }): Promise<void> => {
    const job = jobOf(kind);
    if (!job) {
      port.send({ say: 'result', id, result: bad('jobs.unknown-kind', { kind }) });
      return;
    }
    const context: JobContext = {
      seed,
      now,
      pause,
      report: (progress, partial) =>
        port.send({ say: 'progress', id, progress, ...(partial === undefined ? {} : { partial }) }),
      cancelled: () => calledOff.has(id),
    };
    try {
      // Heard before it began: never begin.
      await pause();
      const result = calledOff.has(id) ? bad('jobs.cancelled') : await job.run(input, context);
      port.send({ say: 'result', id, result });
    } catch (error) {
      port.send({
        say: 'broken',
        id,
        message: error instanceof Error ? (error.stack ?? error.message) : String(error),
      });
    } finally {
      calledOff.delete(id);
    }
  };
  port.listen((message) => {
    if (message.say === 'cancel') calledOff.add(message.id);
    else void start(message);
  });
};
