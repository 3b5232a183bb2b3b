import { useCallback, useLayoutEffect, useRef, useState } from 'react';
import type { Laid } from './laid.ts';
import { ruleBreadth } from './Rule.tsx';
import { fitView, resized, type Screen, type View } from './view.ts';

/** Free px round a drawing: enough for the rule and the verbs. */
const marginFor = (screen: Screen) => Math.min(ruleBreadth + 34, screen.width / 8 + 14);

/** The view of what is laid: fitted when the subject changes or when asked, and otherwise left where her hand put it. */
export const useView = (laid: Laid | null, screen: Screen | null) => {
  const [view, setView] = useState<View | null>(null);
  const state = useRef<{ subject: string | null; screen: Screen | null; moved: boolean }>({
    subject: null,
    screen: null,
    moved: false,
  });

  const showAll = useCallback(() => {
    if (!laid || !screen || screen.width === 0 || screen.height === 0) return;
    state.current = { subject: laid.subject, screen, moved: false };
    setView(fitView(laid.drawing.bounds, screen, marginFor(screen)));
  }, [laid, screen]);

  useLayoutEffect(() => {
    if (!laid || !screen || screen.width === 0 || screen.height === 0) return;
    const before = state.current;
    if (before.subject !== laid.subject || before.screen === null) showAll();
    else if (before.screen !== screen) {
      if (!before.moved) showAll();
      else {
        const old = before.screen;
        state.current = { ...before, screen };
        setView((now) => (now ? resized(now, old, screen) : now));
      }
    }
  }, [laid, screen, showAll]);

  const move = useCallback((change: (view: View) => View) => {
    state.current.moved = true;
    setView((now) => (now ? change(now) : now));
  }, []);

  return { view, move, showAll };
};
