import { useCallback, useLayoutEffect, useRef, useState } from 'react';
import type { Bounds } from '../../../src/geometry/index.ts';
import { type Laid, sheetBounds } from './laid.ts';
import { ruleBreadth } from './Rule.tsx';
import { useHeld } from './useHeld.ts';
import { fitView, leaves, outgrown, resized, type Screen, type View } from './view.ts';

/** Free px on every side of a drawing; at the top and left the rule lies besides. */
const insetsFor = (screen: Screen) => {
  const margin = Math.min(28, screen.width / 24);
  return { left: margin + ruleBreadth, top: margin + ruleBreadth, right: margin, bottom: margin };
};

/** What the view was last fitted to, and whether her hand moved it since. */
interface Fitted {
  readonly subject: string;
  readonly bounds: Bounds;
  readonly screen: Screen;
  readonly moved: boolean;
}

/** Whether what is laid reaches out of the view that was fitted. */
const strays = ({ bounds, screen }: Fitted, laid: Laid): boolean =>
  leaves(fitView(bounds, screen, insetsFor(screen)), sheetBounds(laid), screen, ruleBreadth);

/**
 * The view of what is laid: fitted when the subject changes, when its drawing outgrows it, or when asked, and otherwise
 * left where her hand put it. While she drags, a drawing that grows keeps its scale and is fitted once she lets go.
 */
export const useView = (laid: Laid | null, screen: Screen | null) => {
  const [view, setView] = useState<View | null>(null);
  const fitted = useRef<Fitted | null>(null);
  const held = useHeld();

  const showAll = useCallback(() => {
    if (!laid || !screen || screen.width === 0 || screen.height === 0) return;
    const bounds = sheetBounds(laid);
    fitted.current = { subject: laid.subject, bounds, screen, moved: false };
    setView(fitView(bounds, screen, insetsFor(screen)));
  }, [laid, screen]);

  useLayoutEffect(() => {
    if (!laid || !screen || screen.width === 0 || screen.height === 0) return;
    const before = fitted.current;
    if (before?.subject !== laid.subject) showAll();
    else if (!held && outgrown(before.bounds, sheetBounds(laid))) showAll();
    // While her hand has left the view as it was fitted, nothing grows out of sight.
    else if (!held && !before.moved && before.screen === screen && strays(before, laid)) showAll();
    else if (before.screen !== screen) {
      if (!before.moved) showAll();
      else {
        fitted.current = { ...before, screen };
        setView((now) => (now ? resized(now, before.screen, screen) : now));
      }
    }
  }, [laid, screen, showAll, held]);

  const move = useCallback((change: (view: View) => View) => {
    if (fitted.current) fitted.current = { ...fitted.current, moved: true };
    setView((now) => (now ? change(now) : now));
  }, []);

  return { view, move, showAll };
};
