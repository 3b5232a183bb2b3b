import { setImmediate } from 'node:timers';
import { Worker } from 'node:worker_threads';
import {
  type Caller,
  type CallOptions,
  callJobs,
  type FromWorker,
  type LayoutInput,
  type Running,
  searchWithMany,
  serveJobs,
  type ToWorker,
} from './index.ts';

/** Workers to start jobs on; `close` when done with them. */
export interface NodeJobs {
  readonly workers: readonly Caller[];
  close(): Promise<void>;
}

/** Threads can only be started on compiled code: Node cannot load a TypeScript worker. */
const compiled = import.meta.url.endsWith('.js');

const threadCaller = (): { readonly caller: Caller; close(): Promise<void> } => {
  const thread = new Worker(new URL('./host-node-worker.js', import.meta.url));
  const caller = callJobs({
    send: (message: ToWorker) => thread.postMessage(message),
    listen: (hear) => thread.on('message', (message: FromWorker) => hear(message)),
  });
  thread.on('error', (error: unknown) => caller.lost(error instanceof Error ? error : new Error(String(error))));
  thread.on('exit', () => caller.lost(new Error('The worker thread has ended')));
  return {
    caller,
    close: async () => {
      await thread.terminate();
    },
  };
};

/** The same protocol without a thread: jobs run here, and let the world in while they compute. */
const inProcessCaller = (): Caller => {
  let toWorker: (message: ToWorker) => void = () => {};
  let fromWorker: (message: FromWorker) => void = () => {};
  const caller = callJobs({
    send: (message) => setImmediate(() => toWorker(structuredClone(message))),
    listen: (hear) => {
      fromWorker = hear;
    },
  });
  serveJobs(
    {
      send: (message) => fromWorker(structuredClone(message)),
      listen: (hear) => {
        toWorker = hear;
      },
    },
    { now: () => performance.now(), pause: () => new Promise((resolve) => setImmediate(resolve)) },
  );
  return caller;
};

/** Opens so many workers: threads where the code is compiled, else one and the same process taking turns. */
export const openNodeJobs = (count: number): NodeJobs => {
  if (!compiled) {
    const workers = Array.from({ length: count }, inProcessCaller);
    return { workers, close: async () => {} };
  }
  const threads = Array.from({ length: count }, threadCaller);
  return {
    workers: threads.map(({ caller }) => caller),
    close: async () => {
      await Promise.all(threads.map((thread) => thread.close()));
    },
  };
};

/** One layout search on as many workers as asked; they are closed again when it ends. */
export const searchLayoutOnNode = (
  input: LayoutInput,
  { workers: count, ...options }: CallOptions<'layout'> & { readonly workers: number },
): Running<'layout'> => {
  const { workers, close } = openNodeJobs(Math.max(1, count));
  const running = searchWithMany(workers, input, options);
  return { result: running.result.finally(close), cancel: running.cancel };
};
