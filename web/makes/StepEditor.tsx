import { useId, useMemo, useState } from 'react';
import type { AmountParameter, Parameter, Refusal, StepOutcome } from '../../src/alter/index.ts';
import type { AlterationStep } from '../../src/pattern/index.ts';
import { bad, good, lengthAsShown } from '../../src/units/index.ts';
import { webWords } from '../../src/words/index.ts';
import { useSay } from '../app/settings.tsx';
import { Choice } from '../parts/Choice.tsx';
import { LengthField } from '../parts/LengthField.tsx';
import { Select } from '../parts/Select.tsx';
import { useSettled } from '../parts/useSettled.ts';
import {
  alterationName,
  choiceName,
  inAllFactor,
  parameterName,
  sayOutcome,
  sayRefusal,
  sayWarnings,
} from './alteration-words.ts';
import { useMake } from './make-context.ts';
import { alterationOf, changeStep, moveStep, removeStep, setParam, sliderRange } from './steps.ts';

const words = webWords.make.alterations;

interface AmountProps {
  readonly step: AlterationStep;
  readonly name: string;
  readonly parameter: AmountParameter;
  readonly title: string;
}

/** One amount: a slider for looking, and the same typed, per piece and in all. */
const Amount = ({ step, name, parameter, title }: AmountProps) => {
  const say = useSay();
  const { id, change } = useMake();
  const sliderId = useId();
  const given = step.params[name];
  const amount = typeof given === 'number' ? given : 0;
  const { stop, least, most } = sliderRange(parameter, say.unit);
  const factor = inAllFactor(step.alteration);
  /** Which way an amount of nothing would go is hers to say before there is one. */
  const [inwards, setInwards] = useState(amount < 0);
  const eitherWay = parameter.min < 0 && parameter.max > 0;
  const shorter = eitherWay && (amount === 0 ? inwards : amount < 0);
  const sign = shorter ? -1 : 1;
  const furthest = shorter ? -parameter.min : parameter.max;
  const put = (mm: number, edit = name) =>
    change((before) => setParam(before, step.id, name, mm), `${step.id} ${edit}`);
  const set = (mm: number) => put(mm === 0 ? 0 : sign * mm);
  const turn = (way: 'lengthen' | 'shorten') => {
    setInwards(way === 'shorten');
    const most = way === 'shorten' ? -parameter.min : parameter.max;
    const turned = Math.min(Math.abs(amount), most);
    if (amount !== 0) put(way === 'shorten' ? -turned : turned, way);
  };
  const length = (mm: number) => say.length(mm, { purpose: 'amount' });
  // What is in all is as often the amount she marks as there are pieces, never a finer sum than that.
  const marked = (mm: number) => lengthAsShown(mm, say.unit, { purpose: 'amount' });
  const nearest = eitherWay ? 0 : parameter.min;
  const within = (times: number) => (mm: number) =>
    mm / times >= nearest && mm / times <= furthest
      ? good(mm)
      : bad('web.amount-outside', { least: { mm: nearest * times }, most: { mm: furthest * times } });
  const oneWay = factor === 1 ? words.amountEach : words.amountBoth;
  const shown = Math.abs(amount);
  const both = say.words(
    eitherWay ? (amount === 0 ? words.amountNone : shorter ? words.amountShorter : words.amountLonger) : oneWay,
    { each: length(shown), all: length(marked(shown) * factor) },
  );
  return (
    <div className="amount">
      {eitherWay && (
        <Choice<'lengthen' | 'shorten'>
          legend={words.direction}
          name="direction"
          inline
          quiet
          value={shorter ? 'shorten' : 'lengthen'}
          options={[
            { value: 'lengthen', label: words.lengthen },
            { value: 'shorten', label: words.shorten },
          ]}
          onChange={turn}
        />
      )}
      <p className="amount-said">{both}</p>
      <label className="unseen" htmlFor={sliderId}>
        {say.words(words.sliderLabel, { alteration: title })}
      </label>
      <input
        id={sliderId}
        type="range"
        min={eitherWay ? 0 : least}
        max={shorter ? -least : most}
        step={1}
        value={Math.round(shown / stop)}
        aria-valuetext={both}
        onChange={(event) => set(Number(event.target.value) * stop)}
      />
      <div className="amount-fields">
        <LengthField
          label={eitherWay ? words.by : factor === 1 ? words.eachPiece : words.eachFront}
          place={`${id}/${step.id}/${name}/each`}
          purpose="amount"
          signed
          mm={shown}
          check={within(1)}
          onCommit={(mm) => mm !== null && set(mm)}
        />
        {factor !== 1 && (
          <LengthField
            label={words.inAll}
            place={`${id}/${step.id}/${name}/all`}
            purpose="amount"
            signed
            mm={marked(shown) * factor}
            check={within(factor)}
            onCommit={(mm) => mm !== null && set(marked(mm / factor))}
          />
        )}
      </div>
    </div>
  );
};

