import { useMemo, useState } from 'react';
import { describeMeasure, type MeasureId, measureIds } from '../../src/body/index.ts';
import { finishedGirths, type Pattern, type Size } from '../../src/pattern/index.ts';
import { formatPercent, formatWeight } from '../../src/units/index.ts';
import { webWords } from '../../src/words/index.ts';
import { locale, useSay } from '../app/settings.tsx';
import { Choice } from '../parts/Choice.tsx';
import { drawGarment } from '../parts/draw-garment.ts';
import { Link } from '../parts/Link.tsx';
import { levelName } from '../parts/level-name.ts';
import { Page, Waiting } from '../parts/Page.tsx';
import { Removal } from '../parts/Removal.tsx';
import { Select } from '../parts/Select.tsx';
import { Trouble } from '../parts/Trouble.tsx';
import { type Laid, useLay } from '../parts/table/laid.ts';
import { drawOnePiece, drawSizesNested, sayPieceCut } from './drawings.ts';
import { usePattern } from './pattern-source.ts';

const words = webWords.patterns;

type Shown = 'all' | 'nest' | `piece:${string}`;

const usePatternOnTable = (pattern: Pattern, size: Size, shown: Shown, pick: (id: string) => void) => {
  const say = useSay();
  const laid = useMemo((): Laid => {
    const pieceId = shown.startsWith('piece:') ? shown.slice('piece:'.length) : null;
    const piece = size.garment.pieces.find((one) => one.id === pieceId);
    const name = say.words(words.onTable, { name: pattern.name, size: size.id });
    if (piece) return { drawing: drawOnePiece(piece, size.id, say.unit), subject: `${pattern.id} ${piece.id}` };
    if (shown === 'nest') {
      const label = say.words(words.nestLabel, { name: pattern.name });
      return { drawing: drawSizesNested(pattern, size.id, label, say.unit), subject: `${pattern.id} nest` };
    }
    return {
      drawing: drawGarment(size.garment, name, { unit: say.unit, locale, size: size.id }),
      subject: `${pattern.id} all`,
      onPick: pick,
    };
  }, [pattern, size, shown, say, pick]);
  useLay(laid);
};

