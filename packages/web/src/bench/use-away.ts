import { useCallback, useEffect, useState } from 'react';

export type AwayReason = 'opened-again' | 'paused' | 'other-person';
/** Ten minutes without a hand on the device counts as an interruption [ms]. */
export const awayTime = 10 * 60 * 1000;

interface Trace {
  readonly at: number;
  readonly person: string;
}
const traceKey = (place: string) => `gudgeon.trace.${place}`;

function readTrace(place: string): Trace | undefined {
  try {
    const text = localStorage.getItem(traceKey(place));
    return text ? (JSON.parse(text) as Trace) : undefined;
  } catch {
    return undefined;
  }
}

/**
 * Tells whether the person has come back after an interruption: the page was opened anew, ten minutes went by without
 * input, or another person holds the device. `back` clears it once the last steps have been looked at again.
 */
export function useAway(
  place: string,
  person: string,
  started: boolean,
): { readonly reason?: AwayReason; readonly back: () => void } {
  const [reason, setReason] = useState<AwayReason | undefined>(() => (started ? 'opened-again' : undefined));
  useEffect(() => {
    const before = readTrace(place);
    if (started && before && before.person !== '' && before.person !== person) setReason('other-person');
    let last = Date.now();
    const touched = () => {
      const now = Date.now();
      if (now - last > awayTime) setReason('paused');
      last = now;
      try {
        localStorage.setItem(traceKey(place), JSON.stringify({ at: now, person }));
      } catch {
        // Without storage the page itself still notices a pause.
      }
    };
    const looked = () => {
      if (Date.now() - last > awayTime) setReason('paused');
    };
    window.addEventListener('pointerdown', touched, true);
    window.addEventListener('keydown', touched, true);
    document.addEventListener('visibilitychange', looked);
    const timer = window.setInterval(looked, 30_000);
    return () => {
      window.removeEventListener('pointerdown', touched, true);
      window.removeEventListener('keydown', touched, true);
      document.removeEventListener('visibilitychange', looked);
      window.clearInterval(timer);
    };
  }, [place, person, started]);
  const back = useCallback(() => setReason(undefined), []);
  return reason ? { reason, back } : { back };
}
