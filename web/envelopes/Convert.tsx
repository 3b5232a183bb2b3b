import { useEffect, useId, useMemo, useState } from 'react';
import { type Cloth, type ClothLaid, convertCloth } from '../../src/cloth/index.ts';
import type { ClothRow, Envelope } from '../../src/pattern/index.ts';
import { formatLength, lengthToBuy, type Problem, parsePercent, type Result } from '../../src/units/index.ts';
import { clothWords, envelopePageWords } from '../../src/words/index.ts';
import { useDocuments } from '../app/desk-context.ts';
import { locale, useSay } from '../app/settings.tsx';
import { Choice } from '../parts/Choice.tsx';
import { LengthField } from '../parts/LengthField.tsx';
import { Select } from '../parts/Select.tsx';
import { Trouble } from '../parts/Trouble.tsx';
import type { ReckonedCloth } from './cloth-picture.ts';
import { clothSaid } from './cloth-said.ts';
import { sayClothRow, widthAsPrinted } from './row-words.ts';

const words = envelopePageWords.convert;

/** Rows that say how much of the cloth itself a size takes in a view; those of the view outrank those of all. */
const rowsFor = (envelope: Envelope, view: string | null, size: number): readonly ClothRow[] => {
  const known = envelope.clothNeeded.filter((row) => (row.figures[size] ?? null) !== null);
  const own = known.filter((row) => row.view === view);
  return [...own, ...known.filter((row) => row.view === null && view !== null)];
};

interface ConvertProps {
  readonly envelope: Envelope;
  /** Names its fields among all others. */
  readonly place: string;
  /** What a make has settled already. */
  readonly view?: string | null;
  readonly size?: string;
  readonly cloth?: Cloth | null;
  /** Told what was reckoned, so that it can be drawn; null where nothing was. */
  readonly onReckoned?: (reckoned: ReckonedCloth | null) => void;
}

/** Cloth nobody has chosen yet. */
const plainColour = '#d9ddd8';

const wide = (unit: 'cm' | 'in'): number => (unit === 'cm' ? 1400 : 54 * 25.4);

