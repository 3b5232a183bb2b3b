import { type FormEvent, useId, useState } from 'react';
import type { Cloth } from '../../src/cloth/index.ts';
import { type ProblemWords, problemWords, webWords } from '../../src/words/index.ts';
import { useDesk, useDocuments } from '../app/desk-context.ts';
import { newCloth } from '../app/documents.ts';
import { goTo, pathTo } from '../app/router.ts';
import { type Say, useSay } from '../app/settings.tsx';
import { Link } from '../parts/Link.tsx';
import { Page, Waiting } from '../parts/Page.tsx';
import { Trouble } from '../parts/Trouble.tsx';
import { useLaySwatch } from './useLaySwatch.ts';

const words = webWords.cloths;

/** A cloth in a line: how wide, how much of it. */
export const clothLine = (cloth: Cloth, say: Say): string =>
  [
    words.structures[cloth.structure],
    say.words(words.wide, { length: { mm: cloth.width } }),
    cloth.length === null
      ? words.toBuy
      : say.words(words.inHand, { length: say.length(cloth.length, { purpose: 'cloth', round: 'down' }) }),
  ].join(', ');

const sample = newCloth('');

const Cloths = () => {
  const asked = useDocuments<Cloth>('cloth');
  const desk = useDesk();
  const say = useSay();
  const [name, setName] = useState('');
  const [trouble, setTrouble] = useState<ProblemWords | null>(null);
  const id = useId();
  const list = asked.state === 'here' ? asked.value : [];
  useLaySwatch(list[0]?.body ?? sample);
  const keep = async (event: FormEvent) => {
    event.preventDefault();
    if (name.trim() === '') {
      setTrouble({ message: words.nameMissing, remedy: '' });
      return;
    }
    const answer = await desk.create('cloth', newCloth(name.trim()));
    if (answer.kind === 'answer') goTo(pathTo('cloth', answer.value.id));
    else setTrouble(answer.kind === 'refusal' ? answer.words : (problemWords['web.silent'] ?? null));
  };
  return (
    <Page title={words.title}>
      <p>{words.about}</p>
      {asked.state === 'asking' && <Waiting what={webWords.shell.opening} />}
      {asked.state === 'refused' && <Trouble words={asked.words} />}
      {asked.state === 'here' && list.length === 0 && <p>{words.empty}</p>}
      {list.length > 0 && (
        <ul className="plain-list">
          {list.map((cloth) => (
            <li key={cloth.id} className="cloth-line">
              <span className="cloth-chip" style={{ background: cloth.body.colour }} />
              <div>
                <Link to={pathTo('cloth', cloth.id)}>{cloth.body.name}</Link>
                <p className="note">{clothLine(cloth.body, say)}</p>
              </div>
            </li>
          ))}
        </ul>
      )}
      <form onSubmit={(event) => void keep(event)} className="stack" aria-label={words.keep}>
        {trouble && <Trouble words={trouble} />}
        <div className="field">
          <label htmlFor={id}>{words.name}</label>
          <p className="hint" id={`${id}-hint`}>
            {words.nameHint}
          </p>
          <input
            id={id}
            type="text"
            autoComplete="off"
            aria-describedby={`${id}-hint`}
            value={name}
            onChange={(event) => setName(event.target.value)}
          />
        </div>
        <button type="submit" className="verb">
          {words.keep}
        </button>
      </form>
    </Page>
  );
};

export default Cloths;
