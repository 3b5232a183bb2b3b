import { type FormEvent, useId, useState } from 'react';
import type { Wearer } from '../../src/body/index.ts';
import { type ProblemWords, problemWords, webWords } from '../../src/words/index.ts';
import { useDesk, useDocuments } from '../app/desk-context.ts';
import { newWearer, today } from '../app/documents.ts';
import { goTo, pathTo } from '../app/router.ts';
import { type Say, useSay } from '../app/settings.tsx';
import { Choice } from '../parts/Choice.tsx';
import { Link } from '../parts/Link.tsx';
import { Page, Waiting } from '../parts/Page.tsx';
import { Trouble } from '../parts/Trouble.tsx';
import { useLayFigure } from './useLayFigure.ts';

const words = webWords.wearers;

const lastMeasured = (wearer: Wearer, say: Say): string => {
  const dates = wearer.sets.filter((set) => set.readings.length > 0).map((set) => set.date);
  const last = dates.toSorted().at(-1);
  return last ? say.words(words.measured, { date: say.date(last) }) : words.unmeasured;
};

export const KeepWearer = ({ onKept }: { onKept: (id: string) => void }) => {
  const desk = useDesk();
  const [name, setName] = useState('');
  const [compared, setCompared] = useState<'women' | 'men' | 'neither'>('women');
  const [trouble, setTrouble] = useState<ProblemWords | null>(null);
  const id = useId();
  const keep = async (event: FormEvent) => {
    event.preventDefault();
    if (name.trim() === '') {
      setTrouble({ message: words.nameMissing, remedy: '' });
      return;
    }
    const body = newWearer(name.trim(), compared === 'neither' ? null : compared, today());
    const answer = await desk.create('wearer', body);
    if (answer.kind === 'answer') onKept(answer.value.id);
    else setTrouble(answer.kind === 'refusal' ? answer.words : (problemWords['web.silent'] ?? null));
  };
  return (
    <form onSubmit={(event) => void keep(event)} className="stack" aria-label={words.keep}>
      {trouble && <Trouble words={trouble} />}
      <div className="field">
        <label htmlFor={id}>{words.name}</label>
        <input id={id} type="text" autoComplete="off" value={name} onChange={(event) => setName(event.target.value)} />
      </div>
      <Choice
        legend={words.compared}
        name="compared"
        inline
        value={compared}
        options={[
          { value: 'women', label: words.women },
          { value: 'men', label: words.men },
          { value: 'neither', label: words.neither },
        ]}
        onChange={setCompared}
      />
      <p className="hint">{words.comparedAbout}</p>
      <button type="submit" className="verb">
        {words.keep}
      </button>
    </form>
  );
};

const Wearers = () => {
  const asked = useDocuments<Wearer>('wearer');
  const say = useSay();
  useLayFigure({}, 'women', null);
  return (
    <Page title={words.title}>
      <p>{words.about}</p>
      {asked.state === 'asking' && <Waiting what={webWords.shell.opening} />}
      {asked.state === 'refused' && <Trouble words={asked.words} />}
      {asked.state === 'here' && asked.value.length === 0 && <p>{words.empty}</p>}
      {asked.state === 'here' && asked.value.length > 0 && (
        <ul className="plain-list">
          {asked.value.map(({ id, body }) => (
            <li key={id}>
              <Link to={pathTo('wearer', id)}>{body.name}</Link>
              <p className="note">{lastMeasured(body, say)}</p>
            </li>
          ))}
        </ul>
      )}
      <KeepWearer onKept={(id) => goTo(pathTo('wearer', id))} />
    </Page>
  );
};

export default Wearers;
