import type { Wearer } from '../../src/body/index.ts';
import type { Cloth } from '../../src/cloth/index.ts';
import type { Make } from '../../src/make/index.ts';
import type { Envelope, Pattern } from '../../src/pattern/index.ts';
import { webWords } from '../../src/words/index.ts';
import { useDocuments } from '../app/desk-context.ts';
import { pathTo } from '../app/router.ts';
import { useSay, useSettings } from '../app/settings.tsx';
import { useWorkroomInfo } from '../app/workroom.ts';
import type { StoredDocument } from '../documents/api.ts';
import { type Waits, waitsFor } from '../makes/standing.ts';
import { useTight } from '../makes/useTight.ts';
import { Link } from '../parts/Link.tsx';
import { Page, Waiting } from '../parts/Page.tsx';
import { Trouble } from '../parts/Trouble.tsx';
import { useHousePatterns } from '../patterns/pattern-source.ts';
import { useLayHousePieces } from '../patterns/useLayHousePieces.ts';
import { useLayMake } from './useLayMake.ts';

const words = webWords.home;

/** What things are called, by the ids a make names them with, and what a make waits for. */
const useNames = () => {
  const wearers = useDocuments<Wearer>('wearer');
  const cloths = useDocuments<Cloth>('cloth');
  const patterns = useDocuments<Pattern>('pattern');
  const envelopes = useDocuments<Envelope>('envelope');
  const house = useHousePatterns();
  const names = new Map<string, string>();
  for (const asked of [wearers, cloths, patterns, envelopes]) {
    if (asked.state === 'here') for (const { id, body } of asked.value) names.set(id, body.name);
  }
  for (const pattern of house ?? []) names.set(`house:${pattern.id}`, pattern.name);
  const ofEnvelopes = envelopes.state === 'here' ? envelopes.value.map(({ id }) => id) : [];
  return {
    nameOf: (id: string) => names.get(id) ?? words.gone,
    waits: (make: Make, tight = '') =>
      waitsFor(make, ofEnvelopes.includes(make.pattern) ? 'envelope' : 'pieces', tight),
  };
};

interface InHandProps {
  readonly make: StoredDocument<Make>;
  readonly nameOf: (id: string) => string;
  readonly waitsOf: (make: Make, tight?: string) => Waits;
}

const InHand = ({ make, nameOf, waitsOf }: InHandProps) => {
  const say = useSay();
  const waits = waitsOf(make.body, useTight(make.body));
  useLayMake(make);
  const hash = waits.passage ? `#${waits.passage}` : '';
  return (
    <>
      <p>
        {say.words(words.of, { pattern: nameOf(make.body.pattern), wearer: nameOf(make.body.wearer) })},{' '}
        {make.body.cloth === null ? words.noCloth : say.words(words.inCloth, { cloth: nameOf(make.body.cloth) })}.
      </p>
      <p>
        {words.waits} <strong>{waits.words}</strong>.
      </p>
      <div className="verbs">
        <Link to={`${pathTo('make', make.id)}${hash}`} className="verb verb-next">
          {words.goOn}
        </Link>
        <Link to="/makes/new" className="verb">
          {words.start}
        </Link>
      </div>
    </>
  );
};

const Empty = () => {
  useLayHousePieces('home');
  return (
    <>
      <p>{words.empty}</p>
      <p>{words.emptyAbout}</p>
      <Link to="/makes/new" className="verb verb-next">
        {words.start}
      </Link>
    </>
  );
};

/** What is on the table now: the make in hand, what it waits for, and what else was begun. */
const Home = () => {
  const asked = useDocuments<Make>('make');
  const { settings } = useSettings();
  const { demo } = useWorkroomInfo();
  const { nameOf, waits } = useNames();
  if (asked.state === 'asking') return <Waiting what={webWords.shell.opening} />;
  if (asked.state === 'refused') return <Trouble words={asked.words} />;
  const makes = asked.value.toSorted((a, b) => (a.updatedAt < b.updatedAt ? 1 : -1));
  const inHand = makes.find((make) => make.id === settings.onTheTable) ?? makes[0];
  const others = makes.filter((make) => make !== inHand);
  return (
    <Page title={inHand?.body.name ?? words.title}>
      {inHand ? <InHand make={inHand} nameOf={nameOf} waitsOf={waits} /> : <Empty />}
      {others.length > 0 && (
        <section className="passage" aria-labelledby="others">
          <h2 id="others">{words.others}</h2>
          <ul className="plain-list">
            {others.map(({ id, body }) => (
              <li key={id}>
                <Link to={pathTo('make', id)}>{body.name}</Link>
                <p className="note">
                  {words.waits} {waits(body).words}.
                </p>
              </li>
            ))}
          </ul>
        </section>
      )}
      {demo && <p className="note">{words.demo}</p>}
    </Page>
  );
};

export default Home;
