import { useEffect, useMemo, useRef, useState } from 'react';
import { alterationCatalogue, suits } from '../../src/alter/index.ts';
import { createDrawingCache } from '../../src/draw/index.ts';
import { webWords } from '../../src/words/index.ts';
import { useSay } from '../app/settings.tsx';
import { Select } from '../parts/Select.tsx';
import { type Laid, useLay } from '../parts/table/laid.ts';
import { useSettled } from '../parts/useSettled.ts';
import { AlteredEase, TooTight } from './AlteredEase.tsx';
import { alterationAbout, alterationName } from './alteration-words.ts';
import { type Changes, drawChanges, type ShownPieces } from './drawings.ts';
import { useMake } from './make-context.ts';
import { Passage, useCurrentPassage } from './Passages.tsx';
import { StepEditor } from './StepEditor.tsx';
import { addStep, suggestionFor } from './steps.ts';

const words = webWords.make.alterations;

const useBeforeAfter = (shown: ShownPieces) => {
  const say = useSay();
  const { size, altered } = useMake();
  const current = useCurrentPassage() === 'alterations';
  const last = useRef<Changes | null>(null);
  const cache = useMemo(createDrawingCache, []);
  const moving = useSettled(altered) !== altered;
  const laid = useMemo((): Laid | null => {
    if (!current) return null;
    const steps = altered.outcomes.length;
    const label = say.words(steps === 0 ? words.pictureNone : words.picture, { size: size.id, steps });
    const asked = { before: size.garment, after: altered.garment, shown, label, unit: say.unit, moving };
    const changes = drawChanges(asked, last.current, cache);
    last.current = changes;
    // Papers keep their places while an amount is dragged; another set of papers is seen anew.
    return { drawing: changes.drawing, subject: `alterations ${size.id} ${changes.papers}` };
  }, [current, size, altered, shown, say, moving, cache]);
  useLay(laid);
};

/** Alterations: the list, each with its amount, and the pieces before and after. */
export const AlterationsPassage = () => {
  const say = useSay();
  const { make, size, altered, change, fit } = useMake();
  // Only what can be done to these pieces is offered: a front without a dart takes no bust alteration.
  const offered = useMemo(() => alterationCatalogue.filter((one) => suits(one, size.garment)), [size.garment]);
  const [picked, setChosen] = useState('');
  const chosen = offered.some(({ id }) => id === picked) ? picked : (offered[0]?.id ?? '');
  const [shown, setShown] = useState<ShownPieces>('changed');
  useBeforeAfter(shown);
  const alteration = offered.find((one) => one.id === chosen);
  const list = useRef<HTMLOListElement>(null);
  const [added, setAdded] = useState('');
  /** How long the list was when an alteration was asked for; its amount takes the focus once it stands there. */
  const awaited = useRef<number | null>(null);
  const count = make.steps.length;
  useEffect(() => {
    if (awaited.current === null || count <= awaited.current) return;
    awaited.current = null;
    const step = list.current?.lastElementChild;
    step?.scrollIntoView({ block: 'center' });
    step?.querySelector<HTMLElement>('.amount input[type="text"]')?.focus({ preventScroll: true });
  }, [count]);
  const addChosen = () => {
    if (!alteration) return;
    awaited.current = count;
    setAdded(say.words(words.added, { name: alterationName(alteration.id), number: count + 1 }));
    const way = fit.ok ? fit.value.ways.find((one) => one.startingSize === size.id) : undefined;
    change((before) => addStep(before, alteration, suggestionFor(before, way, alteration)), `add step ${count + 1}`);
  };
  return (
    <Passage id="alterations" title={webWords.make.passages.alterations}>
      <p>{say.words(words.about, { size: size.id })}</p>
      {make.steps.length === 0 && <p>{words.none}</p>}
      {make.steps.length > 0 && (
        <ol className="steps" ref={list}>
          {make.steps.map((step, place) => (
            <StepEditor
              key={step.id}
              step={step}
              place={place}
              count={make.steps.length}
              outcome={altered.outcomes.find((one) => one.step.id === step.id)}
              refusal={altered.refusal?.step === step.id ? altered.refusal : null}
              stopped={altered.refusal !== null}
            />
          ))}
        </ol>
      )}
      <p className="unseen" role="status">
        {added}
      </p>
      <AlteredEase />
      <TooTight />
      <div className="add-step">
        <Select
          label={words.add}
          hint={alterationAbout(chosen)}
          value={chosen}
          options={offered.map(({ id }) => ({ value: id, label: alterationName(id) }))}
          onChange={setChosen}
        />
        <button type="button" className="verb" disabled={!alteration} onClick={addChosen}>
          {words.addVerb}
        </button>
      </div>
      <Select
        label={words.show}
        value={shown}
        options={[
          { value: 'changed', label: words.showChanged },
          { value: 'all', label: words.showAll },
          ...size.garment.pieces.map((piece) => ({ value: `piece:${piece.id}`, label: piece.name })),
        ]}
        onChange={(value) => setShown(value as ShownPieces)}
      />
    </Passage>
  );
};
