import type { ClothAnswer } from '../../src/lay/index.ts';
import type { Pattern, Size } from '../../src/pattern/index.ts';
import { formatLength } from '../../src/units/index.ts';
import { problemWords, webHouseWords as words } from '../../src/words/index.ts';
import { locale, useSay } from '../app/settings.tsx';
import { Trouble } from '../parts/Trouble.tsx';
import { useClothTable } from './useClothTable.ts';

const layers = ['shell', 'lining', 'interfacing'] as const;

/** One layer's rows: a width, and what to buy of it either way up and all one way. */
const LayerTable = ({ layer, rows }: { layer: (typeof layers)[number]; rows: readonly ClothAnswer[] }) => {
  const say = useSay();
  const widths = [...new Set(rows.map((row) => row.width))];
  const ways = [false, true].filter((oneWay) => rows.some((row) => row.oneWay === oneWay));
  const caption = say.words(words.clothCaption, { layer: words.layer[layer].toLowerCase() });
  const cell = (row: ClothAnswer | undefined): string => {
    if (!row) return '';
    if (row.length === null || row.toBuyMetric === null || row.toBuyYards === null) {
      return row.refused === 'lay.wider-than-cloth' ? words.tooNarrow : words.noPlan;
    }
    return formatLength(say.unit === 'cm' ? row.toBuyMetric : row.toBuyYards, say.unit, { locale, purpose: 'cloth' });
  };
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table scrolls by keys.
    <section className="scrolls" tabIndex={0} aria-label={caption}>
      <table>
        <caption>{caption}</caption>
        <thead>
          <tr>
            <th scope="col">{words.width}</th>
            {ways.map((oneWay) => (
              <th scope="col" key={String(oneWay)} className="number">
                {oneWay ? words.withNap : words.eitherWay}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {widths.map((width) => (
            <tr key={width}>
              <th scope="row">{say.length(width)}</th>
              {ways.map((oneWay) => (
                <td key={String(oneWay)} className="number">
                  {cell(rows.find((row) => row.width === width && row.oneWay === oneWay))}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
};

/** What to buy for one size on every usual width, laid out when asked for. */
export const ClothNeeded = ({ pattern, size }: { pattern: Pattern; size: Size }) => {
  const say = useSay();
  const { table, start, stop } = useClothTable(pattern, size, say.unit);
  const broken = problemWords['web.worker-broken'];
  return (
    <>
      <p className="hint">{say.words(words.clothAbout, { size: size.id })}</p>
      {table.state === 'broken' && broken && <Trouble words={broken} />}
      {table.state === 'idle' && (
        <button type="button" className="verb" onClick={start}>
          {words.clothWork}
        </button>
      )}
      {table.state === 'working' && (
        <div className="verbs">
          <p role="status">{say.words(words.clothWorking, { done: table.rows.length, all: table.all })}</p>
          <progress value={table.rows.length} max={table.all} aria-label={words.cloth} />
          <button type="button" className="verb" onClick={stop}>
            {words.clothStop}
          </button>
        </div>
      )}
      {layers.map((layer) => {
        const rows = table.rows.filter((row) => row.layer === layer);
        return rows.length === 0 ? null : <LayerTable key={layer} layer={layer} rows={rows} />;
      })}
      {table.rows.length > 0 && pattern.cloth.structure === 'knit' && <p className="note">{words.allOneWayAlways}</p>}
    </>
  );
};
