import { useId, useMemo } from 'react';
import { alterationCatalogue, readFitting, type Suggestion } from '../../../src/alter/index.ts';
import type { Measures } from '../../../src/body/index.ts';
import type { Fitting } from '../../../src/make/index.ts';
import { fittingWords as words } from '../../../src/words/index.ts';
import { useSay } from '../../app/settings.tsx';
import { garmentNext } from '../grip.ts';
import { useMake } from '../make-context.ts';
import { takeSuggestion } from './rounds.ts';
import { saySign, saySuggestion } from './say-fitting.ts';

/** Body and finished girths as the pieces in hand have them. */
const useFigures = (): { readonly measures: Measures; readonly finished: Measures } => {
  const { alteredEase } = useMake();
  return useMemo(
    () => ({
      measures: Object.fromEntries(alteredEase.map((cell) => [cell.measure, cell.body])),
      finished: Object.fromEntries(alteredEase.map((cell) => [cell.measure, cell.finished])),
    }),
    [alteredEase],
  );
};

/** The step of the list that came from this suggestion; undefined while it was not taken. */
const useTaken = (round: Fitting, suggestion: Suggestion): number => {
  const { make } = useMake();
  return make.steps.findIndex(
    (step) =>
      round.taken.includes(step.id) &&
      step.alteration === suggestion.alteration &&
      Object.entries(suggestion.params ?? {}).every(
        ([name, value]) => typeof value === 'number' || step.params[name] === value,
      ),
  );
};

const Answer = ({ round, suggestion, first }: { round: Fitting; suggestion: Suggestion; first: boolean }) => {
  const say = useSay();
  const { change } = useMake();
  const id = useId();
  const taken = useTaken(round, suggestion);
  const said = saySuggestion(suggestion, round.signs, say);
  const alteration = alterationCatalogue.find((one) => one.id === suggestion.alteration);
  const take = () => {
    const { params } = suggestion;
    if (alteration && params)
      change((make) => takeSuggestion(make, round.id, alteration, params), `take ${suggestion.cause}`);
  };
  return (
    <li aria-labelledby={id}>
      {first && <p className="hint">{words.likeliest}</p>}
      <h4 id={id}>{said.name}</h4>
      <p className="hint">{[said.because, said.against, said.measure].filter(Boolean).join(' ')}</p>
      {said.ruleOut.length > 0 && (
        <div>
          <strong>{words.first}</strong>
          <ul>
            {said.ruleOut.map((look) => (
              <li key={look}>{look}</li>
            ))}
          </ul>
        </div>
      )}
      {said.amount && <p className="amount-said">{said.amount}</p>}
      {(said.from || said.half || said.beyond) && (
        <p>{[said.half, said.from, said.beyond].filter(Boolean).join(' ')}</p>
      )}
      {said.impossible && <p>{said.impossible}</p>}
      {suggestion.params && taken === -1 && (
        <button type="button" className="verb" aria-label={said.take} onClick={take}>
          {words.take}
        </button>
      )}
      {taken !== -1 && (
        <p role="status">
          {say.words(words.taken, { number: taken + 1 })} <a href="#alterations">{words.goTo}</a>
        </p>
      )}
    </li>
  );
};

/** The alterations that answer what was marked in a round, the likelier first. */
export const Answers = ({ round }: { round: Fitting }) => {
  const say = useSay();
  const { pattern, size, altered } = useMake();
  const { measures, finished } = useFigures();
  // Where right and left differ, what is asked is one half of it, as of every step.
  const next = garmentNext(size.garment, altered);
  const reading = useMemo(
    () =>
      readFitting(round.signs, {
        kind: pattern.kind,
        garment: next,
        catalogue: alterationCatalogue,
        measures,
        finished,
      }),
    [round.signs, pattern.kind, next, measures, finished],
  );
  if (round.signs.length === 0) return <p>{words.answersNone}</p>;
  return (
    <>
      <ol className="answers">
        {reading.suggestions.map((suggestion, place) => (
          <Answer
            key={`${suggestion.cause} ${suggestion.side}`}
            round={round}
            suggestion={suggestion}
            first={place === 0 && reading.suggestions.length > 1}
          />
        ))}
      </ol>
      {reading.unread.map(({ sign, why }) => {
        const seen = round.signs[sign];
        return seen && <p key={sign}>{say.words(words.unread[why], { sign: saySign(seen, say) })}</p>;
      })}
    </>
  );
};
