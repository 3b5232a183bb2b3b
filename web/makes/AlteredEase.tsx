import { verdictAsShown } from '../../src/fit/index.ts';
import { lengthAsShown } from '../../src/units/index.ts';
import { fitWords, webWords } from '../../src/words/index.ts';
import { locale, useSay } from '../app/settings.tsx';
import { useMake } from './make-context.ts';
import { sayTight } from './tight.ts';

const words = webWords.make.alterations;

/** Ease at every level as the pieces are now, with what is usual beside it. */
export const AlteredEase = () => {
  const say = useSay();
  const { alteredEase, make } = useMake();
  if (alteredEase.length === 0) return null;
  const amount = (mm: number, bare = false) => say.length(mm, { purpose: 'amount', bare });
  const shown = (mm: number) => lengthAsShown(mm, say.unit, { purpose: 'amount' });
  return (
    <section className="scrolls" aria-label={words.ease}>
      <table>
        <caption>{make.steps.some((step) => step.on) ? words.easeAltered : words.ease}</caption>
        <thead>
          <tr>
            <th scope="col">{words.level}</th>
            <th scope="col" className="number">
              {words.easeHead}
            </th>
            <th scope="col" className="number">
              {words.usualHead}
            </th>
            <th scope="col">{words.verdictHead}</th>
          </tr>
        </thead>
        <tbody>
          {alteredEase.map((cell) => (
            <tr key={cell.level}>
              <th scope="row">{fitWords.levels[cell.level as keyof typeof fitWords.levels] ?? cell.level}</th>
              <td className="number">{amount(cell.ease)}</td>
              <td className="number">
                {amount(cell.low, true)} – {amount(cell.high)}
              </td>
              <td>{fitWords.verdicts[verdictAsShown(cell, shown)]}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
};

/** Where the pieces as they are would be too tight, before the scissors. */
export const TooTight = () => {
  const say = useSay();
  const { alteredEase } = useMake();
  const tight = sayTight(alteredEase, locale);
  return tight === '' ? null : <p className="field-trouble">{say.words(words.tight, { tight })}</p>;
};
