import { useEffect, useId, useState } from 'react';
import { envelopePageWords, type ProblemWords, problemWords } from '../../src/words/index.ts';
import { useDesk } from '../app/desk-context.ts';
import { useSay } from '../app/settings.tsx';
import { Passage } from '../makes/Passages.tsx';
import { Waiting } from '../parts/Page.tsx';
import { Trouble } from '../parts/Trouble.tsx';
import { useEnvelope } from './envelope-context.ts';
import { photographAddress } from './photograph.ts';

const words = envelopePageWords.photographs;

/** One photograph. Where undo brings back one that was taken away, the workroom is asked to put it back too. */
const Kept = ({ photograph, number }: { photograph: string; number: number }) => {
  const desk = useDesk();
  const say = useSay();
  const { envelope, change, showPhotograph } = useEnvelope();
  const [tries, setTries] = useState(0);
  const restore = async () => {
    if (tries > 0) return;
    const answer = await desk.ask('POST', `${photographAddress(photograph)}/restore`);
    if (answer.kind === 'answer') setTries(1);
  };
  const remove = () => {
    change(
      (before) => ({ ...before, photographs: before.photographs.filter((id) => id !== photograph) }),
      `photograph ${photograph} away`,
    );
    // Only marked as deleted there; it is put back when undo names it again.
    void desk.ask('DELETE', photographAddress(photograph));
  };
  return (
    <li className="photograph-kept">
      <img
        key={tries}
        src={photographAddress(photograph)}
        alt={say.words(words.alt, { number, name: envelope.name })}
        onError={() => void restore()}
      />
      <div className="verbs">
        <button
          type="button"
          className="verb verb-quiet"
          aria-label={say.words(words.layOf, { number })}
          onClick={() => showPhotograph(photograph)}
        >
          {words.lay}
        </button>
        <button
          type="button"
          className="verb verb-quiet"
          aria-label={say.words(words.removeOf, { number })}
          onClick={remove}
        >
          {words.remove}
        </button>
      </div>
    </li>
  );
};

/** Photographs of the envelope, and bringing in another. */
export const PhotographsPassage = () => {
  const desk = useDesk();
  const say = useSay();
  const id = useId();
  const { envelope, change, showPhotograph } = useEnvelope();
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<ProblemWords | null>(null);
  useEffect(() => () => showPhotograph(null), [showPhotograph]);

  const bring = async (file: File | undefined) => {
    if (!file) return;
    setTrouble(null);
    setBusy(true);
    // Read whole before it is sent, so that a file that cannot be read is told from a workroom that does not answer.
    const picture = await file.arrayBuffer().then(
      (bytes) => new Blob([bytes], { type: file.type }),
      () => null,
    );
    const answer = picture && (await desk.ask<{ readonly id: string }>('POST', '/api/photographs', picture));
    setBusy(false);
    if (!answer) setTrouble(say.problem({ code: 'web.picture-not-read' }));
    else if (answer.kind === 'answer') {
      change(
        (before) => ({ ...before, photographs: [...before.photographs, answer.value.id] }),
        `photograph ${answer.value.id}`,
      );
      showPhotograph(answer.value.id);
    } else setTrouble(answer.kind === 'refusal' ? answer.words : (problemWords['web.silent'] ?? null));
  };
  return (
    <Passage id="photographs" title={envelopePageWords.titles.photographs}>
      <p>{words.about}</p>
      {trouble && <Trouble words={trouble} />}
      {envelope.photographs.length === 0 ? (
        <p>{words.none}</p>
      ) : (
        <ul className="photographs">
          {envelope.photographs.map((photograph, index) => (
            <Kept key={photograph} photograph={photograph} number={index + 1} />
          ))}
        </ul>
      )}
      <div className="field">
        <label htmlFor={id}>{words.choose}</label>
        <p className="hint" id={`${id}-hint`}>
          {words.chooseHint}
        </p>
        <input
          id={id}
          type="file"
          accept="image/jpeg,image/png,image/webp,.heic,.heif"
          aria-describedby={`${id}-hint`}
          disabled={busy}
          onChange={(event) => {
            void bring(event.target.files?.[0]);
            event.target.value = '';
          }}
        />
      </div>
      {busy && <Waiting what={words.keeping} />}
    </Passage>
  );
};