const BodyChart = ({ pattern, chosen }: { pattern: Pattern; chosen: string }) => {
  const say = useSay();
  const listed = measureIds.filter((id) => pattern.sizes.some((size) => size.body[id] !== undefined));
  const main = (['bustGirth', 'upperBustGirth', 'waistGirth', 'hipGirth'] as const).filter((id) => listed.includes(id));
  const rest = listed.filter((id) => !(main as readonly MeasureId[]).includes(id));
  const table = (ids: readonly MeasureId[], caption: string) => (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table scrolls by keys.
    <section className="scrolls" tabIndex={0} aria-label={caption}>
      <table>
        <caption>{caption}</caption>
        <thead>
          <tr>
            <th scope="col">{words.size}</th>
            {ids.map((id) => (
              <th scope="col" key={id} className="number">
                {describeMeasure(id).name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {pattern.sizes.map((size) => (
            <tr key={size.id} className={size.id === chosen ? 'chosen' : undefined}>
              <th scope="row">{size.id}</th>
              {ids.map((id) => (
                <td key={id} className="number">
                  {size.body[id] === undefined ? '' : say.length(size.body[id])}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
  return (
    <>
      {table(main.length > 0 ? main : listed, words.chart)}
      {main.length > 0 && rest.length > 0 && (
        <details>
          <summary>{words.chartRest}</summary>
          {table(rest, words.chartRest)}
        </details>
      )}
    </>
  );
};

const Finished = ({ pattern, chosen }: { pattern: Pattern; chosen: string }) => {
  const say = useSay();
  const rows = useMemo(() => pattern.sizes.map((size) => ({ size, girths: finishedGirths(size.garment) })), [pattern]);
  const levels = rows[0]?.girths.map((girth) => girth.level) ?? [];
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table scrolls by keys.
    <section className="scrolls" tabIndex={0} aria-label={words.finishedAbout}>
      <table>
        <caption>{words.finishedAbout}</caption>
        <thead>
          <tr>
            <th scope="col">{words.size}</th>
            {levels.map((level) => (
              <th scope="col" key={level} className="number">
                {levelName(level)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ size, girths }) => (
            <tr key={size.id} className={size.id === chosen ? 'chosen' : undefined}>
              <th scope="row">{size.id}</th>
              {girths.map((girth) => (
                <td key={girth.level} className="number">
                  {say.length(girth.finished)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
};

const Advice = ({ pattern }: { pattern: Pattern }) => {
  const say = useSay();
  const { cloth } = pattern;
  return (
    <dl className="facts">
      <dt>{words.structure}</dt>
      <dd>{webWords.cloths.structures[cloth.structure]}</dd>
      <dt>{words.weight}</dt>
      <dd>
        {say.words(words.weightFromTo, {
          from: formatWeight(cloth.weight[0], say.unit, locale),
          to: formatWeight(cloth.weight[1], say.unit, locale),
        })}
      </dd>
      {cloth.stretch > 0 && (
        <>
          <dt>{words.stretch}</dt>
          <dd>{say.words(words.stretchLeast, { share: formatPercent(cloth.stretch, locale) })}</dd>
        </>
      )}
      <dt>{words.suits}</dt>
      <dd>{cloth.cloths.join(', ')}</dd>
      {pattern.notions.length > 0 && (
        <>
          <dt>{words.notions}</dt>
          <dd>{pattern.notions.join(', ')}</dd>
        </>
      )}
    </dl>
  );
};

const Opened = ({ id, pattern }: { id: string; pattern: Pattern }) => {
  const say = useSay();
  const middle = pattern.sizes[Math.floor((pattern.sizes.length - 1) / 2)];
  const [sizeId, setSizeId] = useState(middle?.id ?? '');
  const [shown, setShown] = useState<Shown>('all');
  const size = pattern.sizes.find((one) => one.id === sizeId) ?? middle;
  const pick = useMemo(() => (piece: string) => setShown(`piece:${piece}`), []);
  if (!size) throw new Error(`the pattern ${id} has no size`);
  usePatternOnTable(pattern, size, shown, pick);
  return (
    <Page title={pattern.name}>
      <p>{pattern.about}</p>
      <div className="verbs">
        <Link to={`/makes/new?pattern=${encodeURIComponent(id)}`} className="verb verb-next">
          {words.makeOf}
        </Link>
      </div>
      <section className="passage" aria-labelledby="pieces">
        <h2 id="pieces">{words.pieces}</h2>
        <Select
          label={words.size}
          value={size.id}
          options={pattern.sizes.map((one) => ({ value: one.id, label: one.id }))}
          onChange={setSizeId}
        />
        <Choice<Shown>
          legend={words.show}
          name="shown"
          value={shown}
          options={[
            { value: 'all', label: words.showAll },
            { value: 'nest', label: words.showNest },
            ...size.garment.pieces.map((piece) => ({
              value: `piece:${piece.id}` as const,
              label: piece.name,
              note: sayPieceCut(piece, say.unit),
            })),
          ]}
          onChange={setShown}
        />
      </section>
      <section className="passage" aria-labelledby="chart">
        <h2 id="chart">{words.chartHead}</h2>
        <BodyChart pattern={pattern} chosen={size.id} />
      </section>
      <section className="passage" aria-labelledby="finished">
        <h2 id="finished">{words.finished}</h2>
        <Finished pattern={pattern} chosen={size.id} />
      </section>
      <section className="passage" aria-labelledby="cloth">
        <h2 id="cloth">{words.advice}</h2>
        <Advice pattern={pattern} />
      </section>
      {!id.startsWith('house:') && <Removal id={id} name={pattern.name} verb={words.remove} back="/patterns" />}
    </Page>
  );
};

const PatternPage = ({ id }: { id: string }) => {
  const asked = usePattern(id);
  if (asked.state === 'asking') return <Waiting what={webWords.shell.opening} />;
  if (asked.state === 'refused') return <Trouble words={asked.words} />;
  return <Opened id={id} pattern={asked.value} />;
};

export default PatternPage;
