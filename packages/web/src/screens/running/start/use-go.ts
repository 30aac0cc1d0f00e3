import { useCallback, useMemo, useState } from 'react';

/** A go at the starter: lines said aloud, fuel on and all clear, cranking, running without pressure, pressure seen, stopped. */
export type GoPhase = 'lines' | 'clear' | 'cranking' | 'dry' | 'pressure' | 'stopped';
export interface GoRun {
  readonly phase: GoPhase;
  /** Moments by the clock of this device [ms]. */
  readonly crankedAt?: number;
  readonly firedAt?: number;
  readonly pressureAt?: number;
}
export interface Go {
  readonly run: GoRun;
  readonly set: (run: GoRun) => void;
}
const STANDS: GoRun = { phase: 'lines' };
const KEPT: ReadonlySet<string> = new Set<GoPhase>(['cranking', 'dry', 'pressure', 'stopped']);
const place = (job: string) => `gudgeon.go.${job}`;

function kept(job: string): GoRun {
  try {
    const run = JSON.parse(localStorage.getItem(place(job)) ?? '{}') as Partial<GoRun>;
    return run.phase !== undefined && KEPT.has(run.phase) ? { ...run, phase: run.phase } : STANDS;
  } catch {
    return STANDS;
  }
}

/** Where a go at the starter is. From the first turn on it is kept on this device, so that a reload in the midst of it loses no second. */
export function useGo(job: string): Go {
  const [run, setRun] = useState(() => kept(job));
  const set = useCallback(
    (next: GoRun) => {
      setRun(next);
      try {
        if (KEPT.has(next.phase)) localStorage.setItem(place(job), JSON.stringify(next));
        else localStorage.removeItem(place(job));
      } catch {
        // Then it holds until the page is closed.
      }
    },
    [job],
  );
  return useMemo(() => ({ run, set }), [run, set]);
}

/** Seconds between two moments, to a tenth, as they are recorded. */
export const secondsFrom = (from: number | undefined, to: number | undefined): number =>
  from === undefined || to === undefined ? 0 : Math.max(0, Math.round((to - from) / 100) / 10);
