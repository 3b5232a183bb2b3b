import { useSyncExternalStore } from 'react';

const query = () => window.matchMedia('(max-width: 899px)');

const subscribe = (listener: () => void) => {
  const narrow = query();
  narrow.addEventListener('change', listener);
  return () => narrow.removeEventListener('change', listener);
};

/** Whether the table lies above the words, as on a phone: what is drawn on it is then seen small. */
export const useNarrow = (): boolean => useSyncExternalStore(subscribe, () => query().matches);
