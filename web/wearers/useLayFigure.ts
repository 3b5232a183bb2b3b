import { useMemo } from 'react';
import { completeMeasures, describeMeasure, type MeasureId, type Measures } from '../../src/body/index.ts';
import { webWords } from '../../src/words/index.ts';
import { type Say, useSay } from '../app/settings.tsx';
import { type Laid, useLay } from '../parts/table/laid.ts';
import { isWhole } from './body-outline.ts';
import { drawFigure } from './figure.ts';

const words = webWords.wearers;

/** Someone to show where the tape goes, before anything was measured. */
const anyone: Measures = { stature: 1650 };

/** The figure of these measures as it lies on the table; null where it cannot be drawn. */
export const figureLaid = (
  known: Measures,
  survey: 'women' | 'men',
  focused: MeasureId | null,
  say: Say,
): Laid | null => {
  const measures = completeMeasures({ ...anyone, ...known }, survey).measures;
  if (!isWhole(measures)) return null;
  const name = focused ? describeMeasure(focused).name : '';
  const read = focused ? known[focused] : undefined;
  const plain = Object.keys(known).length > 0 ? words.figurePlain : words.figureAnyone;
  const purpose = focused === 'stature' ? 'stature' : 'measure';
  const tape = read === undefined ? name : `${name}, ${say.length(read, { purpose })}`;
  const label = focused ? say.words(words.figure, { measure: tape }) : plain;
  const drawing = drawFigure(measures, focused, { label, front: words.figureFront, back: words.figureBack, tape });
  return { drawing, subject: 'figure', onSheet: true };
};

/** Lays the figure of these measures on the table, with the tape of the one in hand. */
export const useLayFigure = (known: Measures, survey: 'women' | 'men', focused: MeasureId | null): void => {
  const say = useSay();
  // Measures are small plain values: told apart by what they hold, not by which object holds them.
  const key = JSON.stringify(known);
  const laid = useMemo(
    () => figureLaid(JSON.parse(key) as Measures, survey, focused, say),
    [key, survey, focused, say],
  );
  useLay(laid);
};
