import { envelopePageWords } from '../../src/words/index.ts';
import { useSay } from '../app/settings.tsx';
import { Select } from '../parts/Select.tsx';
import { sizesKnown } from './edit.ts';
import { useEnvelope } from './envelope-context.ts';

const words = envelopePageWords.picture;

/** What lies on the table while a chart is typed in: its picture, with somebody's body on it, or the photograph it is read from. */
export const OnTable = ({ withBody = true }: { withBody?: boolean }) => {
  const say = useSay();
  const { envelope, wearers, wearer, showWearer, photograph, showPhotograph } = useEnvelope();
  return (
    <div className="amount-fields">
      {withBody && wearers.length > 0 && sizesKnown(envelope) && (
        <Select
          label={words.wearer}
          value={wearer?.id ?? ''}
          options={[...wearers.map((one) => ({ value: one.id, label: one.name })), { value: '', label: words.nobody }]}
          onChange={showWearer}
        />
      )}
      {envelope.photographs.length > 0 && (
        <Select
          label={words.show}
          value={photograph ?? ''}
          options={[
            { value: '', label: words.showChart },
            ...envelope.photographs.map((id, index) => ({
              value: id,
              label: say.words(words.showPhotograph, { number: index + 1 }),
            })),
          ]}
          onChange={(id) => showPhotograph(id === '' ? null : id)}
        />
      )}
    </div>
  );
};
