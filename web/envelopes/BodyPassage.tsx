import { useState } from 'react';
import { describeMeasure, type MeasureId, measureIds } from '../../src/body/index.ts';
import type { AskedAnswer, AskedRow } from '../../src/pattern/index.ts';
import { envelopePageWords } from '../../src/words/index.ts';
import { useSay } from '../app/settings.tsx';
import { Passage } from '../makes/Passages.tsx';
import { Select } from '../parts/Select.tsx';
import { DoubtsSaid } from './Doubts.tsx';
import { sizesKnown, withBodyRow } from './edit.ts';
import { useEnvelope } from './envelope-context.ts';
import { FigureGrid } from './FigureGrid.tsx';
import { OnTable } from './OnTable.tsx';
import { PasteChart } from './PasteChart.tsx';

const words = envelopePageWords;

const AskedMeasure = ({ row, answer }: { row: AskedRow; answer: (what: AskedAnswer) => void }) => {
  const say = useSay();
  return (
    <Select
      label={say.words(words.chart.askedRow, { label: row.label })}
      value=""
      options={[
        { value: '', label: words.chart.askedChoose },
        ...measureIds.map((measure) => ({ value: measure, label: describeMeasure(measure).name })),
        { value: '-', label: words.chart.askedIgnore },
      ]}
      onChange={(value) => {
        if (value === '-') answer({ as: 'left-out' });
        else if (value !== '') answer({ as: 'body', measure: value as MeasureId });
      }}
    />
  );
};

const AddRow = () => {
  const { envelope, change } = useEnvelope();
  const free = measureIds.filter((measure) => !envelope.body.some((row) => row.measure === measure));
  const [wanted, setChosen] = useState<MeasureId>('bustGirth');
  const chosen = free.includes(wanted) ? wanted : free[0];
  if (!chosen) return null;
  return (
    <div className="add-step">
      <Select
        label={words.chart.addRow}
        value={chosen}
        options={free.map((measure) => ({ value: measure, label: describeMeasure(measure).name }))}
        onChange={(value) => setChosen(value as MeasureId)}
      />
      <button
        type="button"
        className="verb"
        onClick={() => change((before) => withBodyRow(before, chosen), `body row ${chosen}`)}
      >
        {words.chart.addVerb}
      </button>
    </div>
  );
};

/** The body each size is drafted for. */
export const BodyPassage = () => {
  const say = useSay();
  const { envelope } = useEnvelope();
  return (
    <Passage id="body" title={words.titles.body}>
      <PasteChart chart="body" ask={(row, answer) => <AskedMeasure row={row} answer={answer} />} />
      {envelope.body.length > 0 && (
        <FigureGrid
          chart="body"
          purpose="measure"
          caption={say.words(words.chart.table.body, { unit: words.chart.units[envelope.printedIn] })}
          rows={envelope.body.map((row) => ({
            key: row.measure,
            name: describeMeasure(row.measure).name,
            figures: row.figures,
          }))}
        />
      )}
      {sizesKnown(envelope) ? <AddRow /> : <p>{words.chart.noSizes}</p>}
      <DoubtsSaid chart="body" />
      <OnTable />
    </Passage>
  );
};
