import { useMemo } from 'react';
import { applyAlterations } from '../../src/alter/index.ts';
import { latestMeasures, type Wearer } from '../../src/body/index.ts';
import type { Make } from '../../src/make/index.ts';
import { useDocument } from '../app/desk-context.ts';
import { useSay } from '../app/settings.tsx';
import type { StoredDocument } from '../documents/api.ts';
import { drawBodyChart } from '../envelopes/chart-picture.ts';
import { useKnownEnvelope } from '../envelopes/known.ts';
import { sizeFor } from '../makes/garment.ts';
import { drawGarment } from '../parts/draw-garment.ts';
import { type Laid, useLay } from '../parts/table/laid.ts';
import { useNarrow } from '../parts/useNarrow.ts';
import { usePattern } from '../patterns/pattern-source.ts';

/** Lays the pieces of the make in hand on the table, as altered so far; of a pattern known by its envelope, its body chart. */
export const useLayMake = (make: StoredDocument<Make>): void => {
  const asked = usePattern(make.body.pattern);
  const say = useSay();
  const narrow = useNarrow();
  const pattern = asked.state === 'here' ? asked.value : null;
  const laid = useMemo((): Laid | null => {
    if (!pattern) return null;
    const size = sizeFor(make.body, pattern, null);
    const { garment } = applyAlterations(size.garment, make.body.steps);
    const options = { unit: say.unit, narrow, ...(make.body.size === null ? {} : { size: size.id }) };
    return { drawing: drawGarment(garment, make.body.name, options), subject: `home ${make.id} ${narrow}` };
  }, [pattern, make, say, narrow]);
  const envelope = useKnownEnvelope(make.body.pattern);
  const wearer = useDocument<Wearer>(envelope ? make.body.wearer : '');
  const chart = useMemo((): Laid | null => {
    if (!envelope) return null;
    const body = wearer.state === 'here' ? wearer.value.body : null;
    const shown = body && { name: body.name, measures: latestMeasures(body) };
    const drawing = drawBodyChart(envelope, shown, { narrow, row: 0 });
    return drawing && { drawing, subject: `home ${make.id} ${narrow}`, onSheet: true };
  }, [envelope, wearer, narrow, make.id]);
  useLay(laid ?? chart);
};
