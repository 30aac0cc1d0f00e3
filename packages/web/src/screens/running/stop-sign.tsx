import { useEffect } from 'react';
import { say, toneStop } from '../../bench/index.js';

/** The tone comes again after this time [ms], as long as the sign stands. */
const AGAIN = 3000;

interface StopSignProps {
  /** What is to be stopped, and why. */
  readonly words: string;
  /** A figure that goes on beside it, told to nobody again and again. */
  readonly beside?: string;
}

/** Stop it: the shape, the word, what for; with a tone and, where it is wanted, spoken. */
export function StopSign({ words, beside }: StopSignProps) {
  useEffect(() => {
    toneStop();
    say(`Stop. ${words}`);
    const timer = window.setInterval(toneStop, AGAIN);
    return () => window.clearInterval(timer);
  }, [words]);
  return (
    <div className="stop-sign" role="alert" data-stop-now>
      <svg viewBox="0 0 100 100" aria-hidden="true" focusable="false">
        <path d="M30 3h40l27 27v40L70 97H30L3 70V30z" fill="currentColor" />
        <path className="stop-cut" d="M32 32l36 36M68 32L32 68" strokeWidth="13" strokeLinecap="round" />
      </svg>
      <strong>STOP</strong>
      {beside !== undefined && (
        <span className="stop-beside" aria-hidden="true">
          {beside}
        </span>
      )}
      <p>{words}</p>
    </div>
  );
}
