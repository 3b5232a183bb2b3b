import { memo, useMemo } from 'react';
import { type Fit, isClothCaution, verdictAsShown, type Way } from '../../src/fit/index.ts';
import { lengthAsShown } from '../../src/units/index.ts';
import {
  bodyWords,
  cardWords,
  envelopePageWords,
  fitWords,
  reasonSentence,
  sayStep,
  webWords,
} from '../../src/words/index.ts';
import { pathTo } from '../app/router.ts';
import { locale, useSay } from '../app/settings.tsx';
import { Link } from '../parts/Link.tsx';
import { Select } from '../parts/Select.tsx';
import { Trouble } from '../parts/Trouble.tsx';
import { type Laid, useLay } from '../parts/table/laid.ts';
import { useNarrow } from '../parts/useNarrow.ts';
import { fitAsAltered } from './altered-ease.ts';
import { drawFit } from './drawings.ts';
import type { FitInHand } from './fit-in-hand.ts';
import { Passage, useCurrentPassage } from './Passages.tsx';

const words = webWords.make.fit;

interface WayProps {
  readonly of: FitInHand;
  readonly way: Way;
  readonly recommended: boolean;
  readonly fit: Fit;
}

const WayWords = ({ of, way, recommended, fit }: WayProps) => {
  const say = useSay();
  const { make, change, take } = of;
  const taken = make.size === way.startingSize;
  const title = say.words(recommended ? words.recommended : words.other, { size: way.startingSize });
  return (
    <div className="way">
      <h3>{title}</h3>
      <ul>
        {way.reasons.map((reason) => (
          <li
            key={`${reason.code} ${JSON.stringify(reason.values)}`}
            className={isClothCaution(reason) ? 'field-trouble' : undefined}
          >
            {reasonSentence(reason, say.unit, locale)}
          </li>
        ))}
      </ul>
      {way.alterations.length > 0 && (
        <p>
          {words.toAlter} {way.alterations.map((one) => sayStep(one, say.unit)).join('; ')}.{' '}
          {say.words(words.minutes, { minutes: way.minutes })}
        </p>
      )}
      <button
        type="button"
        className={recommended && make.size === null ? 'verb verb-next' : 'verb'}
        onClick={() => change((before) => take(before, way, fit.ways), `way ${way.startingSize}`)}
      >
        {say.words(way.alterations.length > 0 ? words.takeWith : words.take, { size: way.startingSize })}
      </button>
      {taken && <p className="note">{words.taken}</p>}
      {fit.estimated.length > 0 && recommended && <p className="note">{bodyWords.surveyLimits}</p>}
    </div>
  );
};

/** Where the finished figures came from, level by level; nothing is said where all are computed from the pieces. */
const FiguresFrom = ({ fit, size }: { fit: Fit; size: string }) => {
  const cells = fit.sizes.find((one) => one.size === size)?.cells ?? [];
  const told = [...new Set(cells.map((cell) => cell.finishedFrom))];
  if (told.every((from) => from === 'pieces')) return null;
  const named = (from: (typeof told)[number]) =>
    cells
      .filter((cell) => cell.finishedFrom === from)
      .map((cell) => fitWords.levels[cell.level as keyof typeof fitWords.levels] ?? cell.level)
      .join(', ');
  return (
    <p className="note">
      {envelopePageWords.make.figuresOf} {told.map((from) => `${named(from)}: ${fitWords.from[from]}`).join('; ')}.
    </p>
  );
};

/** Ease by level of every size in figures, for those who would rather read than look. */
const EaseTable = ({ fit, chosen }: { fit: Fit; chosen: string }) => {
  const say = useSay();
  // Some levels are known of some sizes only: each has its column, and what is usual there is the same for all.
  const levels = fit.sizes
    .flatMap(({ cells }) => cells)
    .filter((cell, at, all) => all.findIndex(({ level }) => level === cell.level) === at);
  const shown = (mm: number) => lengthAsShown(mm, say.unit, { purpose: 'amount' });
  return (
    <details>
      <summary>{words.figures}</summary>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table scrolls by keys. */}
      <section className="scrolls" tabIndex={0} aria-label={words.figures}>
        <table>
          <caption>{words.figuresAbout}</caption>
          <thead>
            <tr>
              <th scope="col">{webWords.patterns.size}</th>
              {levels.map((cell) => (
                <th scope="col" key={cell.level} className="number">
                  {fitWords.levels[cell.level as keyof typeof fitWords.levels] ?? cell.level}
                  <br />
                  {say.words(words.usual, {
                    low: say.length(cell.low, { purpose: 'amount', bare: true }),
                    high: say.length(cell.high, { purpose: 'amount' }),
                  })}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {fit.sizes.map(({ size, cells }) => (
              <tr key={size} className={size === chosen ? 'chosen' : undefined}>
                <th scope="row">{size}</th>
                {levels.map(({ level }) => {
                  const cell = cells.find((one) => one.level === level);
                  return (
                    <td key={level} className="number">
                      {cell ? say.length(cell.ease, { purpose: 'amount', signed: true }) : cardWords.notKnown}
                      <br />
                      <span className="note">{cell && fitWords.verdicts[verdictAsShown(cell, shown)]}</span>
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </details>
  );
};

const Fitted = ({ of, fit }: { of: FitInHand; fit: Fit }) => {
  const say = useSay();
  const { make, pattern, wearer, sizes, size, alteredEase, change } = of;
  const current = useCurrentPassage() === 'fit';
  const narrow = useNarrow();
  const laid = useMemo((): Laid | null => {
    if (!current) return null;
    const label = say.words(words.picture, { pattern: pattern.name, wearer: wearer.name });
    const shown = alteredEase.length > 0 ? fitAsAltered(fit, size, alteredEase) : fit;
    return {
      drawing: drawFit(shown, size, label, say.unit, narrow),
      subject: `fit ${pattern.id} ${narrow}`,
      onSheet: true,
    };
  }, [current, fit, size, alteredEase, pattern, wearer.name, say, narrow]);
  useLay(laid);
  const [first, ...others] = fit.ways;
  return (
    <>
      {first && <WayWords of={of} way={first} recommended fit={fit} />}
      {others.map((way) => (
        <WayWords key={way.startingSize} of={of} way={way} recommended={false} fit={fit} />
      ))}
      <Select
        label={words.size}
        hint={words.sizeHint}
        value={make.size ?? ''}
        options={[
          ...(make.size === null ? [{ value: '', label: words.notChosen }] : []),
          ...sizes.map((one) => ({ value: one, label: one })),
        ]}
        onChange={(chosen) => change((before) => ({ ...before, size: chosen || null }), 'size')}
      />
      <EaseTable fit={fit} chosen={size} />
      <FiguresFrom fit={fit} size={size} />
      <p className="note">{fitWords.beliefs}</p>
    </>
  );
};

/** Fit: ease at every level in every size, the size to start from and why. */
export const FitPassage = memo(({ of }: { of: FitInHand }) => {
  const say = useSay();
  const { fit, make, wearer } = of;
  return (
    <Passage id="fit" title={webWords.make.passages.fit}>
      {of.before}
      {fit.ok ? (
        <Fitted of={of} fit={fit.value} />
      ) : (
        <Trouble words={say.problem(fit.problem)}>
          <Link to={pathTo('wearer', make.wearer)} className="verb">
            {say.words(words.toWearer, { name: wearer.name })}
          </Link>
        </Trouble>
      )}
    </Passage>
  );
});
