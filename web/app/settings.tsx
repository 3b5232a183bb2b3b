import { createContext, type ReactNode, useCallback, useContext, useMemo, useRef, useState } from 'react';
import type { Paper } from '../../src/make/index.ts';
import { formatLength, type LengthFormat, type Problem, type ProblemValue, type Unit } from '../../src/units/index.ts';
import { fill, type ProblemWords, sentence } from '../../src/words/index.ts';
import { useDesk, useDocuments } from './desk-context.ts';

/** How the program is set, kept in the workroom as one document. */
export interface Settings {
  readonly format: 'easewright-settings/1';
  readonly unit: Unit;
  readonly paper: Paper;
  /** The make in hand. */
  readonly onTheTable: string | null;
  /** What the page remembers of itself: words typed that do not read as a length yet, what is folded away. */
  readonly page: Readonly<Record<string, string | number | boolean | null>>;
}

const fresh: Settings = {
  format: 'easewright-settings/1',
  unit: 'cm',
  paper: 'a4',
  onTheTable: null,
  page: {},
};

interface SettingsInHand {
  readonly settings: Settings;
  readonly change: (change: (settings: Settings) => Settings) => void;
}

const SettingsContext = createContext<SettingsInHand>({ settings: fresh, change: () => {} });

/** Loads the settings before anything is shown, so that no length is first seen in the wrong unit. */
export const SettingsProvider = ({ children, waiting }: { children: ReactNode; waiting: ReactNode }) => {
  const desk = useDesk();
  const asked = useDocuments<Settings>('settings');
  const making = useRef<Promise<string | null> | null>(null);
  const stored = asked.state === 'here' ? asked.value[0] : undefined;
  /** What was set before the workroom kept any settings: it holds at once, and is kept as soon as there is where. */
  const [ahead, setAhead] = useState<Settings>(fresh);
  const settings = stored?.body ?? ahead;
  const id = stored?.id;

  const change = useCallback(
    (apply: (settings: Settings) => Settings) => {
      if (id) {
        desk.edit<Settings>(id, apply, 'settings');
        return;
      }
      setAhead(apply);
      making.current ??= desk.create<Settings>('settings', fresh).then(async (answer) => {
        if (answer.kind === 'answer') return answer.value.id;
        // Another page made them first: there is one such document in a workroom.
        const listed = await desk.loadList('settings');
        return listed.kind === 'answer' ? (listed.value[0]?.id ?? null) : null;
      });
      void making.current.then((made) => {
        if (made) desk.edit<Settings>(made, apply, 'settings');
        else making.current = null;
      });
    },
    [desk, id],
  );
  const inHand = useMemo(() => ({ settings, change }), [settings, change]);
  if (asked.state === 'asking') return waiting;
  return <SettingsContext.Provider value={inHand}>{children}</SettingsContext.Provider>;
};

export const useSettings = (): SettingsInHand => useContext(SettingsContext);

export const useUnit = (): Unit => useSettings().settings.unit;

/** Her language for numbers and dates; the words themselves are English so far. */
export const locale = 'en-GB';

/** Ways of saying things in her unit. */
export interface Say {
  readonly unit: Unit;
  readonly length: (mm: number, format?: LengthFormat) => string;
  readonly words: (template: string, values?: Readonly<Record<string, ProblemValue>>) => string;
  readonly problem: (problem: Problem) => ProblemWords;
  /** `14 March 2026`. */
  readonly date: (iso: string) => string;
  readonly time: (iso: string) => string;
}

export const useSay = (): Say => {
  const unit = useUnit();
  return useMemo(
    () => ({
      unit,
      length: (mm, format) => formatLength(mm, unit, { locale, ...format }),
      words: (template, values = {}) => fill(template, values, unit, locale),
      problem: (problem) => sentence(problem, unit, locale),
      date: (iso) => {
        const day = new Date(iso.length === 10 ? `${iso}T12:00:00` : iso);
        return Number.isNaN(day.valueOf()) ? iso : new Intl.DateTimeFormat(locale, { dateStyle: 'long' }).format(day);
      },
      time: (iso) => {
        const at = new Date(iso);
        return Number.isNaN(at.valueOf()) ? iso : new Intl.DateTimeFormat(locale, { timeStyle: 'short' }).format(at);
      },
    }),
    [unit],
  );
};

/** Words typed into a field that do not read yet: kept in the workroom until they do, or are taken out. */
export const useDraft = (place: string): readonly [string | null, (text: string | null) => void] => {
  const { settings, change } = useSettings();
  const name = `draft:${place}`.slice(0, 100);
  const kept = settings.page[name];
  const keep = useCallback(
    (text: string | null) =>
      change((before) => {
        if (text !== null) return { ...before, page: { ...before.page, [name]: text.slice(0, 2000) } };
        if (!(name in before.page)) return before;
        const { [name]: _gone, ...page } = before.page;
        return { ...before, page };
      }),
    [change, name],
  );
  return [typeof kept === 'string' ? kept : null, keep];
};
