import regular from '../../node_modules/@expo-google-fonts/alegreya-sans/400Regular/AlegreyaSans_400Regular.ttf?url';
import bold from '../../node_modules/@expo-google-fonts/alegreya-sans/700Bold/AlegreyaSans_700Bold.ttf?url';
import type { FontFiles, PrintedPattern, PrintRequest } from '../../src/formats/index.ts';
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

/** Makes the full-scale PDF in a thread of its own, with the program's own letters. */
export const startPrint = (request: Omit<PrintRequest, 'fonts'>, report: (progress: number) => void): Printing => {
  const worker = new Worker(new URL('./print-worker.ts', import.meta.url), { type: 'module', name: 'print' });
  const say = (message: ToPrint) => worker.postMessage(message);
  const printed = new Promise<Result<PrintedPattern>>((resolve, reject) => {
    worker.onmessage = (event: MessageEvent<FromPrint>) => {
      const message = event.data;
      if (message.say === 'progress') report(message.progress);
      else if (message.say === 'printed') resolve(message.result);
      else reject(new Error(message.message));
    };
    worker.onerror = (event) => reject(new Error(event.message || 'the print thread could not be started'));
  });
  const result = readFonts()
    .then((fonts) => {
      say({ say: 'print', request: { ...request, fonts } });
      return printed;
    })
    .finally(() => worker.terminate());
  return { result, stop: () => say({ say: 'stop' }) };
};
