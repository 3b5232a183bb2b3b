import { useState } from 'react';
import type { HouseChoice } from '../../src/drafting/index.ts';
import type { Pattern } from '../../src/pattern/index.ts';
import { webWords } from '../../src/words/index.ts';
import { Link } from '../parts/Link.tsx';
import { Page, Waiting } from '../parts/Page.tsx';
import { Removal } from '../parts/Removal.tsx';
import { Trouble } from '../parts/Trouble.tsx';
import { Figures, HousePage, PiecesPassage, usePatternShown } from './HousePage.tsx';
import { MakesFrom } from './MakesFrom.tsx';
import { useHousePattern, usePattern } from './pattern-source.ts';

const words = webWords.patterns;

/** A pattern she brought in as a file. */
const BroughtIn = ({ id, pattern }: { id: string; pattern: Pattern }) => {
  const inHand = usePatternShown(null, pattern);
  return (
    <Page title={pattern.name}>
      <p>{pattern.about}</p>
      <div className="verbs">
        <Link to={`/makes/new?pattern=${encodeURIComponent(id)}`} className="verb verb-next">
          {words.makeOf}
        </Link>
      </div>
      <PiecesPassage pattern={pattern} sketched={false} {...inHand} />
      <Figures pattern={pattern} size={inHand.size} />
      <MakesFrom pattern={id} />
      <Removal id={id} name={pattern.name} verb={words.remove} back="/patterns" />
    </Page>
  );
};

const PatternPage = ({ id }: { id: string }) => {
  const asked = new URLSearchParams(window.location.search).get('view');
  const [choice, choose] = useState<HouseChoice>(asked ? { view: asked } : {});
  const pattern = usePattern(id, choice);
  const house = useHousePattern(id);
  if (pattern.state === 'asking' || house === undefined) return <Waiting what={webWords.shell.opening} />;
  if (pattern.state === 'refused') return <Trouble words={pattern.words} />;
  return house ? (
    <HousePage id={id} house={house} pattern={pattern.value} choice={choice} choose={choose} />
  ) : (
    <BroughtIn id={id} pattern={pattern.value} />
  );
};

export default PatternPage;
