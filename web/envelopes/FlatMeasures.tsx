import { useEffect, useMemo, useRef, useState } from 'react';
import { envelopeFigures, levelsKnownBy } from '../../src/fit/index.ts';
import {
  type Envelope,
  type FinishedOf,
  type FlatMeasure,
  finishedFromFlat,
  finishedKinds,
} from '../../src/pattern/index.ts';
import { bad, good } from '../../src/units/index.ts';
import { envelopePageWords } from '../../src/words/index.ts';
import { useSay } from '../app/settings.tsx';
import { LengthField } from '../parts/LengthField.tsx';
import { Select } from '../parts/Select.tsx';
import { ReadField, WordsField } from '../parts/TextField.tsx';
import { useEnvelope } from './envelope-context.ts';
import { FlatGuideWords } from './FlatGuide.tsx';
import { type Begun, begunIn, firstPieces, type Measuring, whole } from './flat-pieces.ts';
import { usePasted } from './pasted.ts';
import { finishedName, viewName } from './row-words.ts';
import { ViewSelect } from './ViewSelect.tsx';

const words = envelopePageWords.flat;

const sameMeasure = (a: Pick<FlatMeasure, 'of' | 'view' | 'size'>, b: Pick<FlatMeasure, 'of' | 'view' | 'size'>) =>
  a.of === b.of && a.view === b.view && a.size === b.size;

const withFlat = (envelope: Envelope, flat: FlatMeasure): Envelope => ({
  ...envelope,
  flat: [...envelope.flat.filter((one) => !sameMeasure(one, flat)), flat],
});

const withoutFlat = (envelope: Envelope, flat: FlatMeasure): Envelope => ({
  ...envelope,
  flat: envelope.flat.filter((one) => !sameMeasure(one, flat)),
});

interface PieceFieldsProps {
  readonly place: string;
  readonly number: number;
  readonly piece: Measuring;
  readonly onChange: (part: Partial<Measuring>) => void;
  readonly onRemove: (() => void) | null;
}

const PieceFields = ({ place, number, piece, onChange, onRemove }: PieceFieldsProps) => {
  const say = useSay();
  const called = say.words(words.piece, { number });
  return (
    <fieldset className="measure stack">
      <legend>{called}</legend>
      <WordsField
        label={words.pieceName}
        value={piece.name}
        onChange={(name) => onChange({ name: name.slice(0, 200) })}
      />
      <LengthField
        label={words.flat}
        place={`${place}/flat`}
        purpose="amount"
        mm={piece.flat}
        onCommit={(flat) => onChange({ flat })}
      />
      <LengthField
        label={words.allowances}
        place={`${place}/allowances`}
        purpose="amount"
        mm={piece.allowances}
        onCommit={(allowances) => onChange({ allowances })}
      />
      <LengthField
        label={words.takenOut}
        hint={words.overlap}
        place={`${place}/taken-out`}
        purpose="amount"
        mm={piece.takenOut}
        onCommit={(takenOut) => onChange({ takenOut })}
      />
      <ReadField
        label={words.times}
        hint={words.timesHint}
        narrow
        place={`${place}/times`}
        shown={piece.times === null ? '' : String(piece.times)}
        read={(text) => {
          const times = Number(text.trim());
          return Number.isInteger(times) && times >= 1 && times <= 20 ? good(times) : bad('web.times-not-whole');
        }}
        onCommit={(times) => onChange({ times })}
      />
      {onRemove && (
        <button type="button" className="verb verb-quiet" onClick={onRemove}>
          {words.removePiece}
        </button>
      )}
    </fieldset>
  );
};

interface EditorProps {
  readonly begun: Begun;
  readonly keepDraft: (draft: string) => void;
  readonly onClose: () => void;
}

