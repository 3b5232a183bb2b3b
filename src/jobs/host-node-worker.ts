import { setImmediate } from 'node:timers';
import { parentPort } from 'node:worker_threads';
import { serveJobs, type ToWorker } from './index.ts';

/* A thread of the Node host: serves jobs to whoever started it. */

const port = parentPort;
if (!port) throw new Error('This file is a worker thread of host-node');
serveJobs(
  {
    send: (message) => port.postMessage(message),
    listen: (hear) => port.on('message', (message: ToWorker) => hear(message)),
  },
  { now: () => performance.now(), pause: () => new Promise((resolve) => setImmediate(resolve)) },
);
