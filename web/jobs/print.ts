import regular from '../../node_modules/@expo-google-fonts/alegreya-sans/400Regular/AlegreyaSans_400Regular.ttf?url';
import bold from '../../node_modules/@expo-google-fonts/alegreya-sans/700Bold/AlegreyaSans_700Bold.ttf?url';
import type { Card } from '../../src/alter/index.ts';
import type {
  CardPrintOptions,
  FontFiles,
  PageMap,
  PrintedCards,
  PrintedPattern,
  SheetRequest,
  SummaryRequest,
} from '../../src/formats/index.ts';
import type { Result } from '../../src/units/index.ts';
import type { FromPrint, ToPrint } from './print-worker.ts';

/** A print under way. */
export interface Printing {
  readonly result: Promise<Result<PrintedPattern>>;
  readonly stop: () => void;
}

const readFont = async (address: string): Promise<Uint8Array> => {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`a font could not be read: ${response.status}`);
  return new Uint8Array(await response.arrayBuffer());
};

const readFonts = async (): Promise<FontFiles> => ({ regular: await readFont(regular), bold: await readFont(bold) });

const startThread = () => new Worker(new URL('./print-worker.ts', import.meta.url), { type: 'module', name: 'print' });

/** Makes the full-scale PDF, or the summary to work from, in a thread of its own, with the program's own letters. */
export const startPrint = (
  request: SheetRequest | Omit<SummaryRequest, 'fonts'>,
  report: (progress: number) => void,
): Printing => {
  const worker = startThread();
  const say = (message: ToPrint) => worker.postMessage(message);
  const printed = new Promise<Result<PrintedPattern>>((resolve, reject) => {
    worker.onmessage = (event: MessageEvent<FromPrint>) => {
      const message = event.data;
      if (message.say === 'progress') report(message.progress);
      else if (message.say === 'printed') resolve(message.result);
      else if (message.say === 'broken') reject(new Error(message.message));
    };
    worker.onerror = (event) => reject(new Error(event.message || 'the print thread could not be started'));
  });
  const result = readFonts()
    .then((fonts) => {
      if ('altered' in request) say({ say: 'summary', request: { ...request, fonts } });
      else say({ say: 'print', request: { ...request, fonts } });
      return printed;
    })
    .finally(() => worker.terminate());
  return { result, stop: () => say({ say: 'stop' }) };
};

/** Alteration cards as one PDF, made in a thread of its own. */
export const printCards = async (
  cards: readonly Card[],
  options: Omit<CardPrintOptions, 'fonts'>,
): Promise<Result<PrintedCards>> => {
  const worker = startThread();
  try {
    const fonts = await readFonts();
    return await new Promise((resolve, reject) => {
      worker.onmessage = (event: MessageEvent<FromPrint>) => {
        const message = event.data;
        if (message.say === 'cards') resolve(message.result);
        else if (message.say === 'broken') reject(new Error(message.message));
      };
      worker.onerror = (event) => reject(new Error(event.message || 'the print thread could not be started'));
      worker.postMessage({ say: 'cards', cards, options: { ...options, fonts } } satisfies ToPrint);
    });
  } finally {
    worker.terminate();
  }
};

/** A thread that works out which pieces come to lie on which sheets. */
export interface Mapper {
  /** Asks for a map; what was asked before and has not been answered is given up. */
  readonly map: (request: SheetRequest) => void;
  readonly end: () => void;
}

/** Packing the sheets takes some tenths of a second, more than a page may stand still. */
export const startMapper = (hear: (result: Result<PageMap> | Error) => void): Mapper => {
  const worker = startThread();
  const say = (message: ToPrint) => worker.postMessage(message);
  let asked = 0;
  worker.onmessage = (event: MessageEvent<FromPrint>) => {
    const message = event.data;
    if (message.say === 'mapped' && message.asked === asked) hear(message.result);
    else if (message.say === 'broken') hear(new Error(message.message));
  };
  worker.onerror = (event) => hear(new Error(event.message || 'the print thread could not be started'));
  const ready = readFonts().then((fonts) => say({ say: 'letters', fonts }));
  return {
    map: (request) => {
      asked += 1;
      const own = asked;
      ready.then(
        () => own === asked && say({ say: 'map', request, asked: own }),
        (error: Error) => hear(error),
      );
    },
    end: () => worker.terminate(),
  };
};