/** Cloth needed as printed, turned into another width, way of laying, nap and shrinkage: an estimate, and how it is reckoned. */
export const Convert = ({
  envelope,
  place,
  view: settledView,
  size: settledSize,
  cloth: settledCloth,
  onReckoned,
}: ConvertProps) => {
  const say = useSay();
  const id = useId();
  const cloths = useDocuments<Cloth>('cloth');
  const [chosenView, setView] = useState<string | null>(envelope.views[0]?.id ?? null);
  const [chosenSize, setSize] = useState(envelope.sizes[Math.floor(envelope.sizes.length / 2)] ?? '');
  const [chosenRow, setRow] = useState(0);
  const [clothId, setCloth] = useState('');
  const [typedWidth, setWidth] = useState<number | null>(null);
  const [oneWay, setOneWay] = useState<boolean | null>(null);
  const [laid, setLaid] = useState<ClothLaid>('lengthwise');
  const [shrinks, setShrinks] = useState('');

  const view = settledView === undefined ? chosenView : settledView;
  const size = settledSize ?? chosenSize;
  const rows = rowsFor(envelope, view, envelope.sizes.indexOf(size));
  const row = rows[Math.min(chosenRow, rows.length - 1)];
  const listed = cloths.state === 'here' ? cloths.value : [];
  const cloth = settledCloth ?? listed.find((one) => one.id === clothId)?.body ?? null;
  const width = cloth?.width ?? typedWidth ?? wide(say.unit);
  const nap = oneWay ?? cloth?.oneWay ?? false;
  const percent = shrinks.trim() === '' ? null : parsePercent(shrinks);
  const needed = row?.figures[envelope.sizes.indexOf(size)] ?? null;

  const converted = useMemo(() => {
    if (!row || needed === null) return null;
    const shrinkage = percent?.ok
      ? { shrinkage: { along: percent.value, across: cloth?.shrinkAcross ?? 0 } }
      : cloth && (cloth.shrinkAlong > 0 || cloth.shrinkAcross > 0)
        ? { shrinkage: { along: cloth.shrinkAlong, across: cloth.shrinkAcross } }
        : {};
    return convertCloth({
      needed,
      fromWidth: row.width,
      toWidth: width,
      nap: { from: row.nap, to: nap ? 'with' : 'without' },
      layout: { from: 'lengthwise', to: laid },
      ...shrinkage,
      cloth: cloth ?? { structure: envelope.cloth.structure, fibres: envelope.cloth.cloths.join(' ') },
      washed: cloth?.washed ?? false,
      unit: say.unit,
    });
  }, [row, needed, width, nap, laid, percent, cloth, envelope, say.unit]);

  const buy = converted?.ok ? converted.value.buy : null;
  const against = clothSaid({ envelope, view, size, width, laid, buy, inHand: cloth?.length ?? null });
  const name = cloth?.name ?? '';
  const colour = cloth?.colour ?? plainColour;
  useEffect(() => {
    onReckoned?.(buy === null ? null : { name, width, buy, colour, unit: say.unit });
  }, [onReckoned, buy, name, width, colour, say.unit]);

  const both = (mm: number, length: number) =>
    say.words(words.estimateBoth, {
      length: say.length(length, { purpose: 'cloth', round: 'up' }),
      metres: formatLength(lengthToBuy(mm, 'cm'), 'cm', { purpose: 'cloth', locale }),
      yards: formatLength(lengthToBuy(mm, 'in'), 'in', { purpose: 'cloth', locale }),
    });
  const rowLabel = (one: ClothRow): string => {
    const figure = one.figures[envelope.sizes.indexOf(size)] ?? null;
    const most = typeof figure === 'number' ? figure : (figure?.[1] ?? 0);
    const layer = one.layer === 'shell' ? '' : `, ${envelopePageWords.chart.layersShort[one.layer]}`;
    const napSaid = one.layer === 'shell' ? `, ${envelopePageWords.chart.napsShort[one.nap]}` : '';
    return `${say.words(words.fromRow, {
      length: formatLength(most, envelope.printedIn === 'inches' ? 'in' : 'cm', { purpose: 'cloth', locale }),
      width: widthAsPrinted(envelope, one.width),
    })}${layer}${napSaid}`;
  };
  return (
    <section className="stack convert" aria-labelledby={`${id}-head`}>
      <h3 id={`${id}-head`}>{words.title}</h3>
      <p>{words.about}</p>
      <div className="amount-fields">
        {settledView === undefined && envelope.views.length > 0 && (
          <Select
            label={words.view}
            value={view ?? ''}
            options={[
              ...envelope.views.map((one) => ({ value: one.id, label: one.name })),
              { value: '', label: envelopePageWords.views.all },
            ]}
            onChange={(value) => setView(value === '' ? null : value)}
          />
        )}
        {settledSize === undefined && (
          <Select
            label={words.size}
            value={size}
            options={envelope.sizes.map((one) => ({ value: one, label: one }))}
            onChange={setSize}
          />
        )}
      </div>
      {!row && <p>{words.noRow}</p>}
      {row && (
        <>
          <Select
            label={words.from}
            value={String(rows.indexOf(row))}
            options={rows.map((one, index) => ({ value: String(index), label: rowLabel(one) }))}
            onChange={(value) => setRow(Number(value))}
          />
          {settledCloth === undefined || settledCloth === null ? (
            <Select
              label={words.to}
              value={clothId}
              options={[
                { value: '', label: words.own },
                ...listed.map((one) => ({ value: one.id, label: one.body.name })),
              ]}
              onChange={(value) => {
                setCloth(value);
                setOneWay(null);
              }}
            />
          ) : null}
          {cloth === null && (
            <LengthField
              label={words.toWidth}
              place={`${place}/convert-width`}
              mm={width}
              onCommit={(mm) => mm !== null && setWidth(mm)}
            />
          )}
          <label className="check">
            <input type="checkbox" checked={nap} onChange={(event) => setOneWay(event.target.checked)} />
            {words.nap}
          </label>
          <Choice<ClothLaid>
            legend={words.fold}
            name="laid"
            inline
            value={laid}
            options={(['lengthwise', 'single'] as const).map((value) => ({ value, label: words.folds[value] }))}
            onChange={setLaid}
          />
          {!(cloth?.washed ?? false) && (
            <div className="field">
              <label htmlFor={`${id}-shrinks`}>{words.shrinks}</label>
              <p className="hint" id={`${id}-shrinks-hint`}>
                {words.shrinksHint}
              </p>
              <div className="field-with-unit">
                <input
                  id={`${id}-shrinks`}
                  type="text"
                  autoComplete="off"
                  aria-describedby={`${id}-shrinks-hint`}
                  value={shrinks}
                  onChange={(event) => setShrinks(event.target.value)}
                />
                <span>%</span>
              </div>
              {percent && !percent.ok && <Said result={percent} />}
            </div>
          )}
          {converted && !converted.ok && <Trouble words={say.problem(converted.problem)} />}
          {converted?.ok && (
            <div className="stack" aria-live="polite">
              <p className="verdict">
                {say.words(words.estimate, { buy: say.length(converted.value.buy, { purpose: 'cloth' }) })}{' '}
                {say.words(words.of, { width: say.length(width) })}
              </p>
              <p className="note">{both(converted.value.buy, converted.value.length)}</p>
              {against.map((problem) => (
                <SaidProblem key={problem.code} problem={problem} />
              ))}
              <details>
                <summary>{words.why}</summary>
                <ul>
                  <li>
                    {sayClothRow(envelope, row)}: {rowLabel(row)}
                  </li>
                  {converted.value.why.map((reason) => (
                    <li key={reason.code}>
                      {say.words(clothWords.converted[reason.code] ?? reason.code, reason.values)}
                    </li>
                  ))}
                </ul>
              </details>
              <p className="note">{clothWords.estimateOnly}</p>
            </div>
          )}
        </>
      )}
    </section>
  );
};

const Said = ({ result }: { result: Result<unknown> }) => {
  return result.ok ? null : <SaidProblem problem={result.problem} />;
};

const SaidProblem = ({ problem }: { problem: Problem }) => {
  const say = useSay();
  const { message, remedy } = say.problem(problem);
  return (
    <p className="field-trouble">
      <strong>{message}</strong> {remedy}
    </p>
  );
};
