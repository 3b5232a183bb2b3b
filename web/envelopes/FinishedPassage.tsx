import { useState } from 'react';
import { type AskedAnswer, type AskedRow, type FinishedOf, finishedKinds } from '../../src/pattern/index.ts';
import { envelopePageWords } from '../../src/words/index.ts';
import { useSay } from '../app/settings.tsx';
import { Passage } from '../makes/Passages.tsx';
import { Select } from '../parts/Select.tsx';
import { DoubtsSaid } from './Doubts.tsx';
import { sizesKnown, withFinishedRow } from './edit.ts';
import { useEnvelope } from './envelope-context.ts';
import { FigureGrid } from './FigureGrid.tsx';
import { FlatMeasures } from './FlatMeasures.tsx';
import { OnTable } from './OnTable.tsx';
import { PasteChart } from './PasteChart.tsx';
import { finishedName, sayFinishedRow } from './row-words.ts';
import { ViewSelect } from './ViewSelect.tsx';

const words = envelopePageWords;

const kinds = finishedKinds.map((of) => ({ value: of, label: finishedName(of) }));

const AskedFinished = ({ row, answer }: { row: AskedRow; answer: (what: AskedAnswer) => void }) => {
  const say = useSay();
  return (
    <Select
      label={say.words(words.chart.askedRow, { label: row.label })}
      value=""
      options={[
        { value: '', label: words.chart.askedChoose },
        ...kinds.filter(({ value }) => value !== 'other'),
        { value: 'other', label: words.chart.askedOther },
        { value: '-', label: words.chart.askedIgnore },
      ]}
      onChange={(value) => {
        if (value === '-') answer({ as: 'left-out' });
        else if (value !== '') answer({ as: 'finished', of: value as FinishedOf });
      }}
    />
  );
};

const AddRow = () => {
  const { change } = useEnvelope();
  const [of, setOf] = useState<FinishedOf>('bust');
  const [view, setView] = useState<string | null>(null);
  return (
    <div className="add-step">
      <Select
        label={words.chart.addRow}
        value={of}
        options={kinds.filter(({ value }) => value !== 'other')}
        onChange={(value) => setOf(value as FinishedOf)}
      />
      <ViewSelect value={view} onChange={setView} />
      <button
        type="button"
        className="verb"
        onClick={() =>
          change(
            (before) =>
              before.finished.some((row) => row.of === of && row.view === view)
                ? before
                : withFinishedRow(before, { of, view, label: finishedName(of) }),
            `finished row ${of} ${view}`,
          )
        }
      >
        {words.chart.addVerb}
      </button>
    </div>
  );
};

/** What the garment measures when it is finished, as printed or as measured off the tissue. */
export const FinishedPassage = () => {
  const say = useSay();
  const { envelope } = useEnvelope();
  return (
    <Passage id="finished" title={words.titles.finished}>
      <PasteChart chart="finished" ask={(row, answer) => <AskedFinished row={row} answer={answer} />} />
      {envelope.finished.length > 0 && (
        <FigureGrid
          chart="finished"
          purpose="measure"
          caption={say.words(words.chart.table.finished, { unit: words.chart.units[envelope.printedIn] })}
          rows={envelope.finished.map((row, index) => ({
            key: `${row.of} ${row.view ?? ''} ${index}`,
            name: sayFinishedRow(envelope, row),
            figures: row.figures,
          }))}
        />
      )}
      {sizesKnown(envelope) ? <AddRow /> : <p>{words.chart.noSizes}</p>}
      <DoubtsSaid chart="finished" />
      <OnTable />
      {sizesKnown(envelope) && <FlatMeasures />}
    </Passage>
  );
};
