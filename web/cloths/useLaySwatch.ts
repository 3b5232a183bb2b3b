import { useMemo } from 'react';
import type { Cloth } from '../../src/cloth/index.ts';
import { webWords } from '../../src/words/index.ts';
import { useSay } from '../app/settings.tsx';
import { type Laid, useLay } from '../parts/table/laid.ts';
import { drawSwatch } from './swatch.ts';

const words = webWords.cloths;

/** Lays a cloth flat on the table. */
export const useLaySwatch = (cloth: Cloth | null): void => {
  const say = useSay();
  const laid = useMemo((): Laid | null => {
    if (!cloth) return null;
    const drawing = drawSwatch(cloth, {
      label: say.words(words.swatch, { name: cloth.name }),
      width: say.words(words.swatchWidth, { length: { mm: cloth.width } }),
      length: cloth.length === null ? words.swatchToBuy : say.length(cloth.length, { purpose: 'cloth', round: 'down' }),
      grain: cloth.oneWay ? words.oneWayShort : words.grain,
    });
    return { drawing, subject: `cloth ${cloth.length ?? 0} ${cloth.width}` };
  }, [cloth, say]);
  useLay(laid);
};
