import { useId } from 'react';
import { type Cloth, usualShrinkage } from '../../src/cloth/index.ts';
import {
  bad,
  formatPercent,
  formatWeight,
  good,
  parsePercent,
  parseWeight,
  type Result,
} from '../../src/units/index.ts';
import { clothWords, webWords } from '../../src/words/index.ts';
import { useDesk, useDocument } from '../app/desk-context.ts';
import { locale, useSay } from '../app/settings.tsx';
import type { Entry } from '../documents/entry.ts';
import { Choice } from '../parts/Choice.tsx';
import { LengthField } from '../parts/LengthField.tsx';
import { Page, Waiting } from '../parts/Page.tsx';
import { Removal } from '../parts/Removal.tsx';
import { readName } from '../parts/read-name.ts';
import { Standing } from '../parts/Standing.tsx';
import { ReadField, WordsField } from '../parts/TextField.tsx';
import { Trouble } from '../parts/Trouble.tsx';
import { shares } from './shares.ts';
import { useLaySwatch } from './useLaySwatch.ts';

const words = webWords.cloths;

const widthBounds = { low: 50, high: 5000 };

const checkWidth = (mm: number): Result<number> =>
  mm >= widthBounds.low && mm <= widthBounds.high
    ? good(mm)
    : bad('web.cloth-width', { low: { mm: widthBounds.low }, high: { mm: widthBounds.high } });

/** A share of at most `most`, as a fraction. */
const readShare =
  (most: number) =>
  (text: string): Result<number> => {
    if (text.trim() === '') return good(0);
    const share = parsePercent(text);
    if (!share.ok || share.value <= most) return share;
    return bad('web.share-too-large', { text, most: `${most * 100} %` });
  };

const shownShare = (share: number): string => formatPercent(share, locale).replace(/\s*%$/, '');

