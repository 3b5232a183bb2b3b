import { useMemo } from 'react';
import type { HousePattern } from '../../src/drafting/index.ts';
import { drawCollection } from '../../src/draw/index.ts';
import { webHouseWords } from '../../src/words/index.ts';
import { goTo, pathTo } from '../app/router.ts';
import { useSay } from '../app/settings.tsx';
import { tableAspect } from '../parts/draw-garment.ts';
import { type Laid, useLay } from '../parts/table/laid.ts';
import { useNarrow } from '../parts/useNarrow.ts';

/** The em of a sketch's name, mm on the sketches' own scale: on a broad table, and on a phone's. */
const nameSize = { wide: 15, narrow: 48 } as const;

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
    return {
      drawing: drawCollection(entries, {
        label,
        aspect: narrow ? 1.25 : tableAspect,
        textSize: narrow ? nameSize.narrow : nameSize.wide,
        frontOnly: narrow,
      }),
      subject: 'collection',
      onPick: (id) => goTo(pathTo('pattern', `house:${id}`)),
    };
  }, [patterns, say, narrow]);
  useLay(laid);
};
