import { type FormEvent, useId, useState } from 'react';
import { isSleeveless } from '../../src/pattern/index.ts';
import { envelopePageWords } from '../../src/words/index.ts';
import { useSay } from '../app/settings.tsx';
import { Passage } from '../makes/Passages.tsx';
import { WordsField } from '../parts/TextField.tsx';
import { withoutView, withView } from './edit.ts';
import { useEnvelope } from './envelope-context.ts';

const words = envelopePageWords.views;

/** The letter she would most likely write next. */
const nextLetter = (taken: readonly string[]): string =>
  [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'].find((letter) => !taken.includes(letter)) ?? '';

/** The views: versions of the garment the envelope has charts for. */
export const ViewsPassage = () => {
  const say = useSay();
  const id = useId();
  const { envelope, change } = useEnvelope();
  const [typed, setTyped] = useState<string | null>(null);
  const suggested = nextLetter(envelope.views.map((view) => view.id));
  const called = (typed ?? suggested).trim().slice(0, 60);
  const add = (event: FormEvent) => {
    event.preventDefault();
    if (called === '') return;
    const name = called.length <= 3 ? say.words(words.named, { view: called }) : called;
    change((before) => withView(before, called, name), `view ${called}`);
    setTyped(null);
  };
  return (
    <Passage id="views" title={envelopePageWords.titles.views}>
      <p>{envelope.views.length === 0 ? words.none : words.about}</p>
      {envelope.views.map((view) => (
        <div key={view.id} className="measure">
          <h3>{view.name}</h3>
          <WordsField
            label={say.words(words.describe, { view: view.name })}
            hint={words.describeHint}
            value={view.about}
            onChange={(about) =>
              change(
                (before) => ({
                  ...before,
                  views: before.views.map((one) => (one.id === view.id ? { ...one, about } : one)),
                }),
                `view ${view.id} about`,
              )
            }
          />
          {envelope.kind !== 'trousers' && envelope.kind !== 'skirt' && (
            <label className="check">
              <input
                type="checkbox"
                checked={isSleeveless(envelope, view.id)}
                onChange={(event) => {
                  const sleeves = !event.target.checked;
                  change(
                    (before) => ({
                      ...before,
                      views: before.views.map((one) => (one.id === view.id ? { ...one, sleeves } : one)),
                    }),
                    `view ${view.id} sleeves`,
                  );
                }}
              />
              {words.sleeveless}
            </label>
          )}
          <div className="verbs measure-verbs">
            <button
              type="button"
              className="verb verb-quiet"
              onClick={() => change((before) => withoutView(before, view.id), `view ${view.id} away`)}
            >
              {say.words(words.remove, { view: view.name })}
            </button>
          </div>
        </div>
      ))}
      <form className="add-step" onSubmit={add}>
        <div className="field">
          <label htmlFor={id}>{words.id}</label>
          <input
            id={id}
            type="text"
            autoComplete="off"
            value={typed ?? suggested}
            onChange={(event) => setTyped(event.target.value)}
          />
        </div>
        <button type="submit" className="verb" disabled={called === ''}>
          {words.add}
        </button>
      </form>
    </Passage>
  );
};
