import { useState } from 'react';
import type { Wearer } from '../../src/body/index.ts';
import type { Cloth } from '../../src/cloth/index.ts';
import type { Make } from '../../src/make/index.ts';
import type { Envelope, Pattern } from '../../src/pattern/index.ts';
import { webWords } from '../../src/words/index.ts';
import { useDesk, useDocuments } from '../app/desk-context.ts';
import { pathTo } from '../app/router.ts';
import { useSay } from '../app/settings.tsx';
import type { Entry } from '../documents/entry.ts';
import { Choice } from '../parts/Choice.tsx';
import { Link } from '../parts/Link.tsx';
import { Removal } from '../parts/Removal.tsx';
import { readName } from '../parts/read-name.ts';
import { Select } from '../parts/Select.tsx';
import { ReadField, WordsField } from '../parts/TextField.tsx';
import { useHousePatterns } from '../patterns/pattern-source.ts';
import { HouseChoices } from './HouseChoices.tsx';

const words = webWords.make;

/** What the make is of, in a sentence, and changing it. */
export const MakeOf = ({ entry }: { entry: Entry<Make> }) => {
  const desk = useDesk();
  const say = useSay();
  const [open, setOpen] = useState(false);
  const wearers = useDocuments<Wearer>('wearer');
  const cloths = useDocuments<Cloth>('cloth');
  const brought = useDocuments<Pattern>('pattern');
  const envelopes = useDocuments<Envelope>('envelope');
  const house = useHousePatterns();
  const { body: make, id } = entry;
  const change = (part: Partial<Make>, name: string) => desk.edit<Make>(id, (before) => ({ ...before, ...part }), name);

  const listed = [
    ...(wearers.state === 'here' ? wearers.value : []),
    ...(cloths.state === 'here' ? cloths.value : []),
    ...(brought.state === 'here' ? brought.value : []),
    ...(envelopes.state === 'here' ? envelopes.value : []),
  ].map((one) => ({ value: one.id, label: one.body.name }));
  const ofEnvelope = envelopes.state === 'here' && envelopes.value.some((one) => one.id === make.pattern);
  const housed = (house ?? []).map((one) => ({ value: `house:${one.id}`, label: one.name }));
  const nameOf = (of: string) => [...listed, ...housed].find((one) => one.value === of)?.label ?? webWords.home.gone;
  const among = (kind: typeof wearers | typeof cloths | typeof brought | typeof envelopes) =>
    kind.state === 'here' ? kind.value.map((one) => ({ value: one.id, label: one.body.name })) : [];
  const withOwn = (options: readonly { value: string; label: string }[], own: string) =>
    options.some((one) => one.value === own) ? options : [{ value: own, label: nameOf(own) }, ...options];

  return (
    <div className="stack">
      <p>
        <Link to={pathTo(ofEnvelope ? 'envelope' : 'pattern', make.pattern)}>{nameOf(make.pattern)}</Link> {words.for}{' '}
        <Link to={pathTo('wearer', make.wearer)}>{nameOf(make.wearer)}</Link>,{' '}
        {make.cloth === null ? (
          webWords.home.noCloth
        ) : (
          <>
            {words.in} <Link to={pathTo('cloth', make.cloth)}>{nameOf(make.cloth)}</Link>
          </>
        )}
        .
      </p>
      <button type="button" className="verb verb-quiet" aria-expanded={open} onClick={() => setOpen(!open)}>
        {open ? words.changeDone : words.change}
      </button>
      {open && (
        <div className="stack">
          <ReadField
            label={words.name}
            place={`${id}/name`}
            shown={make.name}
            read={readName}
            onCommit={(name) => change({ name }, 'name')}
          />
          <Select
            label={webWords.newMake.wearer}
            value={make.wearer}
            options={withOwn(among(wearers), make.wearer)}
            onChange={(wearer) => change({ wearer }, 'wearer')}
          />
          <Select
            label={webWords.newMake.pattern}
            hint={words.patternHint}
            value={make.pattern}
            options={withOwn([...housed, ...among(brought), ...among(envelopes)], make.pattern)}
            onChange={(pattern) =>
              desk.edit<Make>(
                id,
                ({ view: _view, cup: _cup, ...rest }) => ({ ...rest, pattern, size: null, steps: [] }),
                'pattern',
              )
            }
          />
          <HouseChoices make={make} edit={(apply, name) => desk.edit<Make>(id, apply, name)} />
          <Select
            label={webWords.newMake.cloth}
            value={make.cloth ?? ''}
            options={[
              { value: '', label: webWords.newMake.clothLater },
              ...(make.cloth ? withOwn(among(cloths), make.cloth) : among(cloths)),
            ]}
            onChange={(cloth) => change({ cloth: cloth || null }, 'cloth')}
          />
          <Choice
            legend={words.state}
            name="state"
            value={make.state}
            options={(['planned', 'cut', 'sewn', 'worn', 'set-aside'] as const).map((value) => ({
              value,
              label: words.states[value],
            }))}
            onChange={(state) => change({ state }, 'state')}
          />
          <WordsField label={words.note} long value={make.note} onChange={(note) => change({ note }, 'note')} />
          <Removal id={id} name={say.words(make.name)} verb={words.remove} back="/" />
        </div>
      )}
    </div>
  );
};
