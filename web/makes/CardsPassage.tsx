import { type RefObject, useEffect, useMemo, useRef, useState } from 'react';
import { type AmountParameter, alterationCard, type Card, cardCatalogue, sayCard } from '../../src/alter/index.ts';
import { drawCard } from '../../src/draw/index.ts';
import type { Make } from '../../src/make/index.ts';
import type { AlterationStep, Envelope } from '../../src/pattern/index.ts';
import { bad, good, type Problem, type Result } from '../../src/units/index.ts';
import { cardWords, envelopePageWords, webWords } from '../../src/words/index.ts';
import { locale, useSay, useSettings } from '../app/settings.tsx';
import { Choice } from '../parts/Choice.tsx';
import { LengthField } from '../parts/LengthField.tsx';
import { Select } from '../parts/Select.tsx';
import { Trouble } from '../parts/Trouble.tsx';
import { type Laid, useLay } from '../parts/table/laid.ts';
import { useNarrow } from '../parts/useNarrow.ts';
import { alterationAbout, alterationName, choiceName, parameterName } from './alteration-words.ts';
import { type CardPaper, cardPaper, cardPapers, sayPrinted } from './cards-print.ts';
import { Passage, useCurrentPassage } from './Passages.tsx';
import { addStep, changeStep, removeStep, setParam } from './steps.ts';

const words = envelopePageWords.make;
const listWords = webWords.make.alterations;

/** What the cards of a make are of. */
export interface CardsInHand {
  readonly id: string;
  readonly make: Make;
  readonly envelope: Envelope;
  readonly view: string | null;
  readonly size: string;
  readonly change: (change: (make: Make) => Make, name: string) => void;
}

export interface StepCard {
  readonly step: AlterationStep;
  readonly card: Result<Card>;
}

/** The card of every step of the list, in its order; one that is left out has its card too, but is not printed. */
export const cardsOf = ({ make, envelope, view, size }: Pick<CardsInHand, 'make' | 'envelope' | 'view' | 'size'>) =>
  make.steps.map((step, place): StepCard => {
    const earlier = make.steps.slice(0, place).filter(({ on }) => on);
    return { step, card: alterationCard({ envelope, view, size, step, earlier }) };
  });

const Amount = ({ of, step }: { of: CardsInHand; step: AlterationStep }) => {
  const say = useSay();
  const alteration = cardCatalogue(of.envelope, of.size).find(({ id }) => id === step.alteration);
  if (!alteration) return null;
  const set = (name: string, value: number | string) =>
    of.change((before) => setParam(before, step.id, name, value), `${step.id} ${name}`);
  const within = (parameter: AmountParameter) => (mm: number) =>
    mm >= parameter.min && mm <= parameter.max
      ? good(mm)
      : bad('web.amount-outside', {
          least: { mm: parameter.min, purpose: 'amount' },
          most: { mm: parameter.max, purpose: 'amount' },
        });
  return (
    <div className="amount-fields">
      {Object.entries(alteration.params).map(([name, parameter]) =>
        parameter.unit === 'choice' ? (
          <Select
            key={name}
            label={parameterName(name)}
            value={String(step.params[name] ?? parameter.usual)}
            options={parameter.choices.map((choice) => ({ value: choice, label: choiceName(choice) }))}
            onChange={(choice) => set(name, choice)}
          />
        ) : (
          <LengthField
            key={name}
            label={alteration.id.endsWith('-bust') ? listWords.eachFront : listWords.eachPiece}
            place={`${of.id}/${step.id}/${name}`}
            purpose="amount"
            signed={parameter.min < 0}
            mm={typeof step.params[name] === 'number' ? step.params[name] : null}
            check={within(parameter)}
            onCommit={(mm) => mm !== null && set(name, mm)}
          />
        ),
      )}
      <p className="unseen">{say.words(alterationAbout(alteration.id))}</p>
    </div>
  );
};

const Sentences = ({ head, list, ordered = false }: { head: string; list: readonly string[]; ordered?: boolean }) => {
  if (list.length === 0) return null;
  const items = list.map((sentence) => <li key={sentence}>{sentence}</li>);
  return (
    <>
      <h4>{head}</h4>
      {ordered ? <ol>{items}</ol> : <ul>{items}</ul>}
    </>
  );
};

