import { Fragment, type ReactNode, useCallback, useId, useRef, useState } from 'react';
import type { ChartKind, EnvelopeDoubt, Figure } from '../../src/pattern/index.ts';
import { envelopePageWords } from '../../src/words/index.ts';
import { useSay } from '../app/settings.tsx';
import { DoubtWords } from './Doubts.tsx';
import { withFigure, withoutRow } from './edit.ts';
import { useEnvelope } from './envelope-context.ts';
import { FigureCell } from './FigureCell.tsx';
import { readFigure } from './figures.ts';
import { goToCell, moveAmongCells } from './grid-keys.ts';

const words = envelopePageWords.chart;

export interface GridRow {
  /** Names the row among the chart's. */
  readonly key: string;
  readonly name: string;
  readonly note?: ReactNode;
  readonly figures: readonly Figure[];
}

interface FigureGridProps {
  readonly chart: ChartKind;
  readonly rows: readonly GridRow[];
  readonly purpose: 'measure' | 'cloth';
  readonly caption: string;
}

/** What was pasted, as cells: a line a row, a tab a cell. */
const cellsIn = (text: string): readonly (readonly string[])[] =>
  text
    .replace(/\s+$/, '')
    .split(/\r?\n/)
    .map((line) => line.split('\t'));

/** A chart as it is printed, sizes across: every figure is a cell to type in, and what is doubtful is asked under its row. */
export const FigureGrid = ({ chart, rows, purpose, caption }: FigureGridProps) => {
  const say = useSay();
  const { id, envelope, unit, doubts, change, workIn } = useEnvelope();
  const table = useRef<HTMLTableElement>(null);
  const help = useId();
  const [told, setTold] = useState('');
  const { sizes } = envelope;

  const commit = useCallback(
    (row: number, column: number, figure: Figure) =>
      change((before) => withFigure(before, chart, row, column, figure), `${chart} ${row} ${column}`),
    [change, chart],
  );
  const paste = useCallback(
    (row: number, column: number, text: string) => {
      const unread: string[] = [];
      const read = cellsIn(text).flatMap((line, down) =>
        line.flatMap((cell, across) => {
          const figure = readFigure(cell, unit, purpose);
          if (!figure.ok) unread.push(cell.trim());
          return figure.ok ? [{ row: row + down, column: column + across, figure: figure.value }] : [];
        }),
      );
      change(
        (before) =>
          read.reduce((filled, cell) => withFigure(filled, chart, cell.row, cell.column, cell.figure), before),
        `${chart} paste ${row} ${column}`,
      );
      setTold(
        unread.length === 0
          ? ''
          : say.words(words.someUnread, { count: unread.length, cells: unread.slice(0, 8).join(', ') }),
      );
    },
    [change, chart, unit, purpose, say],
  );
  const correct = (doubt: EnvelopeDoubt) => goToCell(table.current, doubt.where.row ?? 0, doubt.where.size ?? 0);
  const doubtId = (doubt: EnvelopeDoubt) => `${help}-${doubt.id.replace(/[^a-z0-9]+/gi, '-')}`;

  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table scrolls by keys. */}
      <section className="scrolls" tabIndex={0} aria-label={caption}>
        <table className="grid" ref={table} aria-describedby={help}>
          <caption>{caption}</caption>
          <thead>
            <tr>
              <th scope="col" className="grid-head">
                {words.row}
              </th>
              {sizes.map((size) => (
                <th scope="col" key={size}>
                  {size}
                </th>
              ))}
              <th scope="col">
                <span className="unseen">{words.removeRow}</span>
              </th>
            </tr>
          </thead>
          <tbody onKeyDown={moveAmongCells}>
            {rows.map((row, index) => {
              const here = doubts.filter(({ where }) => where.chart === chart && where.row === index);
              return (
                <Fragment key={row.key}>
                  <tr className={here.length > 0 ? 'has-doubt' : undefined} onFocus={() => workIn(chart, index)}>
                    <th scope="row" className="grid-head">
                      {row.name}
                      {row.note}
                    </th>
                    {sizes.map((size, column) => {
                      const doubt = here.find(({ where }) => where.size === column || where.size === null);
                      return (
                        <td key={size}>
                          <FigureCell
                            place={`${id}/${chart}/${row.key}/${size}`}
                            label={say.words(words.cell, { row: row.name, size })}
                            figure={row.figures[column] ?? null}
                            unit={unit}
                            purpose={purpose}
                            row={index}
                            column={column}
                            doubt={doubt ? doubtId(doubt) : undefined}
                            onCommit={commit}
                            onTable={paste}
                          />
                        </td>
                      );
                    })}
                    <td>
                      <button
                        type="button"
                        className="verb verb-quiet"
                        aria-label={say.words(words.removeRowOf, { row: row.name })}
                        onClick={() =>
                          change((before) => withoutRow(before, chart, index), `${chart} remove ${row.key}`)
                        }
                      >
                        {words.removeRow}
                      </button>
                    </td>
                  </tr>
                  {here.length > 0 && (
                    <tr className="doubt-row">
                      <td colSpan={sizes.length + 2}>
                        {here.map((doubt) => (
                          <DoubtWords
                            key={doubt.id}
                            id={doubtId(doubt)}
                            doubt={doubt}
                            where={row.name}
                            onCorrect={() => correct(doubt)}
                          />
                        ))}
                      </td>
                    </tr>
                  )}
                </Fragment>
              );
            })}
          </tbody>
        </table>
      </section>
      <p className="hint" id={help}>
        {words.keys} {words.gaps}
      </p>
      <div aria-live="polite">{told !== '' && <p className="field-trouble">{told}</p>}</div>
    </>
  );
};
