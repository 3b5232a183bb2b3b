import { type FinishedOf, flatMeasureGuide } from '../../src/pattern/index.ts';
import { envelopePageWords } from '../../src/words/index.ts';
import { useEnvelope } from './envelope-context.ts';

const words = envelopePageWords.flat;

/** Where the tape goes and what it must leave out, in words; the drawing of it lies on the table. */
export const FlatGuideWords = ({ of }: { of: FinishedOf }) => {
  const { envelope } = useEnvelope();
  const guide = flatMeasureGuide(of, envelope.kind);
  return (
    <div className="stack">
      <p>{guide.where}</p>
      {guide.leaveOut.length > 0 && (
        <>
          <p>{words.leaveOut}</p>
          <ul>
            {guide.leaveOut.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </>
      )}
      {guide.care.map((sentence) => (
        <p className="hint" key={sentence}>
          {sentence}
        </p>
      ))}
    </div>
  );
};
