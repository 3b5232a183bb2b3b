import { useId, useMemo, useState } from 'react';
import type {
  Alteration,
  AmountParameter,
  Parameter,
  Refusal,
  ShareParameter,
  StepOutcome,
} from '../../src/alter/index.ts';
import { sayNamed } from '../../src/draw/index.ts';
import type { AlterationStep, Garment } from '../../src/pattern/index.ts';
import { bad, good, lengthAsShown } from '../../src/units/index.ts';
import { webWords } from '../../src/words/index.ts';
import { useSay } from '../app/settings.tsx';
import { Choice } from '../parts/Choice.tsx';
import { LengthField } from '../parts/LengthField.tsx';
import { Select } from '../parts/Select.tsx';
import { useSettled } from '../parts/useSettled.ts';
import {
  alterationCaution,
  alterationName,
  choiceName,
  isUsual,
  parameterName,
  partWords,
  sayAmount,
  sayFolded,
  sayOutcome,
  sayRefusal,
  sayWarnings,
  timesPutIn,
  waysOf,
} from './alteration-words.ts';
import { useMake } from './make-context.ts';
import { alterationOf, changeStep, copyStep, moveStep, removeStep, setParam, sliderRange } from './steps.ts';
import { KeepUsual } from './UsualAlterations.tsx';

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
  // What is counted in all is the alteration's one amount; several amounts beside each other stand for themselves.
  const main = alterationOf(step)?.amount === name;
  const factor = main ? timesPutIn(step) : 1;
  const ways = waysOf(step.alteration);
  const part = partWords(step);
  /** Which way an amount of nothing would go is hers to say before there is one. */
  const [inwards, setInwards] = useState(amount < 0);
  const eitherWay = parameter.min < 0 && parameter.max > 0;
  const shorter = eitherWay && (amount === 0 ? inwards : amount < 0);
  const sign = shorter ? -1 : 1;
  const furthest = shorter ? -parameter.min : parameter.max;
  const put = (mm: number, edit = name) =>
    change((before) => setParam(before, step.id, name, mm), `${step.id} ${edit}`);
  const set = (mm: number) => put(mm === 0 ? 0 : sign * mm);
  const turn = (way: 'more' | 'less') => {
    setInwards(way === 'less');
    const turnedMost = way === 'less' ? -parameter.min : parameter.max;
    const turned = Math.min(Math.abs(amount), turnedMost);
    if (amount !== 0) put(way === 'less' ? -turned : turned, way);
  };
  // What is in all is as often the amount she marks as there are pieces, never a finer sum than that.
  const marked = (mm: number) => lengthAsShown(mm, say.unit, { purpose: 'amount' });
  const nearest = eitherWay ? 0 : parameter.min;
  const within = (times: number) => (mm: number) =>
    mm / times >= nearest && mm / times <= furthest
      ? good(mm)
      : bad('web.amount-outside', { least: { mm: nearest * times }, most: { mm: furthest * times } });
  const shown = Math.abs(amount);
  const both = sayAmount(step, name, say);
  const label = main ? words.amountName : parameterName(name, step.alteration);
  return (
    <div className="amount">
      {!main && <h4>{label}</h4>}
      {eitherWay && (
        <Choice<'more' | 'less'>
          legend={`${words.direction}: ${label}`}
          name="direction"
          inline
          quiet
          value={shorter ? 'less' : 'more'}
          options={[
            { value: 'more', label: ways.more },
            { value: 'less', label: ways.less },
          ]}
          onChange={turn}
        />
      )}
      <p className="amount-said">{both}</p>
      <label className="unseen" htmlFor={sliderId}>
        {say.words(words.sliderLabel, { alteration: title, label: main ? words.amountName : label })}
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
          label={factor === 1 ? (main ? words.by : label) : part.field}
          place={`${id}/${step.id}/${name}/each`}
          purpose="amount"
          signed
          mm={shown}
          quietLabel={!main}
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

/** A share, as so much in a hundred, between its limits. */
const Share = ({ step, name, parameter }: { step: AlterationStep; name: string; parameter: ShareParameter }) => {
  const say = useSay();
  const { change } = useMake();
  const id = useId();
  const given = step.params[name];
  const share = typeof given === 'number' ? given : (parameter.usual[0] + parameter.usual[1]) / 2;
  const said = say.words(words.shareSaid, { percent: Math.round(share * 100) });
  return (
    <div className="share">
      <label htmlFor={id}>
        {parameterName(name, step.alteration)}: {said}
      </label>
      <input
        id={id}
        type="range"
        min={Math.ceil(parameter.min * 100)}
        max={Math.floor(parameter.max * 100)}
        step={1}
        value={Math.round(share * 100)}
        aria-valuetext={said}
        onChange={(event) =>
          change((before) => setParam(before, step.id, name, Number(event.target.value) / 100), `${step.id} ${name}`)
        }
      />
    </div>
  );
};

interface FieldProps {
  readonly step: AlterationStep;
  readonly name: string;
  readonly parameter: Parameter;
  readonly title: string;
  /** The garment the step is done to. */
  readonly before: Garment;
}

const ParameterField = ({ step, name, parameter, title, before }: FieldProps) => {
  const { change } = useMake();
  const put = (value: string) => change((make) => setParam(make, step.id, name, value), `${step.id} ${name}`);
  const label = parameterName(name, step.alteration);
  if (parameter.unit === 'mm') return <Amount step={step} name={name} parameter={parameter} title={title} />;
  if (parameter.unit === 'share') return <Share step={step} name={name} parameter={parameter} />;
  if (parameter.unit === 'named') {
    const options = alterationOf(step)?.options?.(before, name, step.params) ?? [];
    const given = String(step.params[name] ?? options[0] ?? '');
    // What the garment no longer has stays in sight until she chooses anew.
    const listed = options.includes(given) || given === '' ? options : [given, ...options];
    return (
      <Select
        label={label}
        value={given}
        options={listed.map((value) => ({ value, label: sayNamed(before, parameter.of, value) }))}
        onChange={put}
      />
    );
  }
  if (name === 'side') {
    const value = String(step.params[name] ?? parameter.usual) as keyof typeof words.sides;
    return (
      <Choice
        legend={label}
        name="side"
        inline
        value={value}
        options={(['both', 'right', 'left'] as const).map((side) => ({ value: side, label: words.sides[side] }))}
        onChange={put}
      />
    );
  }
  // Only places this garment has are offered; what the step already says is left to stand.
  const here = alterationOf(step)?.options?.(before, name, step.params) ?? [];
  const chosen = String(step.params[name] ?? here[0] ?? parameter.usual);
  const choicesHere = here.length > 0 ? [...new Set([...here, chosen])] : parameter.choices;
  return (
    <Select
      label={label}
      value={chosen}
      options={choicesHere.map((value) => ({ value, label: choiceName(value, step.alteration) }))}
      onChange={put}
    />
  );
};

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

/** One alteration of the list. */
export const StepEditor = (props: StepEditorProps) => {
  const { step, place, count, outcome, refusal, stopped, before, inHand, onTake, onRemoved } = props;
  const say = useSay();
  const { altered, change } = useMake();
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
      {caution !== '' && inHand && <p className="hint">{caution}</p>}
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
      </div>
      <KeepUsual step={step} />
    </li>
  );
};
