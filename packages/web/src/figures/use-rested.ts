import { useEffect, useRef, useState } from 'react';

/** The value as it was when it last had been left alone for so long [ms]. */
export function useRested<T>(value: T, rest: number): T {
  const [rested, setRested] = useState(value);
  const latest = useRef({ value, since: 0 });
  const timer = useRef<number>(undefined);
  useEffect(() => {
    latest.current = { value, since: performance.now() };
    // One timer for a whole move: to end and begin one with every step of a slider takes longer than to look at the clock.
    const look = () => {
      const left = latest.current.since + rest - performance.now();
      timer.current = left > 0 ? window.setTimeout(look, left) : undefined;
      if (left <= 0) setRested(latest.current.value);
    };
    timer.current ??= window.setTimeout(look, rest);
  }, [value, rest]);
  useEffect(
    () => () => {
      window.clearTimeout(timer.current);
      timer.current = undefined;
    },
    [],
  );
  return rested;
}
