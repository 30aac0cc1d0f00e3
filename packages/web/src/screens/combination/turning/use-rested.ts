import { useEffect, useState } from 'react';

/** A slider that has stood for this long rests [ms]. */
const REST = 250;

/** A value once it has stood for a while: for what takes longer than a frame to work out. */
export function useRested<T>(value: T): T {
  const [rested, setRested] = useState(value);
  useEffect(() => {
    if (rested === value) return;
    const timer = window.setTimeout(() => setRested(value), REST);
    return () => window.clearTimeout(timer);
  }, [value, rested]);
  return rested;
}
