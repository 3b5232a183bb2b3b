/// <reference lib="webworker" />
import '../no-written-code.ts';
import type { Card } from '../../src/alter/index.ts';
import {
  type CardPrintOptions,
  drawPageMap,
  type FontFiles,
  measureWords,
  type PageMap,
  type PrintedCards,
  type PrintedPattern,
  type PrintRequest,
  printCardsPdf,
  printPdf,
  printSummaryPdf,
  type SheetRequest,
  type SummaryRequest,
} from '../../src/formats/index.ts';
import { bad, type Result } from '../../src/units/index.ts';

declare const self: DedicatedWorkerGlobalScope;

/** What is said to the print thread: what to print, a summary or cards to print, what to map, the letters to map with, or to stop. */
export type ToPrint =
  | { readonly say: 'print'; readonly request: PrintRequest }
  | { readonly say: 'summary'; readonly request: SummaryRequest }
  | { readonly say: 'cards'; readonly cards: readonly Card[]; readonly options: CardPrintOptions }
  | { readonly say: 'letters'; readonly fonts: FontFiles }
  | { readonly say: 'map'; readonly request: SheetRequest; readonly asked: number }
  | { readonly say: 'stop' };

export type FromPrint =
  | { readonly say: 'progress'; readonly progress: number }
  | { readonly say: 'printed'; readonly result: Result<PrintedPattern> }
  | { readonly say: 'cards'; readonly result: Result<PrintedCards> }
  | { readonly say: 'mapped'; readonly result: Result<PageMap>; readonly asked: number }
  | { readonly say: 'broken'; readonly message: string };

let stopped = false;
let letters: ReturnType<typeof measureWords> = Promise.resolve(null);
let lastAsked = 0;

const tell = (message: FromPrint, give: Transferable[] = []) => self.postMessage(message, give);

const orBroken = async (work: () => Promise<void>) => {
  try {
    await work();
  } catch (error) {
    tell({ say: 'broken', message: error instanceof Error ? error.message : String(error) });
  }
};

const print = async (request: PrintRequest) => {
  const result = await printPdf(request, {
    report: (progress) => tell({ say: 'progress', progress }),
    cancelled: () => stopped,
    pause: () => new Promise((resolve) => setTimeout(resolve, 0)),
  });
  tell({ say: 'printed', result }, result.ok ? [result.value.bytes.buffer] : []);
};

/** The page to work from, told as a print without sheets of pieces. */
const printSummary = async (request: SummaryRequest) => {
  const result = await printSummaryPdf(request);
  if (!result.ok) tell({ say: 'printed', result });
  else
    tell({ say: 'printed', result: { ok: true, value: { ...result.value, tiles: [] } } }, [result.value.bytes.buffer]);
};

const printCards = async (cards: readonly Card[], options: CardPrintOptions) => {
  const result = await printCardsPdf(cards, options);
  tell({ say: 'cards', result }, result.ok ? [result.value.bytes.buffer] : []);
};

/** Only the map asked for last is drawn: those before it are of pieces that have changed since. */
const map = async (request: SheetRequest, asked: number) => {
  lastAsked = asked;
  const textWidth = await letters;
  await new Promise((resolve) => setTimeout(resolve, 0));
  if (asked !== lastAsked) return;
  const result = textWidth ? drawPageMap(request, textWidth) : bad('formats.font-unreadable');
  tell({ say: 'mapped', result, asked });
};

self.onmessage = ({ data }: MessageEvent<ToPrint>) => {
  if (data.say === 'stop') stopped = true;
  else if (data.say === 'letters') letters = measureWords(data.fonts);
  else if (data.say === 'summary') void orBroken(() => printSummary(data.request));
  else if (data.say === 'cards') void orBroken(() => printCards(data.cards, data.options));
  else if (data.say === 'map') void orBroken(() => map(data.request, data.asked));
  else void orBroken(() => print(data.request));
};
