import { type ClipboardEvent, memo, useEffect, useId, useState } from 'react';
import type { Figure } from '../../src/pattern/index.ts';
import type { Unit } from '../../src/units/index.ts';
import { envelopePageWords } from '../../src/words/index.ts';
import { useDraft, useSay } from '../app/settings.tsx';
import { readFigure, writeFigure } from './figures.ts';

interface FigureCellProps {
  /** Names the cell among all others, for what was typed and does not read yet. */
  readonly place: string;
  readonly label: string;
  readonly figure: Figure;
  readonly unit: Unit;
  readonly purpose: 'measure' | 'cloth';
  /** The longest figure its chart takes, mm. */
  readonly most: number;
  readonly row: number;
  readonly column: number;
  /** Id of the sentence that doubts this cell. */
  readonly doubt: string | undefined;
  readonly onCommit: (row: number, column: number, figure: Figure) => void;
  /** Several cells were pasted, this one the first. */
  readonly onTable: (row: number, column: number, text: string) => void;
}

/** One cell of a chart, typed as it is printed. What does not read yet stays as typed, and is said. */
export const FigureCell = memo((props: FigureCellProps) => {
  const { place, label, figure, unit, purpose, most, row, column, doubt, onCommit, onTable } = props;
  const say = useSay();
  const id = useId();
  const [draft, keepDraft] = useDraft(place);
  const [text, setText] = useState<string | null>(draft);
  const [seen, setSeen] = useState(figure);
  const [left, setLeft] = useState(true);
  // Set anew from elsewhere, by a paste or by undo: what was typed here before no longer stands.
  if (seen !== figure) {
    setSeen(figure);
    if (left) setText(null);
  }
  const stale = text === null && draft !== null;
  useEffect(() => {
    if (stale) keepDraft(null);
  }, [stale, keepDraft]);

  const read = text === null ? null : readFigure(text, unit, purpose, most);
  const unread = read !== null && !read.ok;
  const told = unread && left ? say.problem(read.problem) : null;

  const type = (typed: string) => {
    setText(typed);
    setLeft(false);
    const now = readFigure(typed, unit, purpose, most);
    if (!now.ok) return;
    onCommit(row, column, now.value);
    if (draft !== null) keepDraft(null);
  };
  const leave = () => {
    setLeft(true);
    if (unread && text !== null) keepDraft(text);
    else setText(null);
  };
  const paste = (event: ClipboardEvent) => {
    const pasted = event.clipboardData.getData('text/plain');
    if (!/[\t\n]/.test(pasted.trim())) return;
    event.preventDefault();
    onTable(row, column, pasted);
  };
  const described = [doubt, told ? `${id}-told` : undefined].filter(Boolean).join(' ');
  return (
    <>
      <input
        type="text"
        inputMode="text"
        autoComplete="off"
        spellCheck={false}
        className={doubt ? 'cell cell-doubtful' : 'cell'}
        aria-label={label}
        aria-invalid={told !== null || undefined}
        aria-describedby={described || undefined}
        data-row={row}
        data-column={column}
        value={text ?? writeFigure(figure, unit, purpose)}
        onChange={(event) => type(event.target.value)}
        onFocus={() => setLeft(true)}
        onBlur={leave}
        onPaste={paste}
      />
      {told && (
        <span className="cell-told" id={`${id}-told`} role="status" title={`${told.message} ${told.remedy}`}>
          {envelopePageWords.chart.unread}
        </span>
      )}
    </>
  );
});
