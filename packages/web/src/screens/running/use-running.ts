import type { Bench } from '@gudgeon/core/workbench';
import { useMemo } from 'react';
import { type OpenJob, type Recorder, useBench, useRecord } from '../../shell/index.js';

/** The running engine of one job, and how what is seen of it gets into the log. */
export interface RunningDesk {
  readonly job: string;
  readonly bench: Bench;
  readonly recorder: Recorder;
}

export function useRunning(open: OpenJob): RunningDesk {
  const bench = useBench(open);
  const recorder = useRecord(open, bench);
  return useMemo(() => ({ job: open.job, bench, recorder }), [open.job, bench, recorder]);
}
