import { useMemo } from 'react';
import { applyAlterations } from '../../src/alter/index.ts';
import type { Make } from '../../src/make/index.ts';
import { useSay } from '../app/settings.tsx';
import type { StoredDocument } from '../documents/api.ts';
import { sizeFor } from '../makes/garment.ts';
import { drawGarment } from '../parts/draw-garment.ts';
import { type Laid, useLay } from '../parts/table/laid.ts';
import { usePattern } from '../patterns/pattern-source.ts';

/** Lays the pieces of the make in hand on the table, as altered so far. */
export const useLayMake = (make: StoredDocument<Make>): void => {
  const asked = usePattern(make.body.pattern);
  const say = useSay();
  const pattern = asked.state === 'here' ? asked.value : null;
  const laid = useMemo((): Laid | null => {
    if (!pattern) return null;
    const size = sizeFor(make.body, pattern, null);
    const { garment } = applyAlterations(size.garment, make.body.steps);
    const options = make.body.size === null ? { unit: say.unit } : { unit: say.unit, size: size.id };
    return { drawing: drawGarment(garment, make.body.name, options), subject: `home ${make.id}` };
  }, [pattern, make, say]);
  useLay(laid);
};
