import { useEffect, useId, useState } from 'react';
import type { Envelope } from '../../src/pattern/index.ts';
import { envelopePageWords, webWords } from '../../src/words/index.ts';
import { useDraft, useSay } from '../app/settings.tsx';
import { Passage } from '../makes/Passages.tsx';
import { Choice } from '../parts/Choice.tsx';
import { FieldTrouble } from '../parts/FieldTrouble.tsx';
import { readName } from '../parts/read-name.ts';
import { Select } from '../parts/Select.tsx';
import { ReadField, WordsField } from '../parts/TextField.tsx';
import { sizesKnown, withSizes } from './edit.ts';
import { useEnvelope } from './envelope-context.ts';
import { readSizes } from './sizes.ts';

const words = envelopePageWords.what;

/** The names of the sizes. They are taken when she leaves the field: half a list must not take figures away. */
const Sizes = () => {
  const say = useSay();
  const id = useId();
  const { id: envelopeId, envelope, change } = useEnvelope();
  const [draft, keepDraft] = useDraft(`${envelopeId}/sizes`);
  const [text, setText] = useState<string | null>(draft);
  const shown = sizesKnown(envelope) ? envelope.sizes.join(', ') : '';
  const [seen, setSeen] = useState(shown);
  const [told, setTold] = useState(draft !== null);
  if (seen !== shown) {
    setSeen(shown);
    setText(null);
  }
  const stale = text === null && draft !== null;
  useEffect(() => {
    if (stale) keepDraft(null);
  }, [stale, keepDraft]);
  const read = text === null ? null : readSizes(text);
  const trouble = told && read && !read.ok ? say.problem(read.problem) : null;
  const take = () => {
    if (text === null || !read) return;
    setTold(true);
    if (!read.ok) {
      // An emptied field means what stood there before.
      if (text.trim() === '') setText(null);
      else keepDraft(text);
      return;
    }
    change((before) => withSizes(before, read.value), `sizes ${text}`);
    setText(null);
  };
  return (
    <div className="field">
      <label htmlFor={id}>{words.sizes}</label>
      <p className="hint" id={`${id}-hint`}>
        {words.sizesHint} {shown !== '' && words.sizesKept}
      </p>
      <input
        id={id}
        type="text"
        autoComplete="off"
        spellCheck={false}
        aria-describedby={`${id}-hint${trouble ? ` ${id}-trouble` : ''}`}
        aria-invalid={trouble !== null}
        value={text ?? shown}
        onChange={(event) => {
          setText(event.target.value);
          setTold(false);
        }}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === 'Enter') take();
        }}
      />
      <FieldTrouble id={`${id}-trouble`} words={trouble} />
    </div>
  );
};

/** What the envelope is of: name, number, garment, whom it is drafted for, its unit and its sizes. */
export const WhatPassage = () => {
  const { id, envelope, change } = useEnvelope();
  const set = (part: Partial<Envelope>, name: string) => change((before) => ({ ...before, ...part }), name);
  return (
    <Passage id="what" title={envelopePageWords.titles.what}>
      <ReadField
        label={envelopePageWords.name}
        place={`${id}/name`}
        shown={envelope.name}
        read={readName}
        onCommit={(name) => set({ name }, 'name')}
      />
      <WordsField
        label={words.house}
        value={envelope.house}
        onChange={(house) => set({ house: house.slice(0, 500) }, 'house')}
      />
      <WordsField
        label={words.number}
        value={envelope.number}
        onChange={(number) => set({ number: number.slice(0, 500) }, 'number')}
      />
      <Select
        label={words.kind}
        value={envelope.kind}
        options={(['top', 'dress', 'jacket', 'coat', 'trousers', 'skirt'] as const).map((kind) => ({
          value: kind,
          label: words.kinds[kind],
        }))}
        onChange={(kind) => set({ kind: kind as Envelope['kind'] }, 'kind')}
      />
      <Choice
        legend={words.for}
        name="for"
        inline
        value={envelope.for}
        options={(['women', 'men', 'child'] as const).map((value) => ({ value, label: webWords.patterns.for[value] }))}
        onChange={(value) => set({ for: value }, 'for')}
      />
      <Choice
        legend={words.printedIn}
        name="printed-in"
        inline
        value={envelope.printedIn}
        options={(['inches', 'cm'] as const).map((value) => ({ value, label: words.printed[value] }))}
        onChange={(printedIn) => set({ printedIn }, 'printed in')}
      />
      <p className="hint">{words.printedHint}</p>
      <Sizes />
      <WordsField
        label={words.about}
        hint={words.aboutHint}
        long
        value={envelope.about}
        onChange={(about) => set({ about }, 'about')}
      />
    </Passage>
  );
};
