import { type ReactNode, useId } from 'react';

export interface ChoiceOption<Value extends string> {
  readonly value: Value;
  readonly label: ReactNode;
  readonly note?: ReactNode;
}

interface ChoiceProps<Value extends string> {
  readonly legend: string;
  readonly name: string;
  readonly value: Value | null;
  readonly options: readonly ChoiceOption<Value>[];
  readonly onChange: (value: Value) => void;
  readonly inline?: boolean;
  /** The legend is read out and not shown, where a heading says it already. */
  readonly quiet?: boolean;
}

/** One of a few, all of them in sight. */
export const Choice = <Value extends string>({
  legend,
  name,
  value,
  options,
  onChange,
  inline = false,
  quiet = false,
}: ChoiceProps<Value>) => {
  const id = useId();
  return (
    <fieldset className={inline ? 'choice choice-inline' : 'choice'}>
      <legend className={quiet ? 'unseen' : undefined}>{legend}</legend>
      <div className="choice-options">
        {options.map((option) => (
          <label key={option.value} className="choice-option">
            <input
              type="radio"
              name={`${name}-${id}`}
              value={option.value}
              checked={option.value === value}
              onChange={() => onChange(option.value)}
            />
            <span className="choice-label">{option.label}</span>
            {option.note !== undefined && <span className="choice-note">{option.note}</span>}
          </label>
        ))}
      </div>
    </fieldset>
  );
};
