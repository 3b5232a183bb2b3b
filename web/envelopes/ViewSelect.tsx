import { envelopePageWords } from '../../src/words/index.ts';
import { Select } from '../parts/Select.tsx';
import { useEnvelope } from './envelope-context.ts';

interface ViewSelectProps {
  readonly label?: string;
  readonly value: string | null;
  readonly onChange: (view: string | null) => void;
}

/** One of the envelope's views, or all of them; nothing where it has none. */
export const ViewSelect = ({ label = envelopePageWords.chart.forView, value, onChange }: ViewSelectProps) => {
  const { envelope } = useEnvelope();
  if (envelope.views.length === 0) return null;
  return (
    <Select
      label={label}
      value={value ?? ''}
      options={[
        { value: '', label: envelopePageWords.views.all },
        ...envelope.views.map((view) => ({ value: view.id, label: view.name })),
      ]}
      onChange={(view) => onChange(view === '' ? null : view)}
    />
  );
};
