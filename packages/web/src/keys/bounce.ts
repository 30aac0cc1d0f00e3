/** A second identical action sooner than this is a bounce of the hand or the pedal [ms]. */
export const bounceTime = 400;

export interface BounceGuard {
  /**
   * True when the action may run now; a refused one does not lengthen the wait. `meant`: something else was done by hand since the last
   * time, so that this is no bounce however soon it comes.
   */
  readonly allows: (name: string, now: number, meant?: boolean) => boolean;
}

/** Refuses a second action of the same name within `bounceTime`. Times in milliseconds of any steady clock. */
export function bounceGuard(): BounceGuard {
  const last = new Map<string, number>();
  return {
    allows: (name, now, meant = false) => {
      const before = last.get(name);
      if (!meant && before !== undefined && now - before < bounceTime) return false;
      last.set(name, now);
      return true;
    },
  };
}
