import { useCallback, useEffect, useState } from 'react';

export type AwayReason = 'opened-again' | 'paused' | 'other-person';
/** Ten minutes without a hand on the device counts as an interruption [ms]. */
export const awayTime = 10 * 60 * 1000;

interface Hand {
  readonly at: number;
  readonly person: string;
}
/**
 * The last hand on each place of work, in the memory of this page only: a page that was opened anew does not know
 * how long the person was away, and asks.
 */
const hands = new Map<string, Hand>();

/** Why the work at a place was interrupted; undefined when the same hand was there less than ten minutes ago. */
export function interruption(before: Hand | undefined, person: string, now: number): AwayReason | undefined {
  if (!before) return 'opened-again';
  if (before.person !== person) return 'other-person';
  return now - before.at > awayTime ? 'paused' : undefined;
}

export interface Away {
  readonly reason?: AwayReason;
  /** To be called when the last steps have been looked at again, or there was nothing to look at. */
  readonly back: () => void;
}

/** Notices that the person has come back to a place of work after an interruption. */
export function useAway(place: string, person: string): Away {
  const [reason, setReason] = useState(() => interruption(hands.get(place), person, Date.now()));
  useEffect(() => {
    const look = () => {
      const why = interruption(hands.get(place), person, Date.now());
      if (why) setReason((known) => known ?? why);
    };
    const touched = () => {
      look();
      if (hands.has(place)) hands.set(place, { at: Date.now(), person });
    };
    look();
    window.addEventListener('pointerdown', touched, true);
    window.addEventListener('keydown', touched, true);
    document.addEventListener('visibilitychange', look);
    const timer = window.setInterval(look, 30_000);
    return () => {
      window.removeEventListener('pointerdown', touched, true);
      window.removeEventListener('keydown', touched, true);
      document.removeEventListener('visibilitychange', look);
      window.clearInterval(timer);
    };
  }, [place, person]);
  const back = useCallback(() => {
    hands.set(place, { at: Date.now(), person });
    setReason(undefined);
  }, [place, person]);
  return reason ? { reason, back } : { back };
}
