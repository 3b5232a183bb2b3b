import type { Envelope } from '../../src/pattern/index.ts';
import { bad, formatPercent, good, parsePercent } from '../../src/units/index.ts';
import { envelopePageWords, webWords } from '../../src/words/index.ts';
import { locale, useSay } from '../app/settings.tsx';
import { Passage } from '../makes/Passages.tsx';
import { Choice } from '../parts/Choice.tsx';
import { LengthField } from '../parts/LengthField.tsx';
import { ReadField, WordsField } from '../parts/TextField.tsx';
import { cupLetter } from './cup-letter.ts';
import { DoubtWords } from './Doubts.tsx';
import { useEnvelope } from './envelope-context.ts';

const words = envelopePageWords.sheet;

const notionsOf = (envelope: Envelope, view: string | null): string =>
  envelope.notions
    .filter((one) => one.view === view)
    .map((one) => one.text)
    .join('\n');

/** A view's notions, a line each; an empty line is kept while she is typing the next. */
const withNotions = (envelope: Envelope, view: string | null, text: string): Envelope => ({
  ...envelope,
  notions: [
    ...envelope.notions.filter((one) => one.view !== view),
    ...(text === '' ? [] : text.split('\n').map((line) => ({ view, text: line.slice(0, 500) }))),
  ],
});

/** The lengths of this passage in their order, by what doubts them. */
const lengthFields = ['envelope.doubt-allowance', 'envelope.doubt-drafted-cup', 'envelope.doubt-drafted-stature'];

/** Puts the cursor into the field a doubt is about. */
const goToField = (code: string): void =>
  document.querySelectorAll<HTMLInputElement>('#sheet .field-with-unit input')[lengthFields.indexOf(code)]?.focus();

/** Notions, seam allowance, what it is drafted for, and the advice printed with it. */
export const SheetPassage = () => {
  const say = useSay();
  const { id, envelope, doubts, change } = useEnvelope();
  const set = (part: Partial<Envelope>, name: string) => change((before) => ({ ...before, ...part }), name);
  const setCloth = (part: Partial<Envelope['cloth']>, name: string) =>
    change((before) => ({ ...before, cloth: { ...before.cloth, ...part } }), name);
  const views = [null, ...envelope.views.map((view) => view.id)];
  const drafting = doubts.filter(({ where }) => where.chart === 'drafting');
  return (
    <Passage id="sheet" title={envelopePageWords.titles.sheet}>
      {views.map((view) => (
        <WordsField
          key={view ?? ''}
          label={
            view === null
              ? envelope.views.length === 0
                ? words.notions
                : words.notionsAll
              : say.words(words.notionsOf, {
                  view: envelope.views.find((one) => one.id === view)?.name ?? view,
                })
          }
          hint={view === null ? words.notionsHint : undefined}
          long={view === null}
          value={notionsOf(envelope, view)}
          onChange={(text) => change((before) => withNotions(before, view, text), `notions ${view}`)}
        />
      ))}
      <LengthField
        label={words.allowance}
        hint={words.allowanceHint}
        purpose="amount"
        place={`${id}/allowance`}
        mm={envelope.allowance}
        check={(mm) => (mm <= 100 ? good(mm) : bad('web.allowance-too-wide'))}
        onCommit={(allowance) => set({ allowance }, 'allowance')}
      />
      <LengthField
        label={words.cup}
        hint={words.cupHint}
        purpose="amount"
        place={`${id}/cup`}
        mm={envelope.draftedCup}
        unread={cupLetter}
        check={(mm) => (mm <= 300 ? good(mm) : bad('web.cup-too-large'))}
        onCommit={(draftedCup) => set({ draftedCup }, 'cup')}
      />
      <LengthField
        label={words.stature}
        hint={words.statureHint}
        purpose="stature"
        place={`${id}/stature`}
        mm={envelope.draftedStature}
        onCommit={(draftedStature) => set({ draftedStature }, 'stature')}
      />
      {drafting.map((doubt) => (
        <DoubtWords
          key={doubt.id}
          id={`drafting-${doubt.code.replace(/[^a-z]+/g, '-')}`}
          doubt={doubt}
          where={envelopePageWords.titles.sheet}
          onCorrect={() => goToField(doubt.code)}
        />
      ))}
      <h3>{words.cloth}</h3>
      <Choice
        legend={words.structure}
        name="structure"
        inline
        value={envelope.cloth.structure}
        options={(['woven', 'knit'] as const).map((value) => ({ value, label: webWords.cloths.structures[value] }))}
        onChange={(structure) =>
          setCloth(structure === 'woven' ? { structure, stretch: 0 } : { structure }, 'structure')
        }
      />
      {envelope.cloth.structure === 'knit' && (
        <ReadField
          label={words.stretch}
          hint={words.stretchHint}
          narrow
          place={`${id}/stretch`}
          shown={formatPercent(envelope.cloth.stretch, locale).replace(/\u00a0.*$/, '')}
          after="%"
          read={(text) => (text.trim() === '' ? good(0) : parsePercent(text))}
          onCommit={(stretch) => setCloth({ stretch }, 'stretch')}
        />
      )}
      <WordsField
        label={words.cloths}
        hint={words.clothsHint}
        value={envelope.cloth.cloths.join(', ')}
        onChange={(text) =>
          setCloth({ cloths: text === '' ? [] : text.split(/, ?/).map((cloth) => cloth.slice(0, 200)) }, 'cloths')
        }
      />
      <WordsField
        label={words.advice}
        hint={words.adviceHint}
        long
        value={envelope.advice}
        onChange={(advice) => set({ advice }, 'advice')}
      />
    </Passage>
  );
};
