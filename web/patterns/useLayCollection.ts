import { useMemo } from 'react';
import type { HousePattern } from '../../src/drafting/index.ts';
import { drawCollection } from '../../src/draw/index.ts';
import { webHouseWords } from '../../src/words/index.ts';
import { goTo, pathTo } from '../app/router.ts';
import { useSay } from '../app/settings.tsx';
import { drawnReadable, narrowAspect, tableAspect } from '../parts/draw-garment.ts';
import { type Laid, useLay } from '../parts/table/laid.ts';
import { useNarrow } from '../parts/useNarrow.ts';

/** Lays the whole collection on the table as sketches; pointing at one opens it. */
export const useLayCollection = (patterns: readonly HousePattern[] | undefined): void => {
  const say = useSay();
  const narrow = useNarrow();
  const laid = useMemo((): Laid | null => {
    if (!patterns) return null;
    const entries = patterns.flatMap((house) => {
      const size = house.chart[Math.floor((house.chart.length - 1) / 2)];
      const garment = size && house.draft(size.body);
      return garment?.ok ? [{ id: house.id, name: house.name, sketch: house.sketch(garment.value) }] : [];
    });
    const label = say.words(webHouseWords.collectionLabel, { names: entries.map(({ name }) => name).join(', ') });
    const aspect = narrow ? narrowAspect : tableAspect;
    const draw = (textSize: number) => drawCollection(entries, { label, aspect, textSize, frontOnly: narrow });
    return {
      drawing: drawnReadable(draw, narrow).drawing,
      subject: `collection ${narrow}`,
      onPick: (id) => goTo(pathTo('pattern', `house:${id}`)),
    };
  }, [patterns, say, narrow]);
  useLay(laid);
};
