import { useState } from 'react';
import { type AskedAnswer, type AskedRow, type ClothRow, clothLayers, clothNaps } from '../../src/pattern/index.ts';
import { envelopePageWords } from '../../src/words/index.ts';
import { useSay } from '../app/settings.tsx';
import { Passage } from '../makes/Passages.tsx';
import { Choice } from '../parts/Choice.tsx';
import { LengthField } from '../parts/LengthField.tsx';
import { Select } from '../parts/Select.tsx';
import { Convert } from './Convert.tsx';
import { DoubtsSaid } from './Doubts.tsx';
import { sizesKnown, withClothRow } from './edit.ts';
import { useEnvelope } from './envelope-context.ts';
import { FigureGrid } from './FigureGrid.tsx';
import { checkClothWidth } from './figures.ts';
import { OnTable } from './OnTable.tsx';
import { PasteChart } from './PasteChart.tsx';
import { sayClothRow } from './row-words.ts';
import { ViewSelect } from './ViewSelect.tsx';

const words = envelopePageWords;

/** Which row of cloth it is: for what, how wide, and how the pieces lie. */
const useClothRow = (view: string | null) => {
  const { envelope } = useEnvelope();
  const usual = envelope.clothNeeded.at(-1)?.width ?? (envelope.printedIn === 'inches' ? 45 * 25.4 : 1400);
  const [row, setRow] = useState<Omit<ClothRow, 'figures'>>({ view, layer: 'shell', width: usual, nap: 'either' });
  return [row, (part: Partial<ClothRow>) => setRow((before) => ({ ...before, ...part }))] as const;
};

interface RowFieldsProps {
  readonly place: string;
  readonly row: Omit<ClothRow, 'figures'>;
  readonly onChange: (part: Partial<ClothRow>) => void;
  /** Its view is known from where the row stands. */
  readonly quietView?: boolean;
}

const RowFields = ({ place, row, onChange, quietView = false }: RowFieldsProps) => {
  const { id } = useEnvelope();
  return (
    <>
      <div className="amount-fields">
        {!quietView && <ViewSelect value={row.view} onChange={(view) => onChange({ view })} />}
        <Select
          label={words.chart.layer}
          value={row.layer}
          options={clothLayers.map((layer) => ({ value: layer, label: words.chart.layers[layer] }))}
          onChange={(layer) => onChange({ layer: layer as ClothRow['layer'] })}
        />
        <LengthField
          label={words.chart.width}
          place={`${id}/${place}/width`}
          mm={row.width}
          check={checkClothWidth}
          onCommit={(width) => width !== null && onChange({ width })}
        />
      </div>
      <Choice
        legend={words.chart.nap}
        name="nap"
        value={row.nap}
        options={clothNaps.map((nap) => ({ value: nap, label: words.chart.naps[nap] }))}
        onChange={(nap) => onChange({ nap })}
      />
    </>
  );
};

const sameRow = (a: Omit<ClothRow, 'figures'>, b: Omit<ClothRow, 'figures'>): boolean =>
  a.view === b.view && a.layer === b.layer && a.width === b.width && a.nap === b.nap;

const AskedCloth = ({ row: asked, answer }: { row: AskedRow; answer: (what: AskedAnswer) => void }) => {
  const say = useSay();
  const [row, setRow] = useClothRow(asked.view);
  return (
    <fieldset className="stack">
      <legend>{say.words(words.chart.askedRow, { label: asked.label })}</legend>
      <RowFields place={`asked/${asked.label}`} row={row} onChange={setRow} quietView />
      <div className="verbs">
        <button
          type="button"
          className="verb"
          onClick={() => answer({ as: 'cloth', layer: row.layer, width: row.width, nap: row.nap })}
        >
          {words.chart.addVerb}
        </button>
        <button type="button" className="verb verb-quiet" onClick={() => answer({ as: 'left-out' })}>
          {words.chart.askedIgnore}
        </button>
      </div>
    </fieldset>
  );
};

const AddRow = () => {
  const { change } = useEnvelope();
  const [row, setRow] = useClothRow(null);
  return (
    <details>
      <summary>{words.chart.addRow}</summary>
      <div className="stack">
        <RowFields place="add-cloth" row={row} onChange={setRow} />
        <button
          type="button"
          className="verb"
          onClick={() =>
            change(
              (before) => (before.clothNeeded.some((one) => sameRow(one, row)) ? before : withClothRow(before, row)),
              `cloth row ${JSON.stringify(row)}`,
            )
          }
        >
          {words.chart.addVerb}
        </button>
      </div>
    </details>
  );
};

/** How much cloth it takes, by view, width and size, and what that comes to in another width. */
export const ClothPassage = () => {
  const say = useSay();
  const { envelope } = useEnvelope();
  const unit = envelope.printedIn === 'inches' ? words.chart.units.yards : words.chart.units.metres;
  return (
    <Passage id="cloth" title={words.titles.cloth}>
      <PasteChart chart="cloth" ask={(row, answer) => <AskedCloth row={row} answer={answer} />} />
      {envelope.clothNeeded.length > 0 && (
        <FigureGrid
          chart="cloth"
          purpose="cloth"
          caption={say.words(words.chart.table.cloth, { unit })}
          rows={envelope.clothNeeded.map((row) => ({
            key: `${row.view ?? ''} ${row.layer} ${Math.round(row.width)} ${row.nap}`,
            name: sayClothRow(envelope, row),
            note: row.layer === 'shell' ? <p className="note">{words.chart.napsShort[row.nap]}</p> : undefined,
            figures: row.figures,
          }))}
        />
      )}
      {sizesKnown(envelope) ? <AddRow /> : <p>{words.chart.noSizes}</p>}
      <DoubtsSaid chart="cloth" />
      <OnTable withBody={false} />
      {envelope.clothNeeded.length > 0 && <Convert envelope={envelope} place="envelope" />}
    </Passage>
  );
};
