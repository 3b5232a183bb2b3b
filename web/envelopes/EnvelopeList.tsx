import { type FormEvent, useId, useState } from 'react';
import { blankEnvelope, type Envelope } from '../../src/pattern/index.ts';
import { envelopePageWords, type ProblemWords, problemWords, webWords } from '../../src/words/index.ts';
import { useDesk, useDocuments } from '../app/desk-context.ts';
import { goTo, pathTo } from '../app/router.ts';
import { useSay, useUnit } from '../app/settings.tsx';
import { Link } from '../parts/Link.tsx';
import { Waiting } from '../parts/Page.tsx';
import { Trouble } from '../parts/Trouble.tsx';
import { sizesKnown } from './edit.ts';

const words = envelopePageWords;

const Line = ({ envelope }: { envelope: Envelope }) => {
  const say = useSay();
  const values = {
    house: envelope.house,
    number: envelope.number,
    first: envelope.sizes[0] ?? '',
    last: envelope.sizes.at(-1) ?? '',
  };
  if (!sizesKnown(envelope)) return <p className="note">{words.listedBare}</p>;
  return <p className="note">{say.words(envelope.house === '' ? words.listedSizes : words.listedLine, values)}</p>;
};

/** Beginning an envelope: its name is enough, everything else is typed in where it is printed. */
const Begin = () => {
  const desk = useDesk();
  const unit = useUnit();
  const id = useId();
  const [name, setName] = useState('');
  const [trouble, setTrouble] = useState<ProblemWords | null>(null);
  const begin = async (event: FormEvent) => {
    event.preventDefault();
    const called = name.trim().slice(0, 200);
    if (called === '') {
      setTrouble(problemWords['web.name-missing'] ?? null);
      return;
    }
    const answer = await desk.create(
      'envelope',
      blankEnvelope({ name: called, printedIn: unit === 'in' ? 'inches' : 'cm' }),
    );
    if (answer.kind === 'answer') goTo(pathTo('envelope', answer.value.id));
    else setTrouble(answer.kind === 'refusal' ? answer.words : (problemWords['web.silent'] ?? null));
  };
  return (
    <form className="add-step" onSubmit={(event) => void begin(event)}>
      {trouble && <Trouble words={trouble} />}
      <div className="field">
        <label htmlFor={id}>{words.name}</label>
        <input id={id} type="text" autoComplete="off" value={name} onChange={(event) => setName(event.target.value)} />
      </div>
      <button type="submit" className="verb">
        {words.beginVerb}
      </button>
    </form>
  );
};

/** Bought patterns known by their envelope, and bringing in another. */
export const EnvelopeList = () => {
  const asked = useDocuments<Envelope>('envelope');
  return (
    <>
      <section className="passage" aria-labelledby="envelopes">
        <h2 id="envelopes">{words.listed}</h2>
        {asked.state === 'asking' && <Waiting what={webWords.shell.opening} />}
        {asked.state === 'refused' && <Trouble words={asked.words} />}
        {asked.state === 'here' && asked.value.length === 0 && <p>{words.none}</p>}
        {asked.state === 'here' && asked.value.length > 0 && (
          <ul className="plain-list">
            {asked.value.map(({ id, body }) => (
              <li key={id}>
                <Link to={pathTo('envelope', id)}>{body.name}</Link>
                {body.about !== '' && <p>{body.about}</p>}
                <Line envelope={body} />
              </li>
            ))}
          </ul>
        )}
      </section>
      <section className="passage" aria-labelledby="begin-envelope">
        <h2 id="begin-envelope">{words.begin}</h2>
        <p className="hint">{words.beginAbout}</p>
        <Begin />
      </section>
    </>
  );
};