const Fields = ({ entry }: { entry: Entry<Cloth> }) => {
  const desk = useDesk();
  const say = useSay();
  const cloth = entry.body;
  const colourId = useId();
  const change = (part: Partial<Cloth>, name: string) =>
    desk.edit<Cloth>(entry.id, (before) => ({ ...before, ...part }), name);
  useLaySwatch(cloth);
  const usual = usualShrinkage(cloth);

  return (
    <>
      <section className="passage" aria-labelledby="cloth-what">
        <h2 id="cloth-what">{words.what}</h2>
        <ReadField
          label={words.name}
          place={`${entry.id}/name`}
          shown={cloth.name}
          read={readName}
          onCommit={(name) => change({ name }, 'name')}
        />
        <div className="field">
          <label htmlFor={colourId}>{words.colour}</label>
          <input
            id={colourId}
            type="color"
            className="colour-well"
            value={/^#[0-9a-f]{6}$/i.test(cloth.colour) ? cloth.colour : '#8d9db0'}
            onChange={(event) => change({ colour: event.target.value }, 'colour')}
          />
        </div>
        <Choice
          legend={words.structure}
          name="structure"
          inline
          value={cloth.structure}
          options={(['woven', 'knit'] as const).map((value) => ({ value, label: words.structures[value] }))}
          onChange={(structure) => change({ structure }, 'structure')}
        />
        <WordsField
          label={words.fibres}
          hint={words.fibresHint}
          value={cloth.fibres}
          onChange={(fibres) => change({ fibres: fibres.slice(0, 500) }, 'fibres')}
        />
        <ReadField<number | null>
          label={words.weight}
          hint={words.weightHint}
          narrow
          place={`${entry.id}/weight`}
          shown={cloth.weight === null ? '' : formatWeight(cloth.weight, say.unit, locale).replace(/\u00a0.*$/, '')}
          after={say.unit === 'cm' ? 'g/m²' : 'oz/yd²'}
          read={(text) => {
            if (text.trim() === '') return good(null);
            const weight = parseWeight(text, say.unit);
            return weight.ok && weight.value < 5 ? bad('web.cloth-too-light', { text }) : weight;
          }}
          onCommit={(weight) => change({ weight }, 'weight')}
        />
      </section>
      <section className="passage" aria-labelledby="cloth-size">
        <h2 id="cloth-size">{words.size}</h2>
        <LengthField
          label={words.width}
          hint={words.widthHint}
          place={`${entry.id}/width`}
          mm={cloth.width}
          check={checkWidth}
          onCommit={(width) => width !== null && change({ width }, 'width')}
        />
        <LengthField
          label={words.length}
          hint={words.lengthHint}
          purpose="cloth"
          place={`${entry.id}/length`}
          mm={cloth.length}
          onCommit={(length) => change({ length }, 'length')}
        />
        <label className="check">
          <input
            type="checkbox"
            checked={cloth.oneWay}
            onChange={(event) => change({ oneWay: event.target.checked }, 'one way')}
          />
          {words.oneWay}
        </label>
      </section>
      <section className="passage" aria-labelledby="cloth-wash">
        <h2 id="cloth-wash">{words.wash}</h2>
        <label className="check">
          <input
            type="checkbox"
            checked={cloth.washed}
            onChange={(event) =>
              change(
                event.target.checked ? { washed: true, shrinkAlong: 0, shrinkAcross: 0 } : { washed: false },
                'washed',
              )
            }
          />
          {words.washed}
        </label>
        {!cloth.washed && (
          <>
            <p className="hint">{words.shrinkHint}</p>
            {cloth.shrinkAlong === 0 && (
              <p className="field-trouble">
                {clothWords.noShrinkage} {usual ? say.words(clothWords.usualShrinkage[usual.of], shares(usual)) : ''}{' '}
                {clothWords.enterShrinkage}
              </p>
            )}
            <ReadField
              label={words.shrinkAlong}
              place={`${entry.id}/shrink-along`}
              narrow
              after="%"
              shown={shownShare(cloth.shrinkAlong)}
              read={readShare(0.5)}
              onCommit={(shrinkAlong) => change({ shrinkAlong }, 'shrink along')}
            />
            <ReadField
              label={words.shrinkAcross}
              place={`${entry.id}/shrink-across`}
              narrow
              after="%"
              shown={shownShare(cloth.shrinkAcross)}
              read={readShare(0.5)}
              onCommit={(shrinkAcross) => change({ shrinkAcross }, 'shrink across')}
            />
          </>
        )}
      </section>
      <section className="passage" aria-labelledby="cloth-stretch">
        <h2 id="cloth-stretch">{words.stretch}</h2>
        <p className="hint">{words.stretchHint}</p>
        <ReadField
          label={words.stretchAcross}
          place={`${entry.id}/stretch-across`}
          narrow
          after="%"
          shown={shownShare(cloth.stretchAcross)}
          read={readShare(3)}
          onCommit={(stretchAcross) => change({ stretchAcross }, 'stretch across')}
        />
        <ReadField
          label={words.stretchAlong}
          place={`${entry.id}/stretch-along`}
          narrow
          after="%"
          shown={shownShare(cloth.stretchAlong)}
          read={readShare(3)}
          onCommit={(stretchAlong) => change({ stretchAlong }, 'stretch along')}
        />
      </section>
      <section className="passage" aria-labelledby="cloth-from">
        <h2 id="cloth-from">{words.where}</h2>
        <WordsField
          label={words.from}
          value={cloth.from}
          onChange={(from) => change({ from: from.slice(0, 500) }, 'from')}
        />
        <Choice
          legend={words.terms}
          name="terms"
          value={cloth.terms}
          options={(['bought', 'given', 'given-in-return', 'unknown'] as const).map((value) => ({
            value,
            label: words.termsNames[value],
          }))}
          onChange={(terms) => change({ terms }, 'terms')}
        />
        <WordsField label={words.note} long value={cloth.note} onChange={(note) => change({ note }, 'note')} />
      </section>
    </>
  );
};

const ClothPage = ({ id }: { id: string }) => {
  const asked = useDocument<Cloth>(id);
  if (asked.state === 'asking') return <Waiting what={webWords.shell.opening} />;
  if (asked.state === 'refused') return <Trouble words={asked.words} />;
  return (
    <Page title={asked.value.body.name}>
      <Standing entry={asked.value} />
      <Fields entry={asked.value} />
      <Removal id={id} name={asked.value.body.name} verb={words.remove} back="/cloth" />
    </Page>
  );
};

export default ClothPage;
