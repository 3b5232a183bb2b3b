import { Fragment, type ReactNode, useCallback, useId, useRef, useState } from 'react';
import { type ChartKind, type EnvelopeDoubt, type Figure, longestFigure } from '../../src/pattern/index.ts';
import { envelopePageWords } from '../../src/words/index.ts';
import { useSay } from '../app/settings.tsx';
import { DoubtWords } from './Doubts.tsx';
import { withFigure, withoutRow } from './edit.ts';
import { useEnvelope } from './envelope-context.ts';
import { FigureCell } from './FigureCell.tsx';
import { readFigure } from './figures.ts';
import { leadToCell, moveAmongCells } from './grid-keys.ts';
import { pastedCells } from './pasted-cells.ts';

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

/** A chart as it is printed, sizes across: every figure is a cell to type in, and what is doubtful is asked under its row. */
export const FigureGrid = ({ chart, rows, purpose, caption }: FigureGridProps) => {
  const say = useSay();
  const { id, envelope, unit, doubts, change, workIn } = useEnvelope();
  const table = useRef<HTMLTableElement>(null);
  const help = useId();
  const [told, setTold] = useState('');
  const { sizes } = envelope;
  const most = longestFigure[chart];

  const commit = useCallback(
    (row: number, column: number, figure: Figure) =>
      change((before) => withFigure(before, chart, row, column, figure), `${chart} ${row} ${column}`),
    [change, chart],
  );
  const paste = useCallback(
    (row: number, column: number, text: string) => {
      const table = { rows: rows.length, columns: sizes.length };
      const pasted = pastedCells(text, { row, column }, table, (cell) => readFigure(cell, unit, purpose, most));
      change(
        (before) =>
          pasted.read.reduce((filled, cell) => withFigure(filled, chart, cell.row, cell.column, cell.figure), before),
        `${chart} paste ${row} ${column}`,
      );
      const tell = (sentence: string, cells: readonly string[]): readonly string[] =>
        cells.length === 0 ? [] : [say.words(sentence, { count: cells.length, cells: cells.slice(0, 8).join(', ') })];
      setTold([...tell(words.someUnread, pasted.unread), ...tell(words.someOutside, pasted.outside)].join('. '));
    },
    [change, chart, rows.length, sizes.length, unit, purpose, most, say],
  );
  const correct = (doubt: EnvelopeDoubt) => leadToCell(table.current, doubt.where.row ?? 0, doubt.where.size ?? 0);
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
                            most={most}
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
