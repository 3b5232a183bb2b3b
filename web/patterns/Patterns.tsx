import { useId, useState } from 'react';
import type { HousePattern } from '../../src/drafting/index.ts';
import { type Pattern, readPatternText } from '../../src/pattern/index.ts';
import { type ProblemWords, problemWords, webHouseWords, webWords } from '../../src/words/index.ts';
import { useDesk, useDocuments } from '../app/desk-context.ts';
import { goTo, pathTo } from '../app/router.ts';
import { locale, useSay } from '../app/settings.tsx';
import { EnvelopeList } from '../envelopes/EnvelopeList.tsx';
import { Link } from '../parts/Link.tsx';
import { Page, Waiting } from '../parts/Page.tsx';
import { Trouble } from '../parts/Trouble.tsx';
import { useHousePatterns } from './pattern-source.ts';
import { useLayCollection } from './useLayCollection.ts';

const words = webWords.patterns;

/** Bytes a pattern file may have. Read before the file is, so that a slip of the hand does not stop the page. */
const mostBytes = 20e6;

const BringIn = () => {
  const desk = useDesk();
  const say = useSay();
  const id = useId();
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<ProblemWords | null>(null);

  const bring = async (file: File) => {
    if (file.size > mostBytes) {
      setTrouble(
        say.problem({ code: 'web.file-too-large', values: { name: file.name, size: Math.round(file.size / 1e6) } }),
      );
      return;
    }
    const read = readPatternText(await file.text());
    if (!read.ok) {
      setTrouble(say.problem(read.problem));
      return;
    }
    const { writePattern } = await import('../../src/pattern/index.ts');
    const answer = await desk.create('pattern', writePattern(read.value));
    if (answer.kind === 'answer') goTo(pathTo('pattern', answer.value.id));
    else setTrouble(answer.kind === 'refusal' ? answer.words : (problemWords['web.silent'] ?? null));
  };

  const choose = async (file: File | undefined) => {
    if (!file) return;
    setTrouble(null);
    setBusy(true);
    await bring(file);
    setBusy(false);
  };
  return (
    <section className="passage" aria-labelledby={`${id}-h`}>
      <h2 id={`${id}-h`}>{words.bringIn}</h2>
      <p className="hint">{words.bringInAbout}</p>
      {trouble && <Trouble words={trouble} />}
      <div className="field">
        <label htmlFor={id}>{words.file}</label>
        <input
          id={id}
          type="file"
          accept=".json,application/json"
          onChange={(event) => {
            void choose(event.target.files?.[0]);
            event.target.value = '';
          }}
        />
      </div>
      {busy && <Waiting what={words.reading} />}
    </section>
  );
};

/** One of the house's patterns: what it is, its sizes, its views and cups. */
const CollectionItem = ({ pattern }: { pattern: HousePattern }) => {
  const say = useSay();
  const { id, name, about, chart, views, cups } = pattern;
  const sizes = say.words(webHouseWords.forWhom[pattern.for], {
    first: chart[0]?.id ?? '',
    last: chart.at(-1)?.id ?? '',
  });
  const listed = new Intl.ListFormat(locale, { type: 'conjunction' }).format(
    views.map((view) => view.name.toLowerCase()),
  );
  const facts = [
    sizes,
    ...(views.length > 1 ? [say.words(webHouseWords.views, { views: listed })] : []),
    ...(cups.length > 0
      ? [
          say.words(webHouseWords.cups, {
            least: { mm: Math.min(...cups), purpose: 'measure' },
            most: { mm: Math.max(...cups), purpose: 'measure' },
          }),
        ]
      : []),
  ];
  return (
    <li>
      <Link to={pathTo('pattern', `house:${id}`)}>{name}</Link>
      <p>{about}</p>
      <p className="note">{facts.join('. ')}.</p>
    </li>
  );
};

const Patterns = () => {
  const house = useHousePatterns();
  const asked = useDocuments<Pattern>('pattern');
  useLayCollection(house);
  return (
    <Page title={words.title}>
      <section className="passage" aria-labelledby="house">
        <h2 id="house">{webHouseWords.collection}</h2>
        <p className="hint">{webHouseWords.collectionAbout}</p>
        {!house && <Waiting what={webWords.shell.opening} />}
        <ul className="plain-list">
          {house?.map((pattern) => (
            <CollectionItem key={pattern.id} pattern={pattern} />
          ))}
        </ul>
      </section>
      <section className="passage" aria-labelledby="brought">
        <h2 id="brought">{words.brought}</h2>
        {asked.state === 'asking' && <Waiting what={webWords.shell.opening} />}
        {asked.state === 'refused' && <Trouble words={asked.words} />}
        {asked.state === 'here' && asked.value.length === 0 && <p>{words.noneBrought}</p>}
        {asked.state === 'here' && asked.value.length > 0 && (
          <ul className="plain-list">
            {asked.value.map(({ id, body }) => (
              <li key={id}>
                <Link to={pathTo('pattern', id)}>{body.name}</Link>
                <p>{body.about}</p>
              </li>
            ))}
          </ul>
        )}
      </section>
      <EnvelopeList />
      <BringIn />
    </Page>
  );
};

export default Patterns;
