import { useCallback, useEffect, useMemo, useRef } from 'react';
import { createDrawingCache } from '../../src/draw/index.ts';
import type { AlterationStep } from '../../src/pattern/index.ts';
import { webWords } from '../../src/words/index.ts';
import { useSay } from '../app/settings.tsx';
import { type Laid, useLay } from '../parts/table/laid.ts';
import { useSettled } from '../parts/useSettled.ts';
import { type Changes, drawChanges, type ShownPieces } from './drawings.ts';
import { garmentBefore, gripOf } from './grip.ts';
import { useMake } from './make-context.ts';
import { useCurrentPassage } from './Passages.tsx';
import { alongEdge, shareGripOf } from './share-grip.ts';
import { alterationOf, setParam } from './steps.ts';

const words = webWords.make.alterations;

/** Lays the pieces before and after on the table, with the point of the step in hand that can be dragged. */
export const useBeforeAfter = (shown: ShownPieces, inHand: AlterationStep | undefined) => {
  const say = useSay();
  const { make, size, altered, change } = useMake();
  const current = useCurrentPassage() === 'alterations';
  const last = useRef<Changes | null>(null);
  const cache = useMemo(createDrawingCache, []);
  const moving = useSettled(altered) !== altered;
  const id = inHand?.id;
  const alteration = inHand && alterationOf(inHand);
  const amountName = alteration && (alteration.amount ?? alongEdge);
  /** Her hand moved the point last, and not a field. */
  const byHand = useRef(false);
  const onMove = useCallback(
    (amount: number) => {
      byHand.current = true;
      if (id && amountName) change((before) => setParam(before, id, amountName, amount), `${id} ${amountName}`);
    },
    [change, id, amountName],
  );
  // A point cannot be drawn further than the piece bears: it stops at the most that holds.
  const largest = altered.refusal?.step === id ? altered.refusal?.largest : undefined;
  useEffect(() => {
    if (!byHand.current || !largest || !id) return;
    byHand.current = false;
    change((before) => setParam(before, id, largest.parameter, largest.amount), `${id} ${largest.parameter}`);
  }, [largest, id, change]);
  const laid = useMemo((): Laid | null => {
    if (!current) return null;
    const steps = altered.outcomes.length;
    const label = say.words(steps === 0 ? words.pictureNone : words.picture, { size: size.id, steps });
    const asked = { before: altered.before, after: altered.garment, shown, label, unit: say.unit, moving };
    const changes = drawChanges(asked, last.current, cache);
    last.current = changes;
    const before = inHand && garmentBefore(size.garment, altered, make.steps, inHand.id);
    const asks = { told: altered.garment, placeOf: changes.placeOf, say, onMove };
    const grip =
      inHand && before
        ? (gripOf({ ...asks, step: inHand, before }) ?? shareGripOf({ ...asks, step: inHand, before }))
        : null;
    // Papers keep their places while an amount is dragged; another set of papers is seen anew.
    return { drawing: changes.drawing, subject: `alterations ${size.id} ${changes.papers}`, grip };
  }, [current, size, altered, make.steps, shown, say, moving, cache, inHand, onMove]);
  useLay(laid);
};
