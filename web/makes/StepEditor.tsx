import { useId, useMemo } from 'react';
import type { Alteration, Parameter, Refusal, StepOutcome } from '../../src/alter/index.ts';
import type { AlterationStep, Garment } from '../../src/pattern/index.ts';
import { webWords } from '../../src/words/index.ts';
import { useSay } from '../app/settings.tsx';
import { useSettled } from '../parts/useSettled.ts';
import {
  alterationCaution,
  alterationName,
  isUsual,
  sayFolded,
  sayOutcome,
  sayRefusal,
  sayWarnings,
} from './alteration-words.ts';
import { useMake } from './make-context.ts';
import { ParameterField } from './ParameterField.tsx';
import { StepVerbs } from './StepVerbs.tsx';
import { alterationOf, changeStep, setParam } from './steps.ts';

const words = webWords.make.alterations;

/** Where the amount is the point, on which half and how far along is folded away while it is as usual. */
const partsOf = (alteration: Alteration) => {
  const all = Object.entries(alteration.params);
  const folded = ([name, parameter]: readonly [string, Parameter]) =>
    alteration.amount !== null && (name === 'side' || parameter.unit === 'share');
  return { open: all.filter((one) => !folded(one)), folded: all.filter(folded) };
};

interface StepEditorProps {
  readonly step: AlterationStep;
  readonly place: number;
  readonly count: number;
  readonly outcome: StepOutcome | undefined;
  readonly refusal: Refusal | null;
  /** The garment the step is done to. */
  readonly before: Garment;
  /** Its point can be dragged on the table. */
  readonly inHand: boolean;
  readonly onTake: () => void;
  /** Says that a step was taken off, so that it can be put back. */
  readonly onRemoved: (step: AlterationStep, place: number) => void;
  /** Some step of the list is refused; those after it are not done. */
  readonly stopped: boolean;
}

/** The switch of a step, to which the keyboard is taken when the step is put back. */
export const stepSwitchId = (step: string): string => `step-on-${step}`;

/** One alteration of the list. */
export const StepEditor = (props: StepEditorProps) => {
  const { step, place, count, outcome, refusal, stopped, before, inHand, onTake, onRemoved } = props;
  const say = useSay();
  const { change } = useMake();
  const alteration = alterationOf(step);
  const title = alterationName(step.alteration);
  const titleId = useId();
  const parts = alteration && partsOf(alteration);
  const caution = alterationCaution(step.alteration);
  // The long account may wait until her hand rests; what warns may not.
  const rested = useSettled(outcome);
  const said = useMemo(() => (rested ? sayOutcome(rested, say) : null), [rested, say]);
  return (
    <li
      className={`step${step.on ? '' : ' step-off'}${inHand ? ' step-in-hand' : ''}`}
      aria-labelledby={titleId}
      onFocus={onTake}
      onPointerDown={onTake}
    >
      <div className="step-head">
        <h3 id={titleId}>{say.words(words.stepTitle, { number: place + 1, name: title })}</h3>
        <label className="check">
          <input
            id={stepSwitchId(step.id)}
            type="checkbox"
            checked={step.on}
            aria-label={say.words(words.onLabel, { name: title })}
            onChange={(event) =>
              change(
                (before) => changeStep(before, step.id, { on: event.target.checked }),
                `${step.id} ${event.target.checked ? 'on' : 'off'}`,
              )
            }
          />
          {step.on ? words.on : words.off}
        </label>
      </div>
      {parts?.open.map(([name, parameter]) => (
        <ParameterField key={name} step={step} name={name} parameter={parameter} title={title} before={before} />
      ))}
      {parts && parts.folded.length > 0 && (
        <details open={parts.folded.some(([name, parameter]) => !isUsual(step, name, parameter)) || undefined}>
          <summary>
            {words.whereAndHow}:{' '}
            {parts.folded.map(([name, parameter]) => sayFolded(step, name, parameter, say)).join(', ')}
          </summary>
          {parts.folded.map(([name, parameter]) => (
            <ParameterField key={name} step={step} name={name} parameter={parameter} title={title} before={before} />
          ))}
        </details>
      )}
      {/* It stays in sight: words that came and went as a step is taken up would move what is being pressed. */}
      {caution !== '' && <p className="hint">{caution}</p>}
      <div aria-live="polite">
        {refusal && (
          <div className="field-trouble">
            <p>{sayRefusal(refusal, before, say)}</p>
            {refusal.largest && refusal.problem.code !== 'alter.changes-nothing' && (
              <button
                type="button"
                className="verb verb-quiet"
                onClick={() =>
                  refusal.largest &&
                  change(
                    (before) =>
                      setParam(before, step.id, refusal.largest?.parameter ?? '', refusal.largest?.amount ?? 0),
                    `${step.id} largest`,
                  )
                }
              >
                {say.words(words.takeLargest, { amount: say.length(refusal.largest.amount, { purpose: 'amount' }) })}
              </button>
            )}
          </div>
        )}
      </div>
      {step.on && stopped && !outcome && !refusal && <p className="field-trouble">{words.waits}</p>}
      {outcome && said && (
        <details>
          <summary>{said.summary}</summary>
          <h4>{words.holds}</h4>
          <ul>
            {said.held.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
          <h4>{words.changes}</h4>
          <ul>
            {said.changes.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </details>
      )}
      {outcome &&
        sayWarnings(outcome, say).map((line) => (
          <p className="field-trouble" key={line}>
            {line}
          </p>
        ))}
      <StepVerbs step={step} place={place} count={count} onRemoved={onRemoved} />
    </li>
  );
};
