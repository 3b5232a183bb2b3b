import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app/App.tsx';
import { DeskProvider } from './app/desk-context.ts';
import { Desk } from './documents/desk.ts';

/** Puts the program on the page. */
export const showPage = (): void => {
  const desk = new Desk({
    fetcher: (path, init) => fetch(path, init),
    storage: window.localStorage,
    now: () => Date.now(),
    later: (what, ms) => window.setTimeout(what, ms),
  });

  window.addEventListener('pagehide', () => desk.flush());
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') desk.flush();
  });

  const page = document.getElementById('page');
  if (!page) throw new Error('the page has nothing to stand in');
  createRoot(page).render(
    <StrictMode>
      <DeskProvider value={desk}>
        <App />
      </DeskProvider>
    </StrictMode>,
  );
};
