import { useCallback, useState } from 'react';

const named = (place: string) => `easewright.pasted.${place}`;

const kept = (place: string): string => {
  try {
    return window.localStorage.getItem(named(place)) ?? '';
  } catch {
    return '';
  }
};

/** What stands in a box for pasting, kept in this browser until it is emptied: nothing pasted is lost by leaving the page. */
export const usePasted = (place: string): readonly [string, (text: string) => void] => {
  const [text, setText] = useState(() => kept(place));
  const keep = useCallback(
    (next: string) => {
      setText(next);
      try {
        if (next === '') window.localStorage.removeItem(named(place));
        else window.localStorage.setItem(named(place), next);
      } catch {
        // A full or forbidden browser storage must not stop her typing; the box itself still has it.
      }
    },
    [place],
  );
  return [text, keep];
};
