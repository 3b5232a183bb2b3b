import type { ProblemWords } from '../../src/words/index.ts';

/** What is wrong with a field, beside it. The place is always there, so that it is read out when it fills. */
export const FieldTrouble = ({ id, words }: { id: string; words: ProblemWords | null }) => (
  <div id={id} aria-live="polite">
    {words && (
      <p className="field-trouble">
        <strong>{words.message}</strong> {words.remedy}
      </p>
    )}
  </div>
);
