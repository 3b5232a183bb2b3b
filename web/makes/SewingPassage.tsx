import { memo, useMemo } from 'react';
import { webHouseWords, webWords } from '../../src/words/index.ts';
import { useSay } from '../app/settings.tsx';
import { WorkList } from '../patterns/OrderOfWork.tsx';
import { useHousePattern } from '../patterns/pattern-source.ts';
import { sayNotions } from '../patterns/say-notions.ts';
import { useMake } from './make-context.ts';
import { Passage } from './Passages.tsx';

const words = webWords.make.sewing;

/** Prints this passage alone, as a list to lie beside the machine. */
const printList = () => {
  const page = document.documentElement;
  page.dataset.printing = 'list';
  const done = () => {
    delete page.dataset.printing;
    window.removeEventListener('afterprint', done);
  };
  window.addEventListener('afterprint', done);
  window.print();
};

/** What the make takes beside its cloth, off its own pieces and its wearer, and in what order it is sewn. */
export const SewingPassage = memo(() => {
  const say = useSay();
  const { make, pattern, altered, measures } = useMake();
  const house = useHousePattern(make.pattern);
  const notions = useMemo(
    () => sayNotions(pattern, altered.garment, measures, say.unit),
    [pattern, altered.garment, measures, say.unit],
  );
  return (
    <Passage id="sewing" title={webWords.make.passages.sewing}>
      <h3>{words.takes}</h3>
      <p className="hint">{notions.length > 0 ? words.takesAbout : words.takesNothing}</p>
      {notions.length > 0 && (
        <ul>
          {notions.map((notion) => (
            <li key={notion}>{notion}</li>
          ))}
        </ul>
      )}
      <h3>{webHouseWords.work}</h3>
      {house ? <WorkList house={house} view={make.view} /> : <p>{words.workElsewhere}</p>}
      <div className="verbs unprinted">
        <button type="button" className="verb" onClick={printList}>
          {words.printList}
        </button>
      </div>
    </Passage>
  );
});
