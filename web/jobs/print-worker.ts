/// <reference lib="webworker" />
import '../no-written-code.ts';
import { type PrintedPattern, type PrintRequest, printPdf } from '../../src/formats/index.ts';
import type { Result } from '../../src/units/index.ts';

declare const self: DedicatedWorkerGlobalScope;

/** What is said to the print thread: what to print, or to stop. */
export type ToPrint = { readonly say: 'print'; readonly request: PrintRequest } | { readonly say: 'stop' };

export type FromPrint =
  | { readonly say: 'progress'; readonly progress: number }
  | { readonly say: 'printed'; readonly result: Result<PrintedPattern> }
  | { readonly say: 'broken'; readonly message: string };

let stopped = false;

const tell = (message: FromPrint, give: Transferable[] = []) => self.postMessage(message, give);

const print = async (request: PrintRequest) => {
  try {
    const result = await printPdf(request, {
      report: (progress) => tell({ say: 'progress', progress }),
      cancelled: () => stopped,
      pause: () => new Promise((resolve) => setTimeout(resolve, 0)),
    });
    tell({ say: 'printed', result }, result.ok ? [result.value.bytes.buffer] : []);
  } catch (error) {
    tell({ say: 'broken', message: error instanceof Error ? error.message : String(error) });
  }
};

self.onmessage = (event: MessageEvent<ToPrint>) => {
  if (event.data.say === 'stop') stopped = true;
  else void print(event.data.request);
};
