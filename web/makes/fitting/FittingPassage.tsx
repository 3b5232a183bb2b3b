import { useMemo, useRef, useState } from 'react';
import {
  type FittingView,
  fittingViews,
  fittingZones,
  type ZoneId,
  zoneIds,
  zoneIsOn,
} from '../../../src/alter/index.ts';
import { completeMeasures, type Measures } from '../../../src/body/index.ts';
import type { Fitting } from '../../../src/make/index.ts';
import { webWords, fittingWords as words } from '../../../src/words/index.ts';
import { today } from '../../app/documents.ts';
import { useSay } from '../../app/settings.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { WordsField } from '../../parts/TextField.tsx';
import { type Laid, useLay } from '../../parts/table/laid.ts';
import { useNarrow } from '../../parts/useNarrow.ts';
import { isWhole } from '../../wearers/body-outline.ts';
import { useMake } from '../make-context.ts';
import { Passage, useCurrentPassage } from '../Passages.tsx';
import { Answers } from './Answers.tsx';
import { drawFitting } from './draw-fitting.ts';
import { MarkSign } from './MarkSign.tsx';
import { addSign, beginRound, changeRound, removeSign, roundsOf } from './rounds.ts';
import { saySign, zoneName } from './say-fitting.ts';

/** The body the drawing has where nothing was measured yet, as the figure on the wearer's own page. */
const anyone: Measures = { stature: 1650 };

interface Looking {
  readonly view: FittingView;
  readonly zone: ZoneId;
  readonly look: (zone: ZoneId) => void;
}

const useLayBody = (round: Fitting | undefined, number: number, { view, zone, look }: Looking) => {
  const say = useSay();
  const { measures, wearer, pattern, size } = useMake();
  const current = useCurrentPassage() === 'fitting';
  const narrow = useNarrow();
  const laid = useMemo((): Laid | null => {
    if (!current) return null;
    const whole = completeMeasures({ ...anyone, ...measures }, wearer.comparedWith ?? 'women').measures;
    if (!isWhole(whole)) return null;
    const seenFrom = { name: wearer.name, view: words.views[view], round: number };
    const drawing = drawFitting({
      measures: whole,
      view,
      kind: pattern.kind,
      garment: size.garment,
      signs: round?.signs ?? [],
      picked: round ? zone : null,
      sayPlace: zoneName,
      label: say.words(round ? words.picture : words.pictureNone, seenFrom),
      sayZone: (id, signs) =>
        signs.length === 0
          ? say.words(words.zoneFree, { zone: zoneName(id) })
          : say.words(words.zoneMarked, {
              zone: zoneName(id),
              signs: signs.map((sign) => words.kinds[sign.kind] ?? sign.kind).join(', '),
            }),
      sayPinned: (mm) => say.length(mm, { purpose: 'amount' }),
      ...(narrow ? { textSize: 60 } : {}),
    });
    return {
      drawing,
      subject: `fitting ${view}`,
      onSheet: true,
      ...(round ? { picked: zone, onPick: (id: string) => look(id as ZoneId) } : {}),
    };
  }, [current, measures, wearer, pattern.kind, size.garment, round, number, view, zone, look, say, narrow]);
  useLay(laid);
};

/** Starting a round: what is tried on. */
const BeginRound = ({
  verb,
  about,
  onBegin,
}: {
  verb: string;
  about: string;
  onBegin: (of: Fitting['garment']) => void;
}) => {
  const [garment, setGarment] = useState<Fitting['garment']>('toile');
  return (
    <div className="round-marks">
      <p>{about}</p>
      <Choice
        inline
        legend={words.garment}
        name="tried-on"
        value={garment}
        options={(['toile', 'make'] as const).map((value) => ({ value, label: words.garments[value] }))}
        onChange={setGarment}
      />
      <button type="button" className="verb" onClick={() => onBegin(garment)}>
        {verb}
      </button>
    </div>
  );
};

