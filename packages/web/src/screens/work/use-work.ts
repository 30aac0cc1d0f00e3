import { type Bench, proposeWork, type WorkWish } from '@gudgeon/core/workbench';
import { useCallback, useMemo } from 'react';
import { momentNow, type OpenJob, type Recorder, useBench, useRecord } from '../../shell/index.js';

/** The whole work of one engine, and how a person's wish about it gets into the log. */
export interface WorkDesk {
  readonly job: string;
  readonly bench: Bench;
  readonly recorder: Recorder;
  /** Asks the core and writes; false when it was refused. `spoken` is shown and said back; `raw` is what was keyed. */
  readonly wish: (wish: WorkWish, spoken: string, raw?: string) => boolean;
}

export function useWork(open: OpenJob): WorkDesk {
  const bench = useBench(open);
  const recorder = useRecord(open, bench);
  const { take } = recorder;
  const wish = useCallback<WorkDesk['wish']>(
    (wanted, spoken, raw) => take(proposeWork(bench, wanted, momentNow()), spoken, raw),
    [take, bench],
  );
  return useMemo(() => ({ job: open.job, bench, recorder, wish }), [open.job, bench, recorder, wish]);
}
