import { type ChartKind, type EnvelopeDoubt, keepDoubt, turnUnit, unitAfterAll } from '../../src/pattern/index.ts';
import { envelopePageWords, sentence } from '../../src/words/index.ts';
import { locale, useSay } from '../app/settings.tsx';
import { rowsIn, sizesKnown } from './edit.ts';
import { useEnvelope } from './envelope-context.ts';

const words = envelopePageWords.doubts;

interface DoubtWordsProps {
  readonly id: string;
  readonly doubt: EnvelopeDoubt;
  /** The row or field it is about, for those who hear the verbs without seeing where they stand. */
  readonly where: string;
  readonly onCorrect: () => void;
}

/** One doubt beside what it is about, with its answers. */
export const DoubtWords = ({ id, doubt, where, onCorrect }: DoubtWordsProps) => {
  const say = useSay();
  const { change, unit } = useEnvelope();
  // In the unit of the table it stands in, so that it can be held against the cell.
  const { message, remedy } = sentence(doubt, unit, locale);
  const turned = unitAfterAll(doubt);
  const all = doubt.where.size === null;
  return (
    <div className="field-trouble doubt">
      <p id={id}>
        <strong>{message}</strong> {remedy}
      </p>
      <div className="verbs">
        <button
          type="button"
          className="verb"
          aria-label={say.words(words.keepOf, { where })}
          aria-describedby={id}
          onClick={() => {
            change((before) => keepDoubt(before, doubt.id), `keep ${doubt.id}`);
            // The doubt and its verbs are gone: she goes on where it stood.
            onCorrect();
          }}
        >
          {words.keep}
        </button>
        {turned !== null && (
          <button
            type="button"
            className="verb"
            aria-label={say.words(words.turnOf, { answer: (all ? words.turnRow : words.turnOne)[turned], where })}
            aria-describedby={id}
            onClick={() => {
              change((before) => turnUnit(before, doubt), `turn ${doubt.id}`);
              onCorrect();
            }}
          >
            {(all ? words.turnRow : words.turnOne)[turned]}
          </button>
        )}
        <button
          type="button"
          className="verb"
          aria-label={say.words(words.correctOf, { where })}
          aria-describedby={id}
          onClick={onCorrect}
        >
          {words.correct}
        </button>
      </div>
    </div>
  );
};

/** How many doubts stand open, and asking again about those that were answered. */
export const DoubtsSaid = ({ chart }: { chart: ChartKind }) => {
  const say = useSay();
  const { envelope, doubts, change } = useEnvelope();
  const count = doubts.length;
  // Of a chart that is not there yet nothing can be doubtful.
  if (!sizesKnown(envelope) || rowsIn(envelope, chart).length === 0) return null;
  return (
    <div className="stack doubts-said">
      <p role="status">
        {count === 0 ? words.none : count === 1 ? words.one : say.words(words.some, { count })}
        {count > 0 && '.'}
      </p>
      {envelope.kept.length > 0 && (
        <button
          type="button"
          className="verb verb-quiet"
          onClick={() => change((before) => ({ ...before, kept: [] }), 'ask again')}
        >
          {say.words(words.kept, { count: envelope.kept.length })}
        </button>
      )}
    </div>
  );
};
