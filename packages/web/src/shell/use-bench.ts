import { type Bench, openBench } from '@gudgeon/core/workbench';
import { useMemo } from 'react';
import type { OpenJob } from './with-job.js';

/** Engine and log folded once for a screen; made anew only when an entry has come. */
export function useBench({ engine, entries }: OpenJob): Bench {
  return useMemo(() => openBench(engine, entries), [engine, entries]);
}
