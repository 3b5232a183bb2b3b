import { useId } from 'react';
import type { Parameter, ShareParameter } from '../../src/alter/index.ts';
import { sayNamed } from '../../src/draw/index.ts';
import type { AlterationStep, Garment } from '../../src/pattern/index.ts';
import { webWords } from '../../src/words/index.ts';
import { useSay } from '../app/settings.tsx';
import { Choice } from '../parts/Choice.tsx';
import { Select } from '../parts/Select.tsx';
import { Amount } from './Amount.tsx';
import { choiceName, parameterName } from './alteration-words.ts';
import { useMake } from './make-context.ts';
import { alterationOf, setParam } from './steps.ts';

const words = webWords.make.alterations;

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

/** One parameter of a step, as it is asked for: an amount, a share, a name out of the garment’s, a choice. */
export const ParameterField = ({ step, name, parameter, title, before }: FieldProps) => {
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
