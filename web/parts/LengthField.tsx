import { type ReactNode, useEffect, useId, useRef, useState } from 'react';
import type { Problem, Result } from '../../src/units/index.ts';
import { locale, useDraft, useSay } from '../app/settings.tsx';
import { FieldTrouble } from './FieldTrouble.tsx';
import { type LengthPurpose, plainUnitWords } from './length-words.ts';
import { namesUnit, plainUnit, readTyped, shownLength, withUnit } from './written.ts';

interface LengthFieldProps {
  readonly label: string;
  /** Names the field among all others, for what was typed and does not read yet. */
  readonly place: string;
  readonly mm: number | null;
  /** As it was typed. */
  readonly written?: string | null;
  readonly purpose?: LengthPurpose;
  readonly signed?: boolean;
  readonly hint?: ReactNode;
  /** Refuses a length that reads but cannot be. */
  readonly check?: (mm: number) => Result<number>;
  /** What is said of words that are no length, where more can be said than that. */
  readonly unread?: (typed: string) => Problem | null;
  readonly onCommit: (mm: number | null, written: string | null) => void;
  readonly onFocus?: () => void;
  readonly quietLabel?: boolean;
  readonly children?: ReactNode;
}

/** A pause this long, ms, and what does not read is spoken about; sooner would scold half a word. */
const patience = 600;

/** A length as she types it: kept as typed, read at once, in the unit of the switch or any other she names. */
export const LengthField = (props: LengthFieldProps) => {
  const { label, place, mm, written = null, purpose = 'measure', signed = false, hint, check, onCommit } = props;
  const say = useSay();
  const [draft, keepDraft] = useDraft(place);
  const [text, setText] = useState<string | null>(draft);
  const [speak, setSpeak] = useState(draft !== null);
  const id = useId();

  const read = (typed: string): Result<number> | 'empty' => {
    const length = readTyped(typed, say.unit, purpose, signed);
    if (length !== 'empty' && !length.ok) {
      const instead = props.unread?.(typed);
      return instead ? { ok: false, problem: instead } : length;
    }
    return length !== 'empty' && check ? check(length.value) : length;
  };
  const now = text === null ? null : read(text);
  const problem: Problem | null = now !== null && now !== 'empty' && !now.ok ? now.problem : null;

  // Set anew from elsewhere, by a slider or by undo: what was typed here before no longer stands.
  const [seen, setSeen] = useState(mm);
  const ownChange = useRef(false);
  if (seen !== mm) {
    setSeen(mm);
    if (text !== null && !ownChange.current) {
      setText(null);
      setSpeak(false);
    }
  }
  const stale = text === null && draft !== null;
  useEffect(() => {
    if (stale) keepDraft(null);
  }, [stale, keepDraft]);

  const unread = problem !== null;
  useEffect(() => {
    if (text === null || !unread) return;
    const timer = window.setTimeout(() => {
      setSpeak(true);
      keepDraft(text);
    }, patience);
    return () => window.clearTimeout(timer);
  }, [text, unread, keepDraft]);

  const type = (typed: string) => {
    setText(typed);
    setSpeak(false);
    ownChange.current = true;
    const length = read(typed);
    if (length === 'empty') {
      if (mm !== null) onCommit(null, null);
    } else if (length.ok) onCommit(length.value, withUnit(typed, plainUnit(say.unit, purpose)));
    else return;
    if (draft !== null) keepDraft(null);
  };
  const leave = () => {
    ownChange.current = false;
    if (problem && text !== null) {
      setSpeak(true);
      keepDraft(text);
    } else setText(null);
  };

  const value = text ?? shownLength(mm, written, say.unit, purpose, locale);
  const told = speak && problem ? say.problem(problem) : null;
  const described = [hint ? `${id}-hint` : '', told ? `${id}-trouble` : ''].filter(Boolean).join(' ');
  return (
    <div className="field">
      <label htmlFor={id} className={props.quietLabel ? 'unseen' : undefined}>
        {label}
      </label>
      {hint && (
        <p className="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      <div className="field-with-unit">
        <input
          id={id}
          type="text"
          inputMode="text"
          autoComplete="off"
          spellCheck={false}
          value={value}
          aria-invalid={told !== null}
          aria-describedby={described || undefined}
          onChange={(event) => type(event.target.value)}
          onFocus={props.onFocus}
          onBlur={leave}
        />
        {!namesUnit(value) && <span>{plainUnitWords(plainUnit(say.unit, purpose))}</span>}
        {props.children}
      </div>
      <FieldTrouble id={`${id}-trouble`} words={told} />
    </div>
  );
};