/** Fitting: what is seen on a toile or the make, marked on a drawing of her own body, and the alterations that answer it. */
export const FittingPassage = () => {
  const say = useSay();
  const { make, pattern, size, change } = useMake();
  const rounds = roundsOf(make);
  const [chosen, setChosen] = useState<string | null>(null);
  const round = rounds.find(({ id }) => id === chosen) ?? rounds.at(-1);
  const number = round ? rounds.indexOf(round) + 1 : 0;
  const zones = useMemo(
    () => zoneIds.filter((zone) => zoneIsOn(zone, pattern.kind, size.garment)),
    [pattern.kind, size.garment],
  );
  const [view, setView] = useState<FittingView>('front');
  const [wanted, setWanted] = useState<ZoneId | null>(null);
  const zone =
    wanted && zones.includes(wanted) ? wanted : (zones.find((one) => one === 'bust') ?? (zones[0] as ZoneId));
  const look = useMemo(
    () => (to: ZoneId) => {
      setWanted(to);
      setView(fittingZones[to].views[0]);
    },
    [],
  );
  const turn = (to: FittingView) => {
    setView(to);
    // What is in hand is always to be seen.
    const there = zones.find((one) => fittingZones[one].views[0] === to);
    if (there && fittingZones[zone].views[0] !== to) setWanted(there);
  };
  useLayBody(round, number, { view, zone, look });
  const head = useRef<HTMLHeadingElement>(null);
  const open = (id: string) => {
    setChosen(id);
    // The list of rounds lies below everything that a round holds.
    head.current?.scrollIntoView({ block: 'center' });
    head.current?.focus({ preventScroll: true });
  };
  const begin = (garment: Fitting['garment']) => {
    setChosen(null);
    change((before) => beginRound(before, garment, today()), `begin round ${rounds.length + 1}`);
  };
  const titleOf = (one: Fitting, place: number) =>
    say.words(words.roundTitle, { number: place + 1, garment: words.garments[one.garment], date: say.date(one.date) });
  return (
    <Passage id="fitting" title={webWords.make.passages.fitting}>
      <p>{words.about}</p>
      <p className="hint">{words.caution}</p>
      {rounds.length === 0 && <BeginRound verb={words.begin} about={words.none} onBegin={begin} />}
      {round && (
        <>
          <h3 ref={head} tabIndex={-1}>
            {titleOf(round, number - 1)}
          </h3>
          <Choice
            inline
            legend={words.view}
            name="seen-from"
            value={view}
            options={fittingViews.map((value) => ({ value, label: words.views[value] }))}
            onChange={turn}
          />
          <h3>{words.see}</h3>
          <MarkSign
            zones={zones}
            zone={zone}
            onZone={look}
            round={`${make.name} ${round.id}`}
            onMark={(sign) => change((before) => addSign(before, round.id, sign), `mark ${round.signs.length + 1}`)}
          />
          <h3>{words.seen}</h3>
          {round.signs.length === 0 && <p>{words.seenNone}</p>}
          <ul className="seen">
            {round.signs.map((sign, place) => {
              const said = saySign(sign, say);
              return (
                // Signs are plain values; their order is what they are told apart by.
                // biome-ignore lint/suspicious/noArrayIndexKey: see above.
                <li key={place}>
                  <span>{said}</span>
                  <button
                    type="button"
                    className="verb verb-quiet"
                    aria-label={say.words(words.takeAwayOf, { sign: said })}
                    onClick={() => change((before) => removeSign(before, round.id, place), `unmark ${place}`)}
                  >
                    {words.takeAway}
                  </button>
                </li>
              );
            })}
          </ul>
          <h3>{words.answers}</h3>
          <Answers round={round} />
          <WordsField
            long
            label={words.notes}
            value={round.notes}
            onChange={(notes) =>
              change((before) => changeRound(before, round.id, (one) => ({ ...one, notes })), `notes ${round.id}`)
            }
          />
          <h3>{words.rounds}</h3>
          <ol className="answers">
            {rounds.map((one, place) => (
              <li key={one.id}>
                <p>{titleOf(one, place)}</p>
                <p className="hint">
                  {say.words(words.roundSteps, { steps: one.steps.length, taken: one.taken.length })}{' '}
                  {one.signs.length === 0 ? words.roundNothing : one.signs.map((sign) => saySign(sign, say)).join('; ')}
                </p>
                {one.id === round.id ? (
                  <p>{words.working}</p>
                ) : (
                  <button type="button" className="verb" onClick={() => open(one.id)}>
                    {say.words(words.open, { number: place + 1 })}
                  </button>
                )}
              </li>
            ))}
          </ol>
          <BeginRound verb={words.next} about={words.nextAbout} onBegin={begin} />
        </>
      )}
    </Passage>
  );
};
