import { useCallback, useLayoutEffect, useRef, useState } from 'react';
import { type Laid, sheetBounds } from './laid.ts';
import { ruleBreadth } from './Rule.tsx';
import { fitView, resized, type Screen, type View } from './view.ts';

/** Free px on every side of a drawing; at the top and left the rule lies besides. */
const insetsFor = (screen: Screen) => {
  const margin = Math.min(28, screen.width / 24);
  return { left: margin + ruleBreadth, top: margin + ruleBreadth, right: margin, bottom: margin };
};

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
    setView(fitView(sheetBounds(laid), screen, insetsFor(screen)));
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
