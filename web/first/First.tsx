import { useState } from 'react';
import { type ProblemWords, problemWords, webWords } from '../../src/words/index.ts';
import { useDesk } from '../app/desk-context.ts';
import type { Workroom } from '../app/workroom.ts';
import { Page, Waiting } from '../parts/Page.tsx';
import { Trouble } from '../parts/Trouble.tsx';
import { Table } from '../parts/table/Table.tsx';
import { useLayHousePieces } from '../patterns/useLayHousePieces.ts';

const words = webWords.first;

/** The first page of a new workroom: two ways to begin. */
const First = ({ onStarted }: { onStarted: (workroom: Workroom) => void }) => {
  const desk = useDesk();
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<ProblemWords | null>(null);
  useLayHousePieces('first');

  const start = async (choice: 'demo' | 'own') => {
    setBusy(true);
    setTrouble(null);
    const begun = await desk.ask<unknown>('POST', '/api/workroom/start', { choice });
    const answer = begun.kind === 'answer' ? await desk.ask<Workroom>('GET', '/api/workroom') : begun;
    setBusy(false);
    if (answer.kind === 'answer') onStarted(answer.value as Workroom);
    else setTrouble(answer.kind === 'refusal' ? answer.words : (problemWords['web.silent'] ?? null));
  };

  return (
    <>
      <Table unit="cm" />
      <main id="words" className="words">
        <Page title={words.title} above={<p className="head-name">{webWords.name}</p>}>
          <p>{words.about}</p>
          <p>{words.private}</p>
          {trouble && <Trouble words={trouble} />}
          <div className="first-way">
            <button type="button" className="verb verb-next" disabled={busy} onClick={() => void start('demo')}>
              {words.demo}
            </button>
            <p className="hint">{words.demoAbout}</p>
          </div>
          <div className="first-way">
            <button type="button" className="verb" disabled={busy} onClick={() => void start('own')}>
              {words.own}
            </button>
            <p className="hint">{words.ownAbout}</p>
          </div>
          {busy && <Waiting what={words.starting} />}
        </Page>
      </main>
    </>
  );
};

export default First;
