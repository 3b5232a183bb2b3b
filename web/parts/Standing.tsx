import { useEffect } from 'react';
import { webWords } from '../../src/words/index.ts';
import { useDesk } from '../app/desk-context.ts';
import { useSay } from '../app/settings.tsx';
import { differences } from '../documents/differences.ts';
import type { Entry } from '../documents/entry.ts';
import { sayDifferences } from './difference-words.ts';
import { Trouble } from './Trouble.tsx';

const words = webWords.saving;

/** Both versions of a document that was also changed elsewhere, and the choice between them. */
const Conflict = ({ entry }: { entry: Entry }) => {
  const desk = useDesk();
  const say = useSay();
  if (!entry.theirs) return null;
  const called = (id: string) => desk.entry<{ readonly name: string }>(id)?.body.name ?? id.replace(/^house:/, '');
  const rows = sayDifferences(differences(entry.body, entry.theirs.body), say, called);
  return (
    <section className="trouble" role="alert" aria-label={words.conflict}>
      <h2>{words.conflict}</h2>
      <p>{words.conflictAbout}</p>
      <div className="scrolls">
        <table>
          <thead>
            <tr>
              <th scope="col">{words.differs}</th>
              <th scope="col">{say.words(words.mine)}</th>
              <th scope="col">{say.words(words.theirs, { time: say.time(entry.theirs.updatedAt) })}</th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <tr key={row.what}>
                <th scope="row">{row.what}</th>
                <td>{row.mine}</td>
                <td>{row.theirs}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <div className="verbs">
        <button type="button" className="verb" onClick={() => desk.settle(entry.id, 'mine')}>
          {words.keepMine}
        </button>
        <button type="button" className="verb" onClick={() => desk.settle(entry.id, 'theirs')}>
          {words.takeTheirs}
        </button>
      </div>
    </section>
  );
};

const typing = (target: EventTarget | null) =>
  target instanceof HTMLElement && target.closest('input[type="text"], textarea') !== null;

const troubleId = (id: string) => `trouble-${id}`;

/** What went wrong stands at the head of the page; the strip that tells of it is in sight wherever she is. */
const seeTrouble = (id: string) => {
  const trouble = document.getElementById(troubleId(id));
  trouble?.scrollIntoView({ block: 'center' });
  trouble?.focus({ preventScroll: true });
};

/** How a document stands, and taking back what was done to it. */
export const Standing = ({ entry }: { entry: Entry }) => {
  const desk = useDesk();
  const say = useSay();
  useEffect(() => {
    const key = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== 'z' || typing(event.target)) return;
      event.preventDefault();
      if (event.shiftKey) desk.redo(entry.id);
      else desk.undo(entry.id);
    };
    window.addEventListener('keydown', key);
    return () => window.removeEventListener('keydown', key);
  }, [desk, entry.id]);

  const calm = entry.standing === 'saved' || entry.standing === 'waiting' || entry.standing === 'saving';
  return (
    <>
      <div className={calm ? 'strip strip-calm' : 'strip'}>
        <div className="verbs">
          <p className="standing" role={calm ? undefined : 'status'}>
            {entry.standing === 'saved' && say.words(words.saved, { time: say.time(entry.savedAt) })}
            {(entry.standing === 'waiting' || entry.standing === 'saving') && words.waiting}
            {entry.standing === 'unreachable' && words.unreachable}
            {entry.standing === 'refused' && words.refused}
            {entry.standing === 'conflict' && words.conflict}
          </p>
          {entry.standing === 'conflict' && (
            <button type="button" className="verb verb-quiet" onClick={() => seeTrouble(entry.id)}>
              {words.seeBoth}
            </button>
          )}
          {entry.standing === 'refused' && (
            <button type="button" className="verb verb-quiet" onClick={() => seeTrouble(entry.id)}>
              {words.seeWhy}
            </button>
          )}
          <button
            type="button"
            className="verb verb-quiet"
            disabled={entry.before.length === 0}
            onClick={() => desk.undo(entry.id)}
          >
            {words.undo}
          </button>
          <button
            type="button"
            className="verb verb-quiet"
            disabled={entry.after.length === 0}
            onClick={() => desk.redo(entry.id)}
          >
            {words.redo}
          </button>
        </div>
      </div>
      <div id={troubleId(entry.id)} tabIndex={-1} className="standing-trouble">
        {entry.standing === 'refused' && entry.refusal && (
          <Trouble words={{ message: `${words.refused} ${entry.refusal.message}`, remedy: entry.refusal.remedy }}>
            <button type="button" className="verb" onClick={() => desk.again(entry.id)}>
              {words.again}
            </button>
          </Trouble>
        )}
        {entry.standing === 'conflict' && <Conflict entry={entry} />}
      </div>
    </>
  );
};
