import { useCallback, useEffect, useRef } from 'react';

/** The same function through all renders that runs the newest one: what is given it need not be drawn anew. */
export function useSteady<A extends readonly unknown[]>(run: (...given: A) => void): (...given: A) => void {
  const latest = useRef(run);
  useEffect(() => {
    latest.current = run;
  });
  return useCallback((...given: A) => latest.current(...given), []);
}
