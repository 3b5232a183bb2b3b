import { useEffect, useRef, useState } from 'react';
import type { Alteration } from '../../src/alter/index.ts';
import type { AlterationStep } from '../../src/pattern/index.ts';
import { webWords } from '../../src/words/index.ts';
import { useSay } from '../app/settings.tsx';
import { Select } from '../parts/Select.tsx';
import { useSettled } from '../parts/useSettled.ts';
import { AlterationPicker } from './AlterationPicker.tsx';
import { AlteredEase, TooTight } from './AlteredEase.tsx';
import { alterationName } from './alteration-words.ts';
import type { ShownPieces } from './drawings.ts';
import { garmentBefore, garmentNext } from './grip.ts';
import { useMake } from './make-context.ts';
import { Passage } from './Passages.tsx';
import { StepEditor, stepSwitchId } from './StepEditor.tsx';
import { addStep, begunIn, putBack, suggestionFor } from './steps.ts';
import { UsualAlterations } from './UsualAlterations.tsx';
import { useBeforeAfter } from './useBeforeAfter.ts';
import { WhatFollows } from './WhatFollows.tsx';

const words = webWords.make.alterations;

/** A step that was taken off the list, and where it stood. */
interface Removed {
  readonly step: AlterationStep;
  readonly place: number;
}

const putBackId = (step: string): string => `put-back-${step}`;

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
  const onRemoved = (step: AlterationStep, place: number) => {
    next.current = putBackId(step.id);
    setRemoved((before) => [{ step, place }, ...before.filter((old) => old.step.id !== step.id)]);
  };
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
  /** What the keyboard is taken to once it is there: a verb that went away with its step would let go of it. */
  const next = useRef<string | null>(null);
  useEffect(() => {
    const element = next.current === null ? null : document.getElementById(next.current);
    if (!element) return;
    next.current = null;
    element.focus({ preventScroll: true });
  });
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
              onRemoved={onRemoved}
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
              id={putBackId(step.id)}
              type="button"
              className="verb verb-quiet"
              onClick={() => {
                next.current = stepSwitchId(step.id);
                change((before) => putBack(before, step, place), `put back ${step.id}`);
              }}
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
