import type { AlterationStep } from '../../src/pattern/index.ts';
import { webWords } from '../../src/words/index.ts';
import { useSay } from '../app/settings.tsx';
import { alterationName } from './alteration-words.ts';
import { KeepUsual, KeepVerb, useKeeping } from './KeepUsual.tsx';
import { useMake } from './make-context.ts';
import { copyStep, moveStep, removeStep } from './steps.ts';

const words = webWords.make.alterations;

interface StepVerbsProps {
  readonly step: AlterationStep;
  readonly place: number;
  readonly count: number;
  readonly onRemoved: (step: AlterationStep, place: number) => void;
}

/** What can be done with a step as a whole. */
export const StepVerbs = ({ step, place, count, onRemoved }: StepVerbsProps) => {
  const say = useSay();
  const { change } = useMake();
  const keeping = useKeeping(step);
  const title = alterationName(step.alteration);
  return (
    <>
      <div className="verbs">
        {/* What cannot be done just now stays under the keyboard: a button that went dead would let go of it. */}
        <button
          type="button"
          className="verb verb-quiet"
          aria-disabled={place === 0}
          aria-label={say.words(words.earlierOf, { name: title })}
          onClick={() => place > 0 && change((before) => moveStep(before, step.id, -1), 'order')}
        >
          {words.earlier}
        </button>
        <button
          type="button"
          className="verb verb-quiet"
          aria-disabled={place === count - 1}
          aria-label={say.words(words.laterOf, { name: title })}
          onClick={() => place < count - 1 && change((before) => moveStep(before, step.id, 1), 'order')}
        >
          {words.later}
        </button>
        <button
          type="button"
          className="verb verb-quiet"
          aria-label={say.words(words.copyOf, { name: title })}
          onClick={() => change((make) => copyStep(make, step.id), `copy ${step.id} ${count}`)}
        >
          {words.copy}
        </button>
        <button
          type="button"
          className="verb verb-quiet"
          aria-label={say.words(words.removeOf, { name: title })}
          onClick={() => {
            onRemoved(step, place);
            change((make) => removeStep(make, step.id), `remove ${step.id}`);
          }}
        >
          {words.remove}
        </button>
        <KeepVerb keeping={keeping} title={title} />
      </div>
      <KeepUsual keeping={keeping} />
    </>
  );
};
