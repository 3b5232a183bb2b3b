import { type RefObject, useLayoutEffect, useState } from 'react';
import type { Screen } from './view.ts';

/** The size of an element in px, as it changes; nothing before it is laid out. */
export const useScreen = (element: RefObject<HTMLElement | null>): Screen | null => {
  const [screen, setScreen] = useState<Screen | null>(null);
  useLayoutEffect(() => {
    const seen = element.current;
    if (!seen) return;
    const read = () => {
      const { clientWidth: width, clientHeight: height } = seen;
      setScreen((before) => (before?.width === width && before.height === height ? before : { width, height }));
    };
    read();
    const watch = new ResizeObserver(read);
    watch.observe(seen);
    return () => watch.disconnect();
  }, [element]);
  return screen;
};
