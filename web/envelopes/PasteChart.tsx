import { type ReactNode, useId, useState } from 'react';
import {
  type AskedAnswer,
  type AskedRow,
  type ChartKind,
  type ChartRead,
  type Envelope,
  newlyPlaced,
  placeAsked,
  readChart,
  withChart,
} from '../../src/pattern/index.ts';
import type { Problem, Result } from '../../src/units/index.ts';
import { envelopePageWords, sentence } from '../../src/words/index.ts';
import { locale, useSay } from '../app/settings.tsx';
import { Trouble } from '../parts/Trouble.tsx';
import { sizesKnown } from './edit.ts';
import { useEnvelope } from './envelope-context.ts';
import { usePasted } from './pasted.ts';

const words = envelopePageWords.chart;

const labels = { body: words.pasteBody, finished: words.pasteFinished, cloth: words.pasteCloth } as const;

const optionsFor = (kind: ChartKind, envelope: Envelope) => ({
  kind,
  printedIn: envelope.printedIn,
  ...(sizesKnown(envelope) ? { sizes: envelope.sizes } : {}),
  ...(envelope.views.length > 0 ? { views: envelope.views } : {}),
});

const valueOr = <T,>(result: Result<T>, otherwise: T): T => (result.ok ? result.value : otherwise);

const countRows = (read: ChartRead): number => read.body.length + read.finished.length + read.clothNeeded.length;

interface Outcome {
  readonly read: ChartRead | null;
  readonly problem: Problem | null;
}

interface PasteChartProps {
  readonly chart: ChartKind;
  /** How one row whose words are not known is asked about. */
  readonly ask: (row: AskedRow, answer: (what: AskedAnswer) => void) => ReactNode;
}

/** A whole chart at once, as it is printed: read into the table when it is pasted, and kept in the box either way. */
export const PasteChart = ({ chart, ask }: PasteChartProps) => {
  const say = useSay();
  const { id, envelope, unit, change } = useEnvelope();
  const [text, keep] = usePasted(`${id}/${chart}`);
  const [outcome, setOutcome] = useState<Outcome | null>(null);
  const field = useId();

  /** Puts what was read, or `rows` of it, into the envelope. Rows still asked about wait in the box until they are answered. */
  const put = (read: ChartRead, rows: ChartRead = { ...read, asked: [] }) => {
    const into = withChart(envelope, rows);
    if (into.ok) change((before) => valueOr(withChart(before, rows), before), `${chart} chart`);
    setOutcome({ read: into.ok ? read : null, problem: into.ok ? null : into.problem });
  };
  const take = (written: string) => {
    if (written.trim() === '') {
      setOutcome(null);
      return;
    }
    const read = readChart(written, optionsFor(chart, envelope));
    if (read.ok) put(read.value);
    else setOutcome({ read: null, problem: read.problem });
  };
  const answer = (read: ChartRead, row: number, what: AskedAnswer) => {
    const placed = placeAsked(read, row, what);
    if (placed.ok) put(placed.value, newlyPlaced(read, placed.value));
    else setOutcome({ read, problem: placed.problem });
  };
  const { read = null, problem = null } = outcome ?? {};
  const rows = read ? countRows(read) : 0;
  return (
    <div className="stack paste-chart">
      <div className="field">
        <label htmlFor={field}>{labels[chart]}</label>
        <p className="hint" id={`${field}-hint`}>
          {words.pasteHint}
        </p>
        <textarea
          id={field}
          className="chart-box"
          spellCheck={false}
          wrap="off"
          aria-describedby={`${field}-hint`}
          value={text}
          onChange={(event) => {
            const pasted = (event.nativeEvent as InputEvent).inputType === 'insertFromPaste';
            keep(event.target.value);
            if (pasted) take(event.target.value);
          }}
        />
      </div>
      {text !== '' && (
        <div className="verbs">
          <button type="button" className="verb" onClick={() => take(text)}>
            {outcome ? words.readAgain : words.read}
          </button>
          <button
            type="button"
            className="verb verb-quiet"
            onClick={() => {
              keep('');
              setOutcome(null);
            }}
          >
            {words.empty}
          </button>
        </div>
      )}
      <div aria-live="polite" className="stack">
        {problem && (
          <Trouble words={sentence(problem, unit, locale)}>
            {!read && (
              <p>
                {words.notTaken} {words.keptHere}
              </p>
            )}
          </Trouble>
        )}
        {read && (
          <p>
            {say.words(words.taken, {
              rows: rows === 1 ? words.oneRow : say.words(words.rows, { count: rows }),
              sizes: read.sizes.length,
            })}
          </p>
        )}
        {read?.said.map((said) => {
          const { message, remedy } = sentence(said, unit, locale);
          return (
            <p className="field-trouble" key={`${said.code} ${JSON.stringify(said.values)}`}>
              <strong>{message}</strong> {remedy}
            </p>
          );
        })}
      </div>
      {read && read.asked.length > 0 && (
        <div className="stack asked">
          <p>{words.asked}</p>
          {read.asked.map((row, index) => (
            <div key={`${row.label}/${row.view ?? ''}`}>{ask(row, (what) => answer(read, index, what))}</div>
          ))}
        </div>
      )}
    </div>
  );
};
