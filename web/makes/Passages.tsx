import {
  createContext,
  type FocusEvent,
  type KeyboardEvent,
  type ReactNode,
  useCallback,
  useContext,
  useEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import { webWords } from '../../src/words/index.ts';

interface PassagesInHand {
  readonly current: string | null;
  readonly take: (id: string) => void;
  readonly join: (id: string, element: HTMLElement) => () => void;
}

const PassagesContext = createContext<PassagesInHand>({ current: null, take: () => {}, join: () => () => {} });

/** The line the eye reads at: a passage whose head is above it, and the next one's below, is being read. */
const readingLine = (): number => {
  const table = document.querySelector('.folding');
  const top = table && getComputedStyle(table).display !== 'none' ? table.getBoundingClientRect().bottom : 0;
  return top + (window.innerHeight - top) * 0.4;
};

/** After the hands chose a passage, scrolling that only brings it into sight does not choose another, ms. */
const holdAfterTaking = 700;

/** Focus that stays in a passage this long has come to work there; one that leaves sooner was on its way elsewhere, ms. */
const restBeforeTaking = 300;

/** Knows which passage of the page is in hand: the one worked in, else the one at the reading line. */
export const Passages = ({ children }: { children: ReactNode }) => {
  const [current, setCurrent] = useState<string | null>(null);
  const joined = useRef(new Map<string, HTMLElement>());
  const heldUntil = useRef(0);

  const read = useCallback(() => {
    // With the words folded away nothing is being read, and what was in hand stays on the table.
    if (performance.now() < heldUntil.current || document.documentElement.dataset.folded === 'words') return;
    const line = readingLine();
    const tops = [...joined.current].map(([id, element]) => ({ id, top: element.getBoundingClientRect().top }));
    const passed = tops.filter(({ top }) => top <= line).sort((a, b) => b.top - a.top);
    const id = passed[0]?.id ?? tops.sort((a, b) => a.top - b.top)[0]?.id;
    if (id) setCurrent(id);
  }, []);

  useEffect(() => {
    let waiting = false;
    const scrolled = () => {
      if (waiting) return;
      waiting = true;
      requestAnimationFrame(() => {
        waiting = false;
        read();
      });
    };
    // Focus that travels by Tab scrolls what it meets into sight: nobody reads there.
    const travelled = (event: globalThis.KeyboardEvent) => {
      if (event.key === 'Tab') heldUntil.current = performance.now() + holdAfterTaking;
    };
    window.addEventListener('keydown', travelled, { capture: true });
    window.addEventListener('scroll', scrolled, { passive: true });
    window.addEventListener('resize', scrolled);
    return () => {
      window.removeEventListener('keydown', travelled, { capture: true });
      window.removeEventListener('scroll', scrolled);
      window.removeEventListener('resize', scrolled);
    };
  }, [read]);

  const take = useCallback((id: string) => {
    heldUntil.current = performance.now() + holdAfterTaking;
    setCurrent(id);
  }, []);
  const join = useCallback(
    (id: string, element: HTMLElement) => {
      joined.current.set(id, element);
      read();
      return () => {
        joined.current.delete(id);
      };
    },
    [read],
  );
  const inHand = useMemo(() => ({ current, take, join }), [current, take, join]);
  return <PassagesContext.Provider value={inHand}>{children}</PassagesContext.Provider>;
};

export const useCurrentPassage = (): string | null => useContext(PassagesContext).current;

interface PassageProps {
  readonly id: string;
  readonly title: string;
  readonly children: ReactNode;
}

/** One passage of words. Touching anything in it, or reading it, brings its picture to the table. */
export const Passage = ({ id, title, children }: PassageProps) => {
  const { current, take, join } = useContext(PassagesContext);
  const element = useRef<HTMLElement>(null);
  const resting = useRef(0);
  useEffect(() => (element.current ? join(id, element.current) : undefined), [id, join]);
  useEffect(() => () => window.clearTimeout(resting.current), []);
  const enter = () => {
    window.clearTimeout(resting.current);
    take(id);
  };
  const arrive = () => {
    window.clearTimeout(resting.current);
    resting.current = window.setTimeout(() => take(id), restBeforeTaking);
  };
  const leave = (event: FocusEvent) => {
    if (!element.current?.contains(event.relatedTarget)) window.clearTimeout(resting.current);
  };
  const key = (event: KeyboardEvent) => {
    if (event.key !== 'Tab' && event.key !== 'Shift') enter();
  };
  return (
    <section
      ref={element}
      id={id}
      className={current === id ? 'passage passage-current' : 'passage'}
      aria-labelledby={`${id}-head`}
      onFocus={arrive}
      onBlur={leave}
      onKeyDown={key}
      onPointerDown={enter}
      onClick={enter}
    >
      <h2 id={`${id}-head`} tabIndex={-1}>
        {title}
      </h2>
      {children}
      <button
        type="button"
        className="to-table"
        onClick={() => document.getElementById('table-top')?.focus({ preventScroll: true })}
      >
        {webWords.make.lookOnTable}
      </button>
    </section>
  );
};

/** The passages' names in a row, to go to one at once. */
export const PassageLinks = ({
  label,
  passages,
}: {
  label: string;
  passages: readonly { id: string; title: string }[];
}) => {
  const { current, take } = useContext(PassagesContext);
  const go = (id: string) => {
    document.getElementById(id)?.scrollIntoView({ block: 'start' });
    document.getElementById(`${id}-head`)?.focus({ preventScroll: true });
    window.history.replaceState(null, '', `#${id}`);
    take(id);
  };
  return (
    <nav className="passage-links" aria-label={label}>
      <ul>
        {passages.map(({ id, title }) => (
          <li key={id}>
            <a
              href={`#${id}`}
              aria-current={current === id ? 'true' : undefined}
              onClick={(event) => {
                event.preventDefault();
                go(id);
              }}
            >
              {title}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
};