/** A card in words: what to do, and under a fold what follows from it. */
const CardWords = ({ card }: { card: Card }) => {
  const say = useSay();
  const said = useMemo(() => sayCard(card, say.unit, locale), [card, say.unit]);
  const { headings, columns } = cardWords;
  return (
    <div className="card-words">
      <p>{said.purpose}</p>
      {said.amounts.map((amount) => (
        <p className="amount-said" key={amount}>
          {amount}
        </p>
      ))}
      <Sentences head={headings.where} list={said.where} />
      <Sentences head={headings.steps} list={said.steps} ordered />
      <Sentences head={headings.cautions} list={said.cautions} />
      <details>
        <summary>{words.cardRest}</summary>
        <Sentences head={headings.follows} list={said.follows} />
        <Sentences head={headings.holds} list={said.holds} />
        {said.finished.length > 0 && (
          <table>
            <caption>{headings.finished}</caption>
            <thead>
              <tr>
                <th scope="col">
                  <span className="unseen">{listWords.level}</span>
                </th>
                <th scope="col" className="number">
                  {columns.before}
                </th>
                <th scope="col" className="number">
                  {columns.change}
                </th>
                <th scope="col" className="number">
                  {columns.after}
                </th>
              </tr>
            </thead>
            <tbody>
              {said.finished.map((row) => (
                <tr key={row.name}>
                  <th scope="row">{row.name}</th>
                  <td className="number">{row.before}</td>
                  <td className="number">{row.change}</td>
                  <td className="number">{row.after}</td>
                </tr>
              ))}
            </tbody>
          </table>
        )}
        <Sentences head={headings.cloth} list={said.cloth} />
        <p>{said.clothSaid}</p>
      </details>
      <p className="note">{said.drawing}</p>
    </div>
  );
};

type PrintState =
  | { readonly state: 'idle' | 'printing' }
  | { readonly state: 'printed'; readonly address: string; readonly pages: number }
  | { readonly state: 'refused'; readonly problem: Problem };

/** The cards that are carried out, as one PDF. A print of what has been changed since is let go of. */
const PrintCards = ({ of, cards }: { of: CardsInHand; cards: readonly Card[] }) => {
  const say = useSay();
  const [print, setPrint] = useState<PrintState>({ state: 'idle' });
  const { settings } = useSettings();
  const [chosenPaper, setPaper] = useState<CardPaper | null>(null);
  const paper = cardPaper(chosenPaper, settings.paper);
  // A print of other cards, or on another paper, is not what is wanted now.
  const wanted = useMemo(() => ({ cards, paper }), [cards, paper]);
  const address = useRef<string | null>(null);
  const latest = useRef(wanted);
  useEffect(() => {
    latest.current = wanted;
    setPrint({ state: 'idle' });
    return () => {
      if (address.current) URL.revokeObjectURL(address.current);
      address.current = null;
    };
  }, [wanted]);
  const start = async () => {
    setPrint({ state: 'printing' });
    try {
      const { printCards } = await import('../jobs/print.ts');
      const result = await printCards(cards, { paper, unit: say.unit, locale, title: of.make.name });
      if (latest.current !== wanted) return;
      if (!result.ok) {
        setPrint({ state: 'refused', problem: result.problem });
        return;
      }
      const bytes = result.value.bytes as Uint8Array<ArrayBuffer>;
      address.current = URL.createObjectURL(new Blob([bytes], { type: 'application/pdf' }));
      setPrint({ state: 'printed', address: address.current, pages: result.value.pages });
    } catch (error) {
      const detail = error instanceof Error ? error.message : String(error);
      setPrint({ state: 'refused', problem: { code: 'web.print-broken', values: { detail } } });
    }
  };
  return (
    <div className="stack">
      {print.state === 'refused' && <Trouble words={say.problem(print.problem)} />}
      <Choice
        legend={words.paper}
        name="cards-paper"
        inline
        value={paper}
        options={cardPapers.map((value) => ({ value, label: webWords.make.print.papers[value] }))}
        onChange={setPaper}
      />
      <div className="verbs">
        <button
          type="button"
          className="verb verb-next"
          disabled={cards.length === 0 || print.state === 'printing'}
          onClick={() => void start()}
        >
          {words.print}
        </button>
        {print.state === 'printed' && (
          <a className="verb" href={print.address} download={`${words.fileName}-${paper}.pdf`}>
            {words.download}
          </a>
        )}
      </div>
      <p role="status">
        {print.state === 'printing' && words.printing}
        {print.state === 'printed' && sayPrinted(print.pages, cards.length, locale)}
      </p>
      <p className="note">{webWords.make.print.private}</p>
    </div>
  );
};

