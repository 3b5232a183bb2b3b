import type { HousePattern } from '../../src/drafting/index.ts';
import { webHouseWords } from '../../src/words/index.ts';
import { useSay } from '../app/settings.tsx';

/** A house pattern's order of work in one of its views, step by step. */
export const WorkList = ({ house, view }: { house: HousePattern; view: string | undefined }) => {
  const say = useSay();
  return (
    <ol className="work">
      {house.work(view).map(({ do: doing, text }) => (
        <li key={text} className={`work-${doing}`}>
          <strong>{webHouseWords.doing[doing]}.</strong> {say.words(text, {})}
        </li>
      ))}
    </ol>
  );
};

export const OrderOfWork = ({ house, view }: { house: HousePattern; view: string | undefined }) => (
  <section className="passage" aria-labelledby="work">
    <h2 id="work">{webHouseWords.work}</h2>
    <WorkList house={house} view={view} />
  </section>
);
