import { useEffect, useState } from 'react';

/** A value as it was when it last kept still for `ms`: what follows from it need not be worked out at every stop of a slider. */
export const useSettled = <Value>(value: Value, ms = 160): Value => {
  const [settled, setSettled] = useState(value);
  useEffect(() => {
    if (settled === value) return;
    const timer = window.setTimeout(() => setSettled(value), ms);
    return () => window.clearTimeout(timer);
  }, [value, settled, ms]);
  return settled;
};
