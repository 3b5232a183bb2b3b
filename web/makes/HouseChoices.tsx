import type { Make } from '../../src/make/index.ts';
import { webHouseWords as words } from '../../src/words/index.ts';
import { useSay } from '../app/settings.tsx';
import { Select } from '../parts/Select.tsx';
import { useHousePattern } from '../patterns/pattern-source.ts';

interface HouseChoicesProps {
  readonly make: Make;
  readonly edit: (apply: (make: Make) => Make, name: string) => void;
}

/** Which view and cup of a house pattern the make is cut in; nothing where the pattern has neither. */
export const HouseChoices = ({ make, edit }: HouseChoicesProps) => {
  const say = useSay();
  const house = useHousePattern(make.pattern);
  if (!house) return null;
  return (
    <>
      {house.views.length > 1 && (
        <Select
          label={words.view}
          value={make.view ?? house.views[0]?.id ?? ''}
          options={house.views.map(({ id, name }) => ({ value: id, label: name }))}
          onChange={(view) => edit((before) => ({ ...before, view }), 'view')}
        />
      )}
      {house.cups.length > 0 && (
        <Select
          label={words.cup}
          hint={words.cupHint}
          value={make.cup === undefined ? '' : String(make.cup)}
          options={[
            { value: '', label: words.cupNearest },
            ...house.cups.map((cup) => ({ value: String(cup), label: say.length(cup) })),
          ]}
          onChange={(chosen) =>
            edit(({ cup: _before, ...rest }) => (chosen === '' ? rest : { ...rest, cup: Number(chosen) }), 'cup')
          }
        />
      )}
    </>
  );
};
