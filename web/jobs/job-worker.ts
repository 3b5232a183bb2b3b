/// <reference lib="webworker" />
import '../no-written-code.ts';
import { type FromWorker, serveJobs, type ToWorker } from '../../src/jobs/index.ts';

declare const self: DedicatedWorkerGlobalScope;

/** Resolves once messages that wait have been heard: a message to oneself queues up behind them. */
const pause = (): Promise<void> =>
  new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(null);
  });

serveJobs(
  {
    send: (message: FromWorker) => self.postMessage(message),
    listen: (hear: (message: ToWorker) => void) => {
      self.onmessage = (event: MessageEvent<ToWorker>) => hear(event.data);
    },
  },
  { now: () => performance.now(), pause },
);
