import { useEffect, useRef, useState } from 'react';

const radians = (degrees: number) => (degrees * Math.PI) / 180;
/** Slow enough to follow one valve with the eye, unless a whole cycle would then take too long. */
const slowest = radians(60);
const longest = 7;
const still = () => window.matchMedia('(prefers-reduced-motion: reduce)').matches;

export interface Motion {
  /** Crank angle as drawings count it. */
  readonly angle: number;
  readonly playing: boolean;
  readonly step: (degrees: number) => void;
  /** Absent where the person asked their device for no motion, or nothing turns. */
  readonly play?: () => void;
}

/** The drawn crank on its way from one place to the next: at the end of it at first, played or stepped on request. */
export function useMotion(from: number, to: number): Motion {
  const [angle, setAngle] = useState(to);
  const [playing, setPlaying] = useState(false);
  const began = useRef(0);
  useEffect(() => {
    if (!playing) return;
    const speed = Math.max(slowest, (to - from) / longest);
    began.current = performance.now();
    let frame = requestAnimationFrame(function turn(now) {
      const next = from + ((now - began.current) / 1000) * speed;
      setAngle(Math.min(next, to));
      if (next >= to) setPlaying(false);
      else frame = requestAnimationFrame(turn);
    });
    return () => cancelAnimationFrame(frame);
  }, [playing, from, to]);
  return {
    angle,
    playing,
    step: (degrees) => {
      setPlaying(false);
      setAngle((now) => now + radians(degrees));
    },
    ...(still() || to - from < radians(1) ? {} : { play: () => setPlaying((on) => !on) }),
  };
}
