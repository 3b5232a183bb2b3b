import { memo, useMemo } from 'react';
import { type Fit, isClothCaution, verdictAsShown, type Way } from '../../src/fit/index.ts';
import { lengthAsShown } from '../../src/units/index.ts';
import { bodyWords, fitWords, reasonSentence, sayStep, webWords } from '../../src/words/index.ts';
import { pathTo } from '../app/router.ts';
import { locale, useSay } from '../app/settings.tsx';
import { Link } from '../parts/Link.tsx';
import { Select } from '../parts/Select.tsx';
import { Trouble } from '../parts/Trouble.tsx';
import { type Laid, useLay } from '../parts/table/laid.ts';
import { fitAsAltered } from './altered-ease.ts';
import { drawFit } from './drawings.ts';
import { useMake } from './make-context.ts';
import { Passage, useCurrentPassage } from './Passages.tsx';
import { withWay } from './steps.ts';

const words = webWords.make.fit;

const WayWords = ({ way, recommended, fit }: { way: Way; recommended: boolean; fit: Fit }) => {
  const say = useSay();
  const { make, change } = useMake();
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
        onClick={() => change((before) => withWay(before, way, fit.ways), `way ${way.startingSize}`)}
      >
        {say.words(way.alterations.length > 0 ? words.takeWith : words.take, { size: way.startingSize })}
      </button>
      {taken && <p className="note">{words.taken}</p>}
      {fit.estimated.length > 0 && recommended && <p className="note">{bodyWords.surveyLimits}</p>}
    </div>
  );
};

/** Ease by level of every size in figures, for those who would rather read than look. */
const EaseTable = ({ fit, chosen }: { fit: Fit; chosen: string }) => {
  const say = useSay();
  const levels = fit.sizes[0]?.cells ?? [];
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
                {cells.map((cell) => (
                  <td key={cell.level} className="number">
                    {say.length(cell.ease, { purpose: 'amount', signed: true })}
                    <br />
                    <span className="note">{fitWords.verdicts[verdictAsShown(cell, shown)]}</span>
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </details>
  );
};

const Fitted = ({ fit }: { fit: Fit }) => {
  const say = useSay();
  const { make, pattern, wearer, size, alteredEase, change } = useMake();
  const current = useCurrentPassage() === 'fit';
  const laid = useMemo((): Laid | null => {
    if (!current) return null;
    const label = say.words(words.picture, { pattern: pattern.name, wearer: wearer.name });
    const shown = alteredEase.length > 0 ? fitAsAltered(fit, size.id, alteredEase) : fit;
    return { drawing: drawFit(shown, size.id, label, say.unit), subject: `fit ${pattern.id}`, onSheet: true };
  }, [current, fit, size.id, alteredEase, pattern, wearer.name, say]);
  useLay(laid);
  const [first, ...others] = fit.ways;
  return (
    <>
      {first && <WayWords way={first} recommended fit={fit} />}
      {others.map((way) => (
        <WayWords key={way.startingSize} way={way} recommended={false} fit={fit} />
      ))}
      <Select
        label={words.size}
        hint={words.sizeHint}
        value={make.size ?? ''}
        options={[
          ...(make.size === null ? [{ value: '', label: words.notChosen }] : []),
          ...pattern.sizes.map((one) => ({ value: one.id, label: one.id })),
        ]}
        onChange={(chosen) => change((before) => ({ ...before, size: chosen || null }), 'size')}
      />
      <EaseTable fit={fit} chosen={size.id} />
      <p className="note">{fitWords.beliefs}</p>
    </>
  );
};

/** Fit: ease at every level in every size, the size to start from and why. */
export const FitPassage = memo(() => {
  const say = useSay();
  const { fit, make, wearer } = useMake();
  return (
    <Passage id="fit" title={webWords.make.passages.fit}>
      {fit.ok ? (
        <Fitted fit={fit.value} />
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
