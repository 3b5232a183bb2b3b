import { type FormEvent, useId, useState } from 'react';
import type { Wearer } from '../../src/body/index.ts';
import type { Cloth } from '../../src/cloth/index.ts';
import type { Envelope, Pattern } from '../../src/pattern/index.ts';
import { type ProblemWords, problemWords, webHouseWords, webWords } from '../../src/words/index.ts';
import { useDesk, useDocuments } from '../app/desk-context.ts';
import { newMake } from '../app/documents.ts';
import { goTo, pathTo } from '../app/router.ts';
import { useSay, useSettings } from '../app/settings.tsx';
import { Link } from '../parts/Link.tsx';
import { Page, Waiting } from '../parts/Page.tsx';
import { Select } from '../parts/Select.tsx';
import { Trouble } from '../parts/Trouble.tsx';
import { useHousePatterns } from '../patterns/pattern-source.ts';
import { useLayHousePieces } from '../patterns/useLayHousePieces.ts';

const words = webWords.newMake;

const asked = (name: string): string => new URLSearchParams(window.location.search).get(name) ?? '';

interface Named {
  readonly id: string;
  readonly name: string;
}

/** A pattern with the views it can be made in, its first one first; none where it has only one. */
interface NamedPattern extends Named {
  readonly views: readonly Named[];
}

interface FormProps {
  readonly wearers: readonly Named[];
  readonly patterns: readonly NamedPattern[];
  readonly cloths: readonly Named[];
}

const options = (things: readonly Named[]) => things.map(({ id, name }) => ({ value: id, label: name }));
const among = (things: readonly Named[], id: string): string => (things.some((one) => one.id === id) ? id : '');

const StartForm = ({ wearers, patterns, cloths }: FormProps) => {
  const desk = useDesk();
  const say = useSay();
  const { settings } = useSettings();
  const nameId = useId();
  const [wearer, setWearer] = useState(among(wearers, asked('wearer')) || (wearers[0]?.id ?? ''));
  const [pattern, setPattern] = useState(among(patterns, asked('pattern')) || (patterns[0]?.id ?? ''));
  const [view, setView] = useState(asked('view'));
  const [cloth, setCloth] = useState(among(cloths, asked('cloth')));
  const [name, setName] = useState<string | null>(null);
  const [trouble, setTrouble] = useState<ProblemWords | null>(null);
  const nameOf = (things: readonly Named[], id: string) => things.find((one) => one.id === id)?.name ?? '';
  const views = patterns.find((one) => one.id === pattern)?.views ?? [];
  const chosenView = views.some((one) => one.id === view) ? view : (views[0]?.id ?? '');
  const suggested = say.words(words.nameSuggested, {
    pattern: nameOf(patterns, pattern),
    wearer: nameOf(wearers, wearer),
  });

  const start = async (event: FormEvent) => {
    event.preventDefault();
    const called = (name ?? suggested).trim() || suggested;
    const answer = await desk.create(
      'make',
      newMake(called, wearer, pattern, cloth || null, settings.paper, chosenView),
    );
    if (answer.kind === 'answer') goTo(pathTo('make', answer.value.id));
    else setTrouble(answer.kind === 'refusal' ? answer.words : (problemWords['web.silent'] ?? null));
  };
  return (
    <form onSubmit={(event) => void start(event)} className="stack" aria-label={words.title}>
      {trouble && <Trouble words={trouble} />}
      <Select label={words.wearer} value={wearer} options={options(wearers)} onChange={setWearer} />
      <Select label={words.pattern} value={pattern} options={options(patterns)} onChange={setPattern} />
      {views.length > 1 && (
        <Select label={webHouseWords.view} value={chosenView} options={options(views)} onChange={setView} />
      )}
      <Select
        label={words.cloth}
        hint={words.clothHint}
        value={cloth}
        options={[{ value: '', label: words.clothLater }, ...options(cloths)]}
        onChange={setCloth}
      />
      <div className="field">
        <label htmlFor={nameId}>{words.name}</label>
        <input
          id={nameId}
          type="text"
          autoComplete="off"
          value={name ?? suggested}
          onChange={(event) => setName(event.target.value)}
        />
      </div>
      <button type="submit" className="verb verb-next">
        {words.start}
      </button>
    </form>
  );
};

/** Wearer, pattern and cloth brought together. */
const NewMake = () => {
  const wearers = useDocuments<Wearer>('wearer');
  const cloths = useDocuments<Cloth>('cloth');
  const brought = useDocuments<Pattern>('pattern');
  const envelopes = useDocuments<Envelope>('envelope');
  const house = useHousePatterns();
  useLayHousePieces('new make');
  const refused = [wearers, cloths, brought, envelopes].find((one) => one.state === 'refused');
  const ready =
    wearers.state === 'here' &&
    cloths.state === 'here' &&
    brought.state === 'here' &&
    envelopes.state === 'here' &&
    house;
  return (
    <Page title={words.title}>
      <p>{words.about}</p>
      {refused?.state === 'refused' && <Trouble words={refused.words} />}
      {!ready && !refused && <Waiting what={webWords.shell.opening} />}
      {ready && wearers.value.length === 0 && (
        <>
          <p>{words.noWearer}</p>
          <Link to="/wearers" className="verb verb-next">
            {webWords.wearers.keep}
          </Link>
        </>
      )}
      {ready && wearers.value.length > 0 && (
        <StartForm
          wearers={wearers.value.map(({ id, body }) => ({ id, name: body.name }))}
          cloths={cloths.value.map(({ id, body }) => ({ id, name: body.name }))}
          patterns={[
            ...house.map(({ id, name, views }) => ({ id: `house:${id}`, name, views })),
            ...brought.value.map(({ id, body }) => ({ id, name: body.name, views: [] })),
            ...envelopes.value.map(({ id, body }) => ({ id, name: body.name, views: body.views })),
          ]}
        />
      )}
    </Page>
  );
};

export default NewMake;