/** The drawing of the card in hand. */
const useLayCard = (card: Card | undefined, id: string) => {
  const say = useSay();
  const narrow = useNarrow();
  const current = useCurrentPassage() === 'alterations';
  const laid = useMemo((): Laid | null => {
    if (!current || !card) return null;
    const drawing = drawCard(card, { unit: say.unit, locale, textSize: narrow ? 28 : 26 });
    return drawing && { drawing, subject: `card ${id} ${card.step.id} ${card.pattern.size}`, onSheet: true };
  }, [current, card, id, say.unit, narrow]);
  useLay(laid);
};

/** Of the cards, the one that is being read: the last whose head is above the middle of the window. */
const useCardRead = (list: RefObject<HTMLOListElement | null>, read: (id: string) => void) => {
  useEffect(() => {
    let waiting = false;
    const look = () => {
      waiting = false;
      const cards = [...(list.current?.querySelectorAll<HTMLElement>('[data-step]') ?? [])];
      const above = cards.filter((card) => card.getBoundingClientRect().top < window.innerHeight * 0.55);
      const id = (above.at(-1) ?? cards[0])?.dataset.step;
      if (id) read(id);
    };
    const scrolled = () => {
      if (waiting) return;
      waiting = true;
      requestAnimationFrame(look);
    };
    window.addEventListener('scroll', scrolled, { passive: true });
    return () => window.removeEventListener('scroll', scrolled);
  }, [list, read]);
};

/** Alterations of a pattern known by its envelope: a card for each, to work by on the tissue. */
export const CardsPassage = ({ of }: { of: CardsInHand }) => {
  const say = useSay();
  const { make, change } = of;
  const [shown, setShown] = useState('');
  const [chosen, setChosen] = useState(() => cardCatalogue(of.envelope, of.size)[0]?.id ?? '');
  const all = useMemo(() => cardsOf(of), [of]);
  const carried = useMemo(() => all.flatMap(({ step, card }) => (step.on && card.ok ? [card.value] : [])), [all]);
  const inHand = all.find(({ step }) => step.id === shown) ?? all.find(({ card }) => card.ok && card.value.picture);
  useLayCard(inHand?.card.ok ? inHand.card.value : undefined, of.id);
  const kinds = useMemo(() => cardCatalogue(of.envelope, of.size), [of.envelope, of.size]);
  const alteration = kinds.find((one) => one.id === chosen);
  const list = useRef<HTMLOListElement>(null);
  useCardRead(list, setShown);
  return (
    <Passage id="alterations" title={webWords.make.passages.alterations}>
      <p>{words.cardsAbout}</p>
      {make.steps.length === 0 && <p>{make.size === null ? words.noSize : words.noCards}</p>}
      {all.length > 0 && (
        <ol className="steps" ref={list}>
          {all.map(({ step, card }, place) => {
            const title = card.ok ? sayCard(card.value, say.unit, locale).title : alterationName(step.alteration);
            const numbered = say.words(listWords.stepTitle, { number: place + 1, name: title });
            return (
              <li
                key={step.id}
                data-step={step.id}
                className={step.on ? 'step' : 'step step-off'}
                onFocus={() => setShown(step.id)}
                onPointerDown={() => setShown(step.id)}
              >
                <div className="step-head">
                  <h3>{numbered}</h3>
                  <label className="check">
                    <input
                      type="checkbox"
                      checked={step.on}
                      aria-label={say.words(listWords.onLabel, { name: title })}
                      onChange={(event) =>
                        change((before) => changeStep(before, step.id, { on: event.target.checked }), `${step.id} on`)
                      }
                    />
                    {listWords.on}
                  </label>
                </div>
                <Amount of={of} step={step} />
                {card.ok ? <CardWords card={card.value} /> : <Trouble words={say.problem(card.problem)} />}
                <button
                  type="button"
                  className="verb verb-quiet"
                  aria-label={say.words(listWords.removeOf, { name: title })}
                  onClick={() => change((before) => removeStep(before, step.id), `${step.id} remove`)}
                >
                  {listWords.remove}
                </button>
              </li>
            );
          })}
        </ol>
      )}
      <div className="add-step">
        <Select
          label={listWords.add}
          hint={alterationAbout(chosen)}
          value={chosen}
          options={kinds.map(({ id }) => ({ value: id, label: alterationName(id) }))}
          onChange={setChosen}
        />
        <button
          type="button"
          className="verb"
          disabled={!alteration}
          onClick={() =>
            alteration && change((before) => addStep(before, alteration), `add card ${make.steps.length + 1}`)
          }
        >
          {listWords.addVerb}
        </button>
      </div>
      {all.length > 0 && <PrintCards of={of} cards={carried} />}
    </Passage>
  );
};
