import { lazy, type ReactNode, Suspense, useCallback, useEffect, useMemo, useState } from 'react';
import { type ProblemWords, problemWords, webWords } from '../../src/words/index.ts';
import { Page, Waiting } from '../parts/Page.tsx';
import { Trouble } from '../parts/Trouble.tsx';
import { useDesk, useReachable } from './desk-context.ts';
import { ErrorBoundary } from './ErrorBoundary.tsx';
import { type Route, routeOf, usePathname } from './router.ts';
import { Header, Shell } from './Shell.tsx';
import { SettingsProvider, useUnit } from './settings.tsx';
import { type Workroom, WorkroomProvider } from './workroom.ts';

/** Every page is a part of its own, so that the first one comes fast. */
const parts = {
  First: () => import('../first/First.tsx'),
  Home: () => import('../home/Home.tsx'),
  Wearers: () => import('../wearers/Wearers.tsx'),
  WearerPage: () => import('../wearers/WearerPage.tsx'),
  Patterns: () => import('../patterns/Patterns.tsx'),
  PatternPage: () => import('../patterns/PatternPage.tsx'),
  EnvelopePage: () => import('../envelopes/EnvelopePage.tsx'),
  Cloths: () => import('../cloths/Cloths.tsx'),
  ClothPage: () => import('../cloths/ClothPage.tsx'),
  NewMake: () => import('../makes/NewMake.tsx'),
  MakePage: () => import('../makes/MakePage.tsx'),
} as const;

const First = lazy(parts.First);
const Home = lazy(parts.Home);
const Wearers = lazy(parts.Wearers);
const WearerPage = lazy(parts.WearerPage);
const Patterns = lazy(parts.Patterns);
const PatternPage = lazy(parts.PatternPage);
const EnvelopePage = lazy(parts.EnvelopePage);
const Cloths = lazy(parts.Cloths);
const ClothPage = lazy(parts.ClothPage);
const NewMake = lazy(parts.NewMake);
const MakePage = lazy(parts.MakePage);

/** A moment after the first page stands the others are fetched too, so that they open while the program is stopped. */
const fetchAfter = 1500;
const useOtherPages = () => {
  useEffect(() => {
    const timer = window.setTimeout(() => {
      for (const part of Object.values(parts)) part().catch(() => undefined);
    }, fetchAfter);
    return () => window.clearTimeout(timer);
  }, []);
};

const Nowhere = () => {
  const words = problemWords['web.not-here'];
  return <Page title={words?.message ?? ''}>{words && <p>{words.remedy}</p>}</Page>;
};

const pageOf = (route: Route): ReactNode => {
  switch (route.page) {
    case 'home':
      return <Home />;
    case 'wearers':
      return <Wearers />;
    case 'wearer':
      return <WearerPage id={route.id} key={route.id} />;
    case 'patterns':
      return <Patterns />;
    case 'pattern':
      return <PatternPage id={route.id} key={route.id} />;
    case 'envelope':
      return <EnvelopePage id={route.id} key={route.id} />;
    case 'cloths':
      return <Cloths />;
    case 'cloth':
      return <ClothPage id={route.id} key={route.id} />;
    case 'make-new':
      return <NewMake />;
    case 'make':
      return <MakePage id={route.id} key={route.id} />;
    case 'nowhere':
      return <Nowhere />;
  }
};

const opening = <Waiting what={webWords.shell.opening} />;

const Workplace = ({ route, pathname }: { route: Route; pathname: string }) => {
  const unit = useUnit();
  return (
    <Shell unit={unit} header={<Header route={route} />}>
      <ErrorBoundary place={pathname}>
        <Suspense fallback={opening}>{pageOf(route)}</Suspense>
      </ErrorBoundary>
    </Shell>
  );
};

/** Asks what workroom this is, again whenever a silent one begins to answer. */
const useWorkroom = () => {
  const desk = useDesk();
  const reachable = useReachable();
  const [workroom, setWorkroom] = useState<Workroom | null>(null);
  const [refusal, setRefusal] = useState<ProblemWords | null>(null);
  const askAgain = useCallback(
    () =>
      desk.ask<Workroom>('GET', '/api/workroom').then((answer) => {
        if (answer.kind === 'answer') setWorkroom(answer.value);
        setRefusal(answer.kind === 'refusal' ? answer.words : null);
      }),
    [desk],
  );
  useEffect(() => {
    if (reachable) void askAgain();
  }, [askAgain, reachable]);
  return { workroom, setWorkroom, reachable, refusal };
};

export const App = () => {
  const { workroom, setWorkroom, reachable, refusal } = useWorkroom();
  const pathname = usePathname();
  useOtherPages();
  const route = useMemo(() => routeOf(pathname), [pathname]);
  if (!workroom) {
    const silent = problemWords['web.silent'];
    const trouble = refusal ?? (reachable ? null : silent);
    return (
      <main className="alone">
        <p className="head-name">{webWords.name}</p>
        {trouble ? (
          <Trouble words={trouble}>
            <button type="button" className="verb" onClick={() => window.location.reload()}>
              {webWords.shell.reload}
            </button>
          </Trouble>
        ) : (
          opening
        )}
      </main>
    );
  }
  if (!workroom.started) {
    return (
      <ErrorBoundary place="first">
        <Suspense fallback={opening}>
          <First onStarted={setWorkroom} />
        </Suspense>
      </ErrorBoundary>
    );
  }
  return (
    <WorkroomProvider value={workroom}>
      <SettingsProvider waiting={<main className="alone">{opening}</main>}>
        <Workplace route={route} pathname={pathname} />
      </SettingsProvider>
    </WorkroomProvider>
  );
};
