import { useEffect } from 'react';

/** Goes to the passage the address names, once it is there. */
export const useArrival = (): void => {
  useEffect(() => {
    const id = window.location.hash.slice(1);
    if (id !== '') document.getElementById(id)?.scrollIntoView({ block: 'start' });
  }, []);
};
