import { type ReactNode, useLayoutEffect, useRef, useState } from 'react';
import type { Unit } from '../../src/units/index.ts';
import { problemWords, webWords } from '../../src/words/index.ts';
import { Choice } from '../parts/Choice.tsx';
import { Link } from '../parts/Link.tsx';
import { NoticeBar } from '../parts/NoticeBar.tsx';
import { Trouble } from '../parts/Trouble.tsx';
import { Table } from '../parts/table/Table.tsx';
import { useReachable } from './desk-context.ts';
import type { Route } from './router.ts';
import { useSettings } from './settings.tsx';

const words = webWords.shell;

const places = [
  { to: '/', name: words.table, pages: ['home', 'make', 'make-new'] },
  { to: '/wearers', name: words.wearers, pages: ['wearers', 'wearer'] },
  { to: '/patterns', name: words.patterns, pages: ['patterns', 'pattern', 'envelope'] },
  { to: '/cloth', name: words.cloths, pages: ['cloths', 'cloth'] },
] as const satisfies readonly { to: string; name: string; pages: readonly Route['page'][] }[];

const UnitSwitch = () => {
  const { settings, change } = useSettings();
  return (
    <Choice<Unit>
      legend={words.unit}
      name="unit"
      inline
      value={settings.unit}
      options={[
        { value: 'in', label: words.inches },
        { value: 'cm', label: words.centimetres },
      ]}
      onChange={(unit) => change((before) => ({ ...before, unit }))}
    />
  );
};

export const Header = ({ route }: { route: Route }) => (
  <header className="head">
    <p className="head-name">{webWords.name}</p>
    <nav aria-label={words.places}>
      <ul>
        {places.map(({ to, name, pages }) => (
          <li key={to}>
            <Link to={to} current={(pages as readonly string[]).includes(route.page)}>
              {name}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
    <UnitSwitch />
  </header>
);

type Folded = 'none' | 'table' | 'words';

/** Says it once the workroom has been silent, for as long as it is. */
const Silence = () => {
  const reachable = useReachable();
  const sentence = problemWords['web.silent'];
  return !reachable && sentence ? (
    <div className="strip strip-silence">
      <Trouble words={sentence} />
    </div>
  ) : null;
};

interface ShellProps {
  readonly unit: Unit;
  readonly header: ReactNode;
  readonly children: ReactNode;
}

/** The table and the words beside it. The table is mounted once and outlives every page. */
export const Shell = ({ unit, header, children }: ShellProps) => {
  const [folded, setFolded] = useState<Folded>('none');
  /** Where she was in the words when she folded them away. */
  const place = useRef(0);
  useLayoutEffect(() => {
    const root = document.documentElement;
    const before = root.dataset.folded;
    root.dataset.folded = folded;
    if (before === 'words' && folded !== 'words') window.scrollTo(0, place.current);
  }, [folded]);
  const fold = (next: Folded) => {
    if (next === 'words') place.current = window.scrollY;
    setFolded(next);
  };
  return (
    <>
      <a className="skip" href="#words">
        {words.skip}
      </a>
      {header}
      <Table unit={unit} />
      <section className="folding" aria-label={words.folding}>
        <button type="button" onClick={() => fold(folded === 'table' ? 'none' : 'table')}>
          {folded === 'table' ? words.unfoldTable : words.foldTable}
        </button>
        <button type="button" onClick={() => fold(folded === 'words' ? 'none' : 'words')}>
          {folded === 'words' ? words.unfoldWords : words.foldWords}
        </button>
      </section>
      <main id="words" className="words" tabIndex={-1}>
        <Silence />
        <NoticeBar />
        {children}
      </main>
    </>
  );
};
