import { useEffect, useRef, useState } from 'react';

/** Slow enough to follow one valve with the eye [degrees of crank per second]. */
const turningSpeed = 60;
export const cycle = 720;
export const inCycle = (degrees: number): number => ((degrees % cycle) + cycle) % cycle;

const stillWanted = () => window.matchMedia('(prefers-reduced-motion: reduce)').matches;

export interface Turning {
  readonly degrees: number;
  readonly set: (degrees: number) => void;
  readonly turning: boolean;
  /** Absent where the person asked their device for no motion. */
  readonly toggle?: () => void;
}

/** The crank's angle on the screen, and its slow turning. */
export function useTurning(start = 0): Turning {
  const [degrees, setDegrees] = useState(start);
  const [turning, setTurning] = useState(false);
  const before = useRef(0);
  useEffect(() => {
    if (!turning) return;
    before.current = performance.now();
    let frame = requestAnimationFrame(function step(now) {
      const moved = ((now - before.current) / 1000) * turningSpeed;
      before.current = now;
      setDegrees((d) => inCycle(d + moved));
      frame = requestAnimationFrame(step);
    });
    return () => cancelAnimationFrame(frame);
  }, [turning]);
  return {
    degrees,
    turning,
    set: (to) => {
      setTurning(false);
      setDegrees(inCycle(Math.round(to)));
    },
    ...(stillWanted() ? {} : { toggle: () => setTurning((on) => !on) }),
  };
}
