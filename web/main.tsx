import './styles/type.css';
import './styles/base.css';
import './styles/table.css';
import './styles/parts.css';
import './styles/layout.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { config } from 'zod/v4/core';
import { App } from './app/App.tsx';
import { DeskProvider } from './app/desk-context.ts';
import { Desk } from './documents/desk.ts';

// Schemas would else try whether they may write code at run time: the page's own policy forbids it.
config({ jitless: true });

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
