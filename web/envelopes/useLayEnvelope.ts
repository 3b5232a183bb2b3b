import { useMemo } from 'react';
import type { ChartKind } from '../../src/pattern/index.ts';
import { envelopePageWords, fill } from '../../src/words/index.ts';
import { useSay } from '../app/settings.tsx';
import { useCurrentPassage } from '../makes/Passages.tsx';
import { type Laid, useLay } from '../parts/table/laid.ts';
import { useNarrow } from '../parts/useNarrow.ts';
import { figureLaid } from '../wearers/useLayFigure.ts';
import { drawBodyChart, drawFinishedChart } from './chart-picture.ts';
import { drawClothNeeded } from './cloth-picture.ts';
import { useEnvelope } from './envelope-context.ts';
import { drawFlatGuide } from './flat-picture.ts';
import { useLaidPhotograph } from './photograph.ts';

const words = envelopePageWords.picture;

/** What lies on the table while a passage of the envelope is read or worked in. */
export const useLayEnvelope = (): void => {
  const { id, envelope, wearer, photograph, measuring, row } = useEnvelope();
  const narrow = useNarrow();
  const say = useSay();
  const passage = useCurrentPassage();
  const shown = photograph ?? (passage === 'photographs' ? (envelope.photographs[0] ?? null) : null);
  const number = shown === null ? 0 : envelope.photographs.indexOf(shown) + 1;
  const laidPhotograph = useLaidPhotograph(
    number > 0 ? shown : null,
    fill(words.photograph, { number, name: envelope.name }, 'cm'),
  );
  const tape = useMemo((): Laid | null => {
    const drawing =
      measuring === null || passage !== 'finished' ? null : drawFlatGuide(measuring, envelope.kind, narrow);
    return drawing && { drawing, subject: `tape ${measuring}` };
  }, [measuring, passage, envelope.kind, narrow]);
  const chart = useMemo((): Laid | null => {
    const at = (chart: ChartKind) => ({ narrow, row: row?.chart === chart ? row.row : 0 });
    const middle = envelope.sizes[Math.floor(envelope.sizes.length / 2)] ?? '';
    const drawing =
      (passage === 'cloth' ? drawClothNeeded(envelope, middle, at('cloth')) : null) ??
      (passage === 'finished' ? drawFinishedChart(envelope, wearer, at('finished')) : null) ??
      drawBodyChart(envelope, wearer, at('body')) ??
      drawFinishedChart(envelope, wearer, at('finished')) ??
      drawClothNeeded(envelope, middle, at('cloth'));
    if (!drawing) {
      const figure = figureLaid(wearer?.measures ?? {}, envelope.for === 'men' ? 'men' : 'women', null, say);
      return figure && { ...figure, drawing: { ...figure.drawing, label: words.bodyEmpty } };
    }
    const kind = passage === 'cloth' || passage === 'finished' ? passage : 'body';
    return { drawing, subject: `envelope ${id} ${kind} ${narrow}`, onSheet: kind !== 'cloth' };
  }, [id, envelope, wearer, passage, narrow, row, say]);
  useLay(tape ?? laidPhotograph ?? chart);
};
