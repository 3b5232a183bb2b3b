import { useEffect, useState } from 'react';

/** Whether a finger or button is pressed anywhere on the page: a slider or the table may be under her hand. */
export const useHeld = (): boolean => {
  const [held, setHeld] = useState(false);
  useEffect(() => {
    const press = () => setHeld(true);
    const release = () => setHeld(false);
    const listening = { capture: true };
    window.addEventListener('pointerdown', press, listening);
    // A press that became a scroll, or that was let go of outside the window, is over too.
    for (const end of ['pointerup', 'pointercancel', 'blur']) window.addEventListener(end, release, listening);
    return () => {
      window.removeEventListener('pointerdown', press, listening);
      for (const end of ['pointerup', 'pointercancel', 'blur']) window.removeEventListener(end, release, listening);
    };
  }, []);
  return held;
};