/** Measuring one finished measurement off the tissue, with the drawing of where the tape goes on the table. */
const Editor = ({ begun, keepDraft, onClose }: EditorProps) => {
  const say = useSay();
  const { id, envelope, change, setMeasuring } = useEnvelope();
  const [of, setOf] = useState(begun.of);
  const [view, setView] = useState(begun.view);
  const [size, setSize] = useState(begun.size);
  const [pieces, setPieces] = useState<readonly Measuring[]>(begun.pieces ?? firstPieces(begun.of, envelope));
  const head = useRef<HTMLHeadingElement>(null);
  const { left = false } = begun;
  useEffect(() => {
    if (!left) head.current?.focus({ preventScroll: true });
  }, [left]);
  useEffect(() => {
    setMeasuring(of);
    return () => setMeasuring(null);
  }, [of, setMeasuring]);
  // What is measured so far stays in this browser, so that leaving the page loses nothing of it.
  useEffect(() => keepDraft(JSON.stringify({ of, view, size, pieces })), [keepDraft, of, view, size, pieces]);
  const done = whole(pieces, (number) => say.words(words.piece, { number }));
  const sum = useMemo(() => (done ? finishedFromFlat({ pieces: done }) : null), [done]);
  const keep = () => {
    if (!done || !sum?.ok) return;
    change((before) => withFlat(before, { of, view, size, pieces: done }), `flat ${of} ${view} ${size}`);
    onClose();
  };
  return (
    <section className="stack flat-editor" aria-label={words.begin}>
      <h4 ref={head} tabIndex={-1}>
        {words.begin}
      </h4>
      <div className="amount-fields">
        <Select
          label={words.what}
          value={of}
          options={finishedKinds
            .filter((kind) => kind !== 'other')
            .map((kind) => ({ value: kind, label: finishedName(kind) }))}
          onChange={(value) => {
            setOf(value as FinishedOf);
            if (pieces.every((piece) => piece.flat === null)) setPieces(firstPieces(value as FinishedOf, envelope));
          }}
        />
        <ViewSelect label={words.view} value={view} onChange={setView} />
        <Select
          label={words.size}
          value={size}
          options={envelope.sizes.map((one) => ({ value: one, label: one }))}
          onChange={setSize}
        />
      </div>
      <FlatGuideWords of={of} />
      {pieces.map((piece, index) => (
        <PieceFields
          // biome-ignore lint/suspicious/noArrayIndexKey: pieces have no name of their own until she gives one.
          key={index}
          place={`${id}/flat/${index}`}
          number={index + 1}
          piece={piece}
          onChange={(part) =>
            setPieces((before) => before.map((one, place) => (place === index ? { ...one, ...part } : one)))
          }
          onRemove={
            pieces.length > 1 ? () => setPieces((before) => before.filter((_, place) => place !== index)) : null
          }
        />
      ))}
      <button
        type="button"
        className="verb verb-quiet"
        onClick={() => setPieces((before) => [...before, ...firstPieces(of, envelope).slice(-1)])}
      >
        {words.addPiece}
      </button>
      <div aria-live="polite">
        {sum?.ok && (
          <p className="verdict">{say.words(words.comes, { length: say.length(sum.value, { purpose: 'amount' }) })}</p>
        )}
        {sum && !sum.ok && (
          <p className="field-trouble">
            <strong>{say.problem(sum.problem).message}</strong> {say.problem(sum.problem).remedy}
          </p>
        )}
      </div>
      <div className="verbs">
        <button type="button" className="verb verb-next" disabled={!sum?.ok} onClick={keep}>
          {words.keep}
        </button>
        <button type="button" className="verb verb-quiet" onClick={onClose}>
          {words.close}
        </button>
      </div>
    </section>
  );
};

/** Finished measurements the fit is judged by that neither the envelope prints nor the tissue has told yet. */
const lackingIn = (envelope: Envelope): readonly FinishedOf[] => {
  const views = envelope.views.length > 0 ? envelope.views.map(({ id }) => id) : [null];
  const lacking = new Set(views.flatMap((view) => envelopeFigures(envelope, view).unknown.map(({ flat }) => flat)));
  return levelsKnownBy(envelope.kind).filter((of) => lacking.has(of));
};

/** What was measured flat on the tissue in place of what the envelope lacks, and measuring more. */
export const FlatMeasures = () => {
  const say = useSay();
  const { id, envelope, change } = useEnvelope();
  const [draft, keepDraft] = usePasted(`${id}/flat`);
  const [begun, setBegun] = useState<Begun | null>(() => begunIn(draft, envelope));
  const lacking = useMemo(() => lackingIn(envelope), [envelope]);
  const middle = envelope.sizes[Math.floor(envelope.sizes.length / 2)] ?? '';
  return (
    <section className="stack">
      <h3>{words.title}</h3>
      <p>{words.about}</p>
      {lacking.length > 0 && (
        <p>{say.words(words.lacking, { what: lacking.map((of) => finishedName(of).toLowerCase()).join(', ') })}</p>
      )}
      {envelope.flat.length > 0 && (
        <ul className="plain-list">
          {envelope.flat.map((flat) => {
            const sum = finishedFromFlat(flat);
            const values = { what: finishedName(flat.of), size: flat.size };
            const length = sum.ok ? say.length(sum.value, { purpose: 'amount' }) : '–';
            return (
              <li key={`${flat.of} ${flat.view} ${flat.size}`}>
                <p>{say.words(words.list, { ...values, length, view: viewName(envelope, flat.view) })}</p>
                <div className="verbs">
                  <button
                    type="button"
                    className="verb verb-quiet"
                    aria-label={say.words(words.changeOf, values)}
                    onClick={() => setBegun(flat)}
                  >
                    {words.change}
                  </button>
                  <button
                    type="button"
                    className="verb verb-quiet"
                    aria-label={say.words(words.removeOf, values)}
                    onClick={() =>
                      change((before) => withoutFlat(before, flat), `flat away ${flat.of} ${flat.view} ${flat.size}`)
                    }
                  >
                    {words.remove}
                  </button>
                </div>
              </li>
            );
          })}
        </ul>
      )}
      {begun ? (
        <Editor
          key={`${begun.of} ${begun.view} ${begun.size} ${begun.pieces ? 'kept' : 'new'}`}
          begun={begun}
          keepDraft={keepDraft}
          onClose={() => {
            keepDraft('');
            setBegun(null);
          }}
        />
      ) : (
        <button
          type="button"
          className="verb"
          onClick={() => setBegun({ of: lacking[0] ?? 'upper-arm', view: null, size: middle })}
        >
          {words.begin}
        </button>
      )}
    </section>
  );
};
