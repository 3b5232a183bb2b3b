import { useEffect, useRef, useState } from 'react';
import type { PageMap, SheetRequest } from '../../src/formats/index.ts';
import type { Problem } from '../../src/units/index.ts';
import type { Mapper } from '../jobs/print.ts';

/** How the map of a print stands. The last one stays readable while the next is worked out. */
export interface MapInHand {
  readonly map: PageMap | null;
  /** What the map is of. */
  readonly of: SheetRequest | null;
  readonly problem: Problem | null;
}

const none: MapInHand = { map: null, of: null, problem: null };

/** The map of what would be printed now, worked out anew when that changes; nothing is asked while `request` is null. */
export const usePageMap = (request: SheetRequest | null): MapInHand => {
  const [inHand, setInHand] = useState(none);
  const mapper = useRef<Promise<Mapper> | null>(null);
  const asked = useRef<SheetRequest | null>(null);
  useEffect(
    () => () => {
      void mapper.current?.then((one) => one.end());
      mapper.current = null;
    },
    [],
  );
  useEffect(() => {
    if (!request || asked.current === request) return;
    asked.current = request;
    const broken = (error: Error) =>
      setInHand((now) => ({ ...now, problem: { code: 'web.print-broken', values: { detail: error.message } } }));
    mapper.current ??= import('../jobs/print.ts').then(({ startMapper }) =>
      startMapper((result) => {
        if (result instanceof Error) broken(result);
        else if (!result.ok) setInHand({ map: null, of: asked.current, problem: result.problem });
        else setInHand({ map: result.value, of: asked.current, problem: null });
      }),
    );
    mapper.current.then((one) => one.map(request), broken);
  }, [request]);
  return inHand;
};
