import type { Make } from '../../src/make/index.ts';
import { webHouseWords as words } from '../../src/words/index.ts';
import { useDocuments } from '../app/desk-context.ts';
import { pathTo } from '../app/router.ts';
import { Link } from '../parts/Link.tsx';

/** The makes cut by a pattern, by its id. */
export const MakesFrom = ({ pattern }: { pattern: string }) => {
  const makes = useDocuments<Make>('make');
  if (makes.state !== 'here') return null;
  const own = makes.value.filter(({ body }) => body.pattern === pattern);
  return (
    <section className="passage" aria-labelledby="makes-from">
      <h2 id="makes-from">{words.makesOf}</h2>
      {own.length === 0 && <p>{words.noMakes}</p>}
      <ul className="plain-list">
        {own.map(({ id, body }) => (
          <li key={id}>
            <Link to={pathTo('make', id)}>{body.name}</Link>
          </li>
        ))}
      </ul>
    </section>
  );
};
