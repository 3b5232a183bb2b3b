import { useEffect, useRef, useState } from 'react';
import type { PrintedPattern } from '../../src/formats/index.ts';
import type { Problem } from '../../src/units/index.ts';
import type { Printing } from '../jobs/print.ts';
import type { Asked } from './print-asked.ts';

type PrintState =
  | { readonly state: 'idle' }
  | { readonly state: 'printing'; readonly progress: number }
  | { readonly state: 'printed'; readonly printed: PrintedPattern; readonly address: string }
  | { readonly state: 'refused'; readonly problem: Problem };

/** Makes the PDF and keeps its address; the last one is let go of when another is made or the page is left. */
export const usePrint = (request: Asked) => {
  const [print, setPrint] = useState<PrintState>({ state: 'idle' });
  const printing = useRef<Printing | null>(null);
  const address = useRef<string | null>(null);
  const wanted = useRef(request);

  const letGo = () => {
    if (address.current) URL.revokeObjectURL(address.current);
    address.current = null;
  };
  useEffect(
    () => () => {
      printing.current?.stop();
      if (address.current) URL.revokeObjectURL(address.current);
    },
    [],
  );

  const start = async () => {
    setPrint({ state: 'printing', progress: 0 });
    letGo();
    try {
      const { startPrint } = await import('../jobs/print.ts');
      const run = startPrint(request, (progress) =>
        setPrint((now) => (now.state === 'printing' ? { state: 'printing', progress } : now)),
      );
      printing.current = run;
      const result = await run.result;
      if (!result.ok) {
        setPrint(
          result.problem.code === 'formats.cancelled'
            ? { state: 'idle' }
            : { state: 'refused', problem: result.problem },
        );
        return;
      }
      if (wanted.current !== request) {
        setPrint({ state: 'idle' });
        return;
      }
      const bytes = result.value.bytes as Uint8Array<ArrayBuffer>;
      address.current = URL.createObjectURL(new Blob([bytes], { type: 'application/pdf' }));
      setPrint({ state: 'printed', printed: result.value, address: address.current });
    } catch (error) {
      const detail = error instanceof Error ? error.message : String(error);
      setPrint({ state: 'refused', problem: { code: 'web.print-broken', values: { detail } } });
    } finally {
      printing.current = null;
    }
  };
  // A print of what has been changed since is not a print of this make: neither one that is done nor one under way.
  useEffect(() => {
    if (wanted.current === request) return;
    wanted.current = request;
    printing.current?.stop();
    setPrint((now) => (now.state === 'printed' ? { state: 'idle' } : now));
  }, [request]);
  return { print, start, stop: () => printing.current?.stop() };
};
