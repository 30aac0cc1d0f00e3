import { type Bench, openBench } from '@gudgeon/core/workbench';
import { useMemo, useRef } from 'react';
import type { OpenJob } from './with-job.js';

/** Engine and log folded once for a screen; made anew only when an entry has come, and then only what is new is read. */
export function useBench({ engine, entries }: OpenJob): Bench {
  const before = useRef<Bench>(undefined);
  return useMemo(() => {
    before.current = openBench(engine, entries, before.current);
    return before.current;
  }, [engine, entries]);
}
