import { useMemo, useState } from 'react';
import {
  askedFirst,
  describeMeasure,
  doubtfulMeasures,
  latestMeasures,
  type MeasureId,
  type MeasureSet,
  measureGroups,
  type Wearer,
} from '../../src/body/index.ts';
import { bad, good, type Result } from '../../src/units/index.ts';
import { bodyWords, webWords } from '../../src/words/index.ts';
import { useDesk, useDocument } from '../app/desk-context.ts';
import { freshId, newSet, today } from '../app/documents.ts';
import { useSay } from '../app/settings.tsx';
import type { Entry } from '../documents/entry.ts';
import { Choice } from '../parts/Choice.tsx';
import { Link } from '../parts/Link.tsx';
import { Page, Waiting } from '../parts/Page.tsx';
import { Removal } from '../parts/Removal.tsx';
import { readName } from '../parts/read-name.ts';
import { Select } from '../parts/Select.tsx';
import { Standing } from '../parts/Standing.tsx';
import { ReadField, WordsField } from '../parts/TextField.tsx';
import { Trouble } from '../parts/Trouble.tsx';
import { MeasureRow } from './MeasureRow.tsx';
import { useLayFigure } from './useLayFigure.ts';

const words = webWords.wearers;

const readDate = (text: string): Result<string> => {
  const written = text.trim();
  const day = /^\d{4}-\d{2}-\d{2}$/.test(written) ? new Date(`${written}T12:00:00Z`) : null;
  return day && !Number.isNaN(day.valueOf()) && day.toISOString().startsWith(written)
    ? good(written)
    : bad('web.not-a-date', { text });
};

const Measured = ({ entry }: { entry: Entry<Wearer> }) => {
  const desk = useDesk();
  const say = useSay();
  const wearer = entry.body;
  const sets = wearer.sets.toSorted((a, b) => (a.date < b.date ? 1 : a.date > b.date ? -1 : 0));
  const [chosen, setChosen] = useState<string | null>(null);
  const [focused, setFocused] = useState<MeasureId | null>(null);
  const set = sets.find((one) => one.id === chosen) ?? sets[0];
  const change = (apply: (wearer: Wearer) => Wearer, name: string) => desk.edit<Wearer>(entry.id, apply, name);
  const changeSet = (id: string, apply: (set: MeasureSet) => MeasureSet, name: string) =>
    change((before) => ({ ...before, sets: before.sets.map((one) => (one.id === id ? apply(one) : one)) }), name);

  const measures = useMemo(() => latestMeasures(wearer, set?.date), [wearer, set?.date]);
  const doubts = useMemo(
    () => (wearer.comparedWith ? doubtfulMeasures(measures, wearer.comparedWith) : []),
    [measures, wearer.comparedWith],
  );
  useLayFigure(measures, wearer.comparedWith ?? 'women', focused);

  const row = (measure: MeasureId) =>
    set && (
      <MeasureRow
        key={`${set.id} ${measure}`}
        wearer={entry.id}
        set={set}
        measure={measure}
        doubt={doubts.find((doubt) => doubt.measure === measure)}
        onChange={(apply, name) => changeSet(set.id, apply, name)}
        onFocus={setFocused}
      />
    );

  const again = () => {
    const id = freshId(
      'm',
      wearer.sets.map((one) => one.id),
    );
    change((before) => ({ ...before, sets: [...before.sets, newSet(id, today(), set?.waistAt)] }), `set ${id}`);
    setChosen(id);
  };

  return (
    <>
      <section className="passage" aria-labelledby="who">
        <h2 id="who">{words.who}</h2>
        <ReadField
          label={words.name}
          place={`${entry.id}/name`}
          shown={wearer.name}
          read={readName}
          onCommit={(name) => change((before) => ({ ...before, name }), 'name')}
        />
        <Choice
          legend={words.compared}
          name="compared"
          inline
          value={wearer.comparedWith ?? 'neither'}
          options={[
            { value: 'women', label: words.women },
            { value: 'men', label: words.men },
            { value: 'neither', label: words.neither },
          ]}
          onChange={(survey) =>
            change((before) => ({ ...before, comparedWith: survey === 'neither' ? null : survey }), 'compared')
          }
        />
        <p className="hint">{words.comparedAbout}</p>
      </section>
      <section className="passage" aria-labelledby="set">
        <h2 id="set">{words.set}</h2>
        {sets.length > 1 && set && (
          <Select
            label={words.sets}
            value={set.id}
            options={sets.map((one) => ({ value: one.id, label: say.date(one.date) }))}
            onChange={setChosen}
          />
        )}
        {set && (
          <>
            <ReadField
              key={`${set.id} date`}
              label={words.date}
              place={`${entry.id}/${set.id}/date`}
              shown={set.date}
              narrow
              after={say.date(set.date)}
              read={readDate}
              onCommit={(date) => changeSet(set.id, (before) => ({ ...before, date }), `${set.id} date`)}
            />
            <Choice
              legend={words.waistAt}
              name="waist-at"
              value={set.waistAt}
              options={(['waistband', 'narrowest', 'midway'] as const).map((value) => ({
                value,
                label: bodyWords.waistAt[value],
              }))}
              onChange={(waistAt) => changeSet(set.id, (before) => ({ ...before, waistAt }), `${set.id} waist`)}
            />
          </>
        )}
        <button type="button" className="verb" onClick={again}>
          {words.again}
        </button>
        <p className="hint">{words.againAbout}</p>
        <p className="hint">{bodyWords.before}</p>
        <p className="hint">{bodyWords.wearerCare}</p>
      </section>
      {set && (
        <section className="passage" aria-labelledby="starred">
          <h2 id="starred">{words.starred}</h2>
          <p className="hint">{words.starredAbout}</p>
          {askedFirst.map(row)}
        </section>
      )}
      {set &&
        measureGroups.map((group) => {
          const rest = group.measures.filter((measure) => !describeMeasure(measure).asked);
          return rest.length === 0 ? null : (
            <section className="passage" key={group.id} aria-labelledby={`group-${group.id}`}>
              <h2 id={`group-${group.id}`}>{group.name}</h2>
              {rest.map(row)}
            </section>
          );
        })}
      <section className="passage" aria-labelledby="note">
        <h2 id="note">{words.note}</h2>
        <WordsField
          label={words.note}
          hint={words.noteHint}
          long
          value={wearer.note}
          onChange={(note) => change((before) => ({ ...before, note }), 'note')}
        />
      </section>
    </>
  );
};

const WearerPage = ({ id }: { id: string }) => {
  const asked = useDocument<Wearer>(id);
  const say = useSay();
  if (asked.state === 'asking') return <Waiting what={webWords.shell.opening} />;
  if (asked.state === 'refused') return <Trouble words={asked.words} />;
  const { body } = asked.value;
  return (
    <Page title={body.name}>
      <Standing entry={asked.value} />
      <div className="verbs">
        <Link to={`/makes/new?wearer=${encodeURIComponent(id)}`} className="verb verb-next">
          {say.words(words.makeFor, { name: body.name })}
        </Link>
      </div>
      <Measured entry={asked.value} />
      <Removal id={id} name={body.name} verb={words.remove} back="/wearers" />
    </Page>
  );
};

export default WearerPage;
