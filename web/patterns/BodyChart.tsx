import { describeMeasure, type MeasureId, measureIds } from '../../src/body/index.ts';
import type { Pattern } from '../../src/pattern/index.ts';
import { webWords } from '../../src/words/index.ts';
import { useSay } from '../app/settings.tsx';

const words = webWords.patterns;

/** What stands first in a chart: what sizes are chosen by. */
const first: readonly MeasureId[] = ['stature', 'bustGirth', 'upperBustGirth', 'waistGirth', 'hipGirth'];

/** The bodies a pattern's sizes are drafted for: what sizes are chosen by, and the rest behind a fold. */
export const BodyChart = ({ pattern, chosen }: { pattern: Pattern; chosen: string }) => {
  const say = useSay();
  const listed = measureIds.filter((id) => pattern.sizes.some((size) => size.body[id] !== undefined));
  const varies = (id: MeasureId) => new Set(pattern.sizes.map((size) => size.body[id])).size > 1;
  const main = first.filter((id) => listed.includes(id) && (id !== 'stature' || varies(id)));
  const rest = listed.filter((id) => !main.includes(id));
  const table = (ids: readonly MeasureId[], caption: string) => (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table scrolls by keys.
    <section className="scrolls" tabIndex={0} aria-label={caption}>
      <table>
        <caption>{caption}</caption>
        <thead>
          <tr>
            <th scope="col">{words.size}</th>
            {ids.map((id) => (
              <th scope="col" key={id} className="number">
                {describeMeasure(id).name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {pattern.sizes.map((size) => (
            <tr key={size.id} className={size.id === chosen ? 'chosen' : undefined}>
              <th scope="row">{size.id}</th>
              {ids.map((id) => (
                <td key={id} className="number">
                  {size.body[id] === undefined ? '' : say.length(size.body[id])}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
  return (
    <>
      {table(main.length > 0 ? main : listed, words.chart)}
      {main.length > 0 && rest.length > 0 && (
        <details>
          <summary>{words.chartRest}</summary>
          {table(rest, words.chartRest)}
        </details>
      )}
    </>
  );
};
