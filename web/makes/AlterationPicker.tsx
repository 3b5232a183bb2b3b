import { useId, useMemo, useState } from 'react';
import { type Alteration, alterationCatalogue } from '../../src/alter/index.ts';
import type { Garment } from '../../src/pattern/index.ts';
import { alterWords, webWords } from '../../src/words/index.ts';
import { useSay } from '../app/settings.tsx';
import { alterationAbout, alterationName } from './alteration-words.ts';
import { findAlterations } from './find-alteration.ts';

const words = webWords.make.alterations;

interface PickerProps {
  readonly garment: Garment;
  readonly onPick: (alteration: Alteration) => void;
}

/** One of all alterations: by family, or by a word of its name or of what it is for. */
export const AlterationPicker = ({ garment, onPick }: PickerProps) => {
  const say = useSay();
  const id = useId();
  const [search, setSearch] = useState('');
  const found = useMemo(() => findAlterations(alterationCatalogue, garment, search), [garment, search]);
  const searching = search.trim() !== '';
  return (
    <div className="picker">
      <div className="field">
        <label htmlFor={id}>{words.find}</label>
        <p className="hint" id={`${id}-hint`}>
          {words.findHint}
        </p>
        <input
          id={id}
          type="search"
          autoComplete="off"
          spellCheck={false}
          value={search}
          aria-describedby={`${id}-hint`}
          onChange={(event) => setSearch(event.target.value)}
        />
      </div>
      <p className={searching ? 'hint' : 'unseen'} role="status">
        {!searching ? '' : found.count === 0 ? words.foundNone : say.words(words.foundCount, { count: found.count })}
      </p>
      {found.families.map(({ family, alterations }) => (
        // Folded until she searches; then what was found is in sight.
        <details key={`${family} ${searching}`} open={searching} className="family">
          <summary>{alterWords.families[family]}</summary>
          <ul>
            {alterations.map((one) => (
              <li key={one.id}>
                <button
                  type="button"
                  className="pick"
                  aria-label={say.words(words.addOf, { name: alterationName(one.id) })}
                  aria-describedby={`${id}-${one.id}`}
                  onClick={() => {
                    setSearch('');
                    onPick(one);
                  }}
                >
                  {alterationName(one.id)}
                </button>
                <p className="hint" id={`${id}-${one.id}`}>
                  {alterationAbout(one.id)}
                </p>
              </li>
            ))}
          </ul>
        </details>
      ))}
      {found.lacking.length > 0 && (
        <details className="family">
          <summary>{say.words(words.lacking, { count: found.lacking.length })}</summary>
          <ul>
            {found.lacking.map(({ alteration, problem }) => {
              const { message, remedy } = say.problem(problem);
              return (
                <li key={alteration.id}>
                  <p>
                    <strong>{alterationName(alteration.id)}</strong>
                  </p>
                  <p className="hint">{`${message} ${remedy}`}</p>
                </li>
              );
            })}
          </ul>
        </details>
      )}
    </div>
  );
};
