import { useMemo } from 'react';
import { finishedGirths, type Pattern } from '../../src/pattern/index.ts';
import { webWords } from '../../src/words/index.ts';
import { useSay } from '../app/settings.tsx';
import { levelName } from '../parts/level-name.ts';

const words = webWords.patterns;

/** Finished measurements of every size, measured off the pieces. */
export const FinishedTable = ({ pattern, chosen }: { pattern: Pattern; chosen: string }) => {
  const say = useSay();
  const rows = useMemo(() => pattern.sizes.map((size) => ({ size, girths: finishedGirths(size.garment) })), [pattern]);
  const levels = rows[0]?.girths.map((girth) => girth.level) ?? [];
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table scrolls by keys.
    <section className="scrolls" tabIndex={0} aria-label={words.finishedAbout}>
      <table>
        <caption>{words.finishedAbout}</caption>
        <thead>
          <tr>
            <th scope="col">{words.size}</th>
            {levels.map((level) => (
              <th scope="col" key={level} className="number">
                {levelName(level)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ size, girths }) => (
            <tr key={size.id} className={size.id === chosen ? 'chosen' : undefined}>
              <th scope="row">{size.id}</th>
              {girths.map((girth) => (
                <td key={girth.level} className="number">
                  {say.length(girth.finished)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
};
