import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import type { Alteration } from '../../src/alter/index.ts';
import { createDrawingCache } from '../../src/draw/index.ts';
import type { AlterationStep } from '../../src/pattern/index.ts';
import { webWords } from '../../src/words/index.ts';
import { useSay } from '../app/settings.tsx';
import { Select } from '../parts/Select.tsx';
import { type Laid, useLay } from '../parts/table/laid.ts';
import { useSettled } from '../parts/useSettled.ts';
import { AlterationPicker } from './AlterationPicker.tsx';
import { AlteredEase, TooTight } from './AlteredEase.tsx';
import { alterationName } from './alteration-words.ts';
import { type Changes, drawChanges, type ShownPieces } from './drawings.ts';
import { garmentBefore, garmentNext, gripOf } from './grip.ts';
import { useMake } from './make-context.ts';
import { Passage, useCurrentPassage } from './Passages.tsx';
import { StepEditor } from './StepEditor.tsx';
import { alongEdge, shareGripOf } from './share-grip.ts';
import { addStep, alterationOf, begunIn, putBack, setParam, suggestionFor } from './steps.ts';
import { UsualAlterations } from './UsualAlterations.tsx';
import { sayWhatFollows } from './what-follows.ts';

const words = webWords.make.alterations;

const useBeforeAfter = (shown: ShownPieces, inHand: AlterationStep | undefined) => {
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

/** A step that was taken off the list, and where it stood. */
interface Removed {
  readonly step: AlterationStep;
  readonly place: number;
}

/** What the list does to the rest, once her hand rests. */
const WhatFollows = () => {
  const say = useSay();
  const { altered } = useMake();
  const rested = useSettled(altered);
  const lines = useMemo(() => sayWhatFollows(rested.before, rested.garment, say), [rested, say]);
  if (lines.length === 0) return null;
  return (
    <section className="what-follows" aria-labelledby="what-follows">
      <h3 id="what-follows">{words.followsTitle}</h3>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
};

/** Alterations: the list, each with its amount, and the pieces before and after. */
export const AlterationsPassage = () => {
  const say = useSay();
  const { make, size, altered, change, fit } = useMake();
  const [shown, setShown] = useState<ShownPieces>('changed');
  const [taken, setTaken] = useState<string | null>(null);
  const [removed, setRemoved] = useState<readonly Removed[]>([]);
  const inHand = make.steps.find(({ id }) => id === taken) ?? make.steps.find(({ on }) => on);
  useBeforeAfter(shown, inHand);
  const list = useRef<HTMLOListElement>(null);
  const [added, setAdded] = useState('');
  /** How long the list was when an alteration was asked for; its amount takes the focus once it stands there. */
  const awaited = useRef<number | null>(null);
  const count = make.steps.length;
  // What can be done to the pieces is asked of them once her hand rests.
  const rested = useSettled(altered);
  useEffect(() => {
    if (awaited.current === null || count <= awaited.current) return;
    awaited.current = null;
    const step = list.current?.lastElementChild;
    step?.scrollIntoView({ block: 'center' });
    const amount = step?.querySelector<HTMLElement>('.amount input[type="text"]');
    (amount ?? step?.querySelector<HTMLElement>('select, input'))?.focus({ preventScroll: true });
  }, [count]);
  const add = (alteration: Alteration) => {
    awaited.current = count;
    setAdded(say.words(words.added, { name: alterationName(alteration.id), number: count + 1 }));
    const way = fit.ok ? fit.value.ways.find((one) => one.startingSize === size.id) : undefined;
    const begun = begunIn(alteration, garmentNext(size.garment, altered));
    change(
      (before) => addStep(before, alteration, suggestionFor(before, way, alteration) ?? begun),
      `add step ${count + 1}`,
    );
  };
  const gone = removed.filter(({ step }) => !make.steps.some(({ id }) => id === step.id));
  return (
    <Passage id="alterations" title={webWords.make.passages.alterations}>
      <p>{say.words(words.about, { size: size.id })}</p>
      <UsualAlterations />
      {make.steps.length === 0 && <p>{words.none}</p>}
      {make.steps.length > 0 && (
        <ol className="steps" ref={list}>
          {make.steps.map((step, place) => (
            <StepEditor
              key={step.id}
              step={step}
              place={place}
              count={make.steps.length}
              before={garmentBefore(size.garment, altered, make.steps, step.id)}
              inHand={inHand?.id === step.id}
              onTake={() => setTaken(step.id)}
              onRemoved={(one, at) =>
                setRemoved((before) => [{ step: one, place: at }, ...before.filter((old) => old.step.id !== one.id)])
              }
              outcome={altered.outcomes.find((one) => one.step.id === step.id)}
              refusal={altered.refusal?.step === step.id ? altered.refusal : null}
              stopped={altered.refusal !== null}
            />
          ))}
        </ol>
      )}
      {gone.length > 0 && (
        <div className="verbs">
          {gone.map(({ step, place }) => (
            <button
              key={step.id}
              type="button"
              className="verb verb-quiet"
              onClick={() => change((before) => putBack(before, step, place), `put back ${step.id}`)}
            >
              {say.words(words.putBack, { name: alterationName(step.alteration) })}
            </button>
          ))}
        </div>
      )}
      <p className="unseen" role="status">
        {added}
      </p>
      <AlterationPicker garment={garmentNext(size.garment, rested)} onPick={add} />
      <WhatFollows />
      <AlteredEase />
      <TooTight />
      <Select
        label={words.show}
        value={shown}
        options={[
          { value: 'changed', label: words.showChanged },
          { value: 'all', label: words.showAll },
          ...altered.garment.pieces.map((piece) => ({ value: `piece:${piece.id}`, label: piece.name })),
        ]}
        onChange={(value) => setShown(value as ShownPieces)}
      />
    </Passage>
  );
};
