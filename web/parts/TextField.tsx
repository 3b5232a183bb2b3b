import { type ReactNode, useEffect, useId, useState } from 'react';
import type { Result } from '../../src/units/index.ts';
import { useDraft, useSay } from '../app/settings.tsx';
import { FieldTrouble } from './FieldTrouble.tsx';

interface WordsFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly hint?: ReactNode;
  readonly long?: boolean;
}

/** Words that may be anything. */
export const WordsField = ({ label, value, onChange, hint, long = false }: WordsFieldProps) => {
  const id = useId();
  const shared = {
    id,
    value,
    'aria-describedby': hint ? `${id}-hint` : undefined,
    onChange: (event: { target: { value: string } }) => onChange(event.target.value),
  };
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      {hint && (
        <p className="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      {long ? <textarea {...shared} /> : <input type="text" autoComplete="off" {...shared} />}
    </div>
  );
};

interface ReadFieldProps<Value> {
  readonly label: string;
  readonly place: string;
  /** What the kept value looks like in the field. */
  readonly shown: string;
  readonly read: (text: string) => Result<Value>;
  readonly onCommit: (value: Value) => void;
  readonly hint?: ReactNode;
  readonly narrow?: boolean;
  readonly after?: string;
}

/** Words that must read as something: a name that may not be empty, a date, a weight, a share. */
export const ReadField = <Value,>({
  label,
  place,
  shown,
  read,
  onCommit,
  hint,
  narrow,
  after,
}: ReadFieldProps<Value>) => {
  const say = useSay();
  const [draft, keepDraft] = useDraft(place);
  const [text, setText] = useState<string | null>(draft);
  const [speak, setSpeak] = useState(draft !== null);
  const id = useId();
  const now = text === null ? null : read(text);
  const problem = now && !now.ok ? now.problem : null;

  const unread = problem !== null;
  useEffect(() => {
    if (text === null || !unread) return;
    const timer = window.setTimeout(() => {
      setSpeak(true);
      keepDraft(text);
    }, 600);
    return () => window.clearTimeout(timer);
  }, [text, unread, keepDraft]);

  const type = (typed: string) => {
    setText(typed);
    setSpeak(false);
    const value = read(typed);
    if (!value.ok) return;
    onCommit(value.value);
    if (draft !== null) keepDraft(null);
  };
  const leave = () => {
    if (problem && text !== null) {
      setSpeak(true);
      keepDraft(text);
    } else setText(null);
  };
  const told = speak && problem ? say.problem(problem) : null;
  const described = [hint ? `${id}-hint` : '', told ? `${id}-trouble` : ''].filter(Boolean).join(' ');
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      {hint && (
        <p className="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      <div className={narrow ? 'field-with-unit' : undefined}>
        <input
          id={id}
          type="text"
          autoComplete="off"
          value={text ?? shown}
          aria-invalid={told !== null}
          aria-describedby={described || undefined}
          onChange={(event) => type(event.target.value)}
          onBlur={leave}
        />
        {after && <span>{after}</span>}
      </div>
      <FieldTrouble id={`${id}-trouble`} words={told} />
    </div>
  );
};
