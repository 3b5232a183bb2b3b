import { useId, useState } from 'react';
import type { AmountParameter } from '../../src/alter/index.ts';
import type { AlterationStep } from '../../src/pattern/index.ts';
import { bad, good, lengthAsShown } from '../../src/units/index.ts';
import { webWords } from '../../src/words/index.ts';
import { useSay } from '../app/settings.tsx';
import { Choice } from '../parts/Choice.tsx';
import { LengthField } from '../parts/LengthField.tsx';
import { parameterName, partWords, sayAmount, timesPutIn, waysOf } from './alteration-words.ts';
import { useMake } from './make-context.ts';
import { alterationOf, setParam, sliderRange } from './steps.ts';

const words = webWords.make.alterations;

interface AmountProps {
  readonly step: AlterationStep;
  readonly name: string;
  readonly parameter: AmountParameter;
  readonly title: string;
}

/** One amount: a slider for looking, and the same typed, per piece and in all. */
export const Amount = ({ step, name, parameter, title }: AmountProps) => {
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
          legend={main ? words.direction : `${words.direction}: ${label}`}
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