const ParameterField = ({
  step,
  name,
  parameter,
  title,
}: {
  step: AlterationStep;
  name: string;
  parameter: Parameter;
  title: string;
}) => {
  const { change } = useMake();
  if (parameter.unit === 'mm') return <Amount step={step} name={name} parameter={parameter} title={title} />;
  if (parameter.unit !== 'choice') return null;
  return (
    <Select
      label={parameterName(name)}
      value={String(step.params[name] ?? parameter.usual)}
      options={parameter.choices.map((value) => ({ value, label: choiceName(value) }))}
      onChange={(value) => change((before) => setParam(before, step.id, name, value), `${step.id} ${name}`)}
    />
  );
};

interface StepEditorProps {
  readonly step: AlterationStep;
  readonly place: number;
  readonly count: number;
  readonly outcome: StepOutcome | undefined;
  readonly refusal: Refusal | null;
  /** Some step of the list is refused; those after it are not done. */
  readonly stopped: boolean;
}

/** One alteration of the list. */
export const StepEditor = ({ step, place, count, outcome, refusal, stopped }: StepEditorProps) => {
  const say = useSay();
  const { altered, change } = useMake();
  const alteration = alterationOf(step);
  const title = alterationName(step.alteration);
  const titleId = useId();
  // The long account may wait until her hand rests; what warns may not.
  const rested = useSettled(outcome);
  const said = useMemo(() => (rested ? sayOutcome(rested, say) : null), [rested, say]);
  return (
    <li className={step.on ? 'step' : 'step step-off'} aria-labelledby={titleId}>
      <div className="step-head">
        <h3 id={titleId}>{say.words(words.stepTitle, { number: place + 1, name: title })}</h3>
        <label className="check">
          <input
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
      {alteration &&
        Object.entries(alteration.params).map(([name, parameter]) => (
          <ParameterField key={name} step={step} name={name} parameter={parameter} title={title} />
        ))}
      <div aria-live="polite">
        {refusal && (
          <div className="field-trouble">
            <p>{sayRefusal(refusal, altered.garment, say)}</p>
            {refusal.largest && (
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
      <div className="verbs">
        <button
          type="button"
          className="verb verb-quiet"
          disabled={place === 0}
          aria-label={say.words(words.earlierOf, { name: title })}
          onClick={() => change((before) => moveStep(before, step.id, -1), 'order')}
        >
          {words.earlier}
        </button>
        <button
          type="button"
          className="verb verb-quiet"
          disabled={place === count - 1}
          aria-label={say.words(words.laterOf, { name: title })}
          onClick={() => change((before) => moveStep(before, step.id, 1), 'order')}
        >
          {words.later}
        </button>
        <button
          type="button"
          className="verb verb-quiet"
          aria-label={say.words(words.removeOf, { name: title })}
          onClick={() => change((before) => removeStep(before, step.id), `remove ${step.id}`)}
        >
          {words.remove}
        </button>
      </div>
    </li>
  );
};
