import { type Caller, callJobs, type FromWorker, type ToWorker } from '../../src/jobs/index.ts';

/** A worker thread that runs jobs, and the verb that ends it. */
export interface WorkerInHand {
  readonly caller: Caller;
  readonly end: () => void;
}

/** Starts a thread for jobs. If it breaks, every job under way in it fails. */
export const startWorker = (): WorkerInHand => {
  const worker = new Worker(new URL('./job-worker.ts', import.meta.url), { type: 'module', name: 'jobs' });
  const caller = callJobs({
    send: (message: ToWorker) => worker.postMessage(message),
    listen: (hear: (message: FromWorker) => void) => {
      worker.onmessage = (event: MessageEvent<FromWorker>) => hear(event.data);
    },
  });
  worker.onerror = (event) => caller.lost(new Error(event.message || 'a worker could not be started'));
  return { caller, end: () => worker.terminate() };
};

/** Threads worth using for one search: one is left for the page, and more than four gain little. */
export const usefulThreads = (): number => Math.min(4, Math.max(1, (navigator.hardwareConcurrency || 2) - 1));
