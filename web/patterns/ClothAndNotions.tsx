import { useMemo } from 'react';
import type { Pattern, Size } from '../../src/pattern/index.ts';
import { formatPercent, formatWeight } from '../../src/units/index.ts';
import { webHouseWords, webWords } from '../../src/words/index.ts';
import { locale, useSay } from '../app/settings.tsx';
import { sayNotions } from './say-notions.ts';

const words = webWords.patterns;

/** Which cloth suits a pattern, and what to buy beside it for one size. */
export const ClothAndNotions = ({ pattern, size }: { pattern: Pattern; size: Size }) => {
  const say = useSay();
  const { cloth } = pattern;
  const notions = useMemo(() => sayNotions(pattern, size.garment, size.body, say.unit), [pattern, size, say.unit]);
  return (
    <dl className="facts">
      <dt>{words.structure}</dt>
      <dd>{webWords.cloths.structures[cloth.structure]}</dd>
      <dt>{words.weight}</dt>
      <dd>
        {say.words(words.weightFromTo, {
          from: formatWeight(cloth.weight[0], say.unit, locale),
          to: formatWeight(cloth.weight[1], say.unit, locale),
        })}
      </dd>
      {cloth.stretch > 0 && (
        <>
          <dt>{words.stretch}</dt>
          <dd>{say.words(words.stretchLeast, { share: formatPercent(cloth.stretch, locale) })}</dd>
        </>
      )}
      <dt>{words.suits}</dt>
      <dd>{cloth.cloths.join(', ')}</dd>
      {notions.length > 0 && (
        <>
          <dt>{say.words(webHouseWords.notionsFor, { size: size.id })}</dt>
          <dd>
            {notions.map((notion) => (
              <div key={notion}>{notion}</div>
            ))}
          </dd>
        </>
      )}
    </dl>
  );
};
