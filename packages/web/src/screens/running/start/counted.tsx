import { secondsText } from '../clock-text.js';
import { StopSign } from '../stop-sign.js';

interface CountedProps {
  readonly seconds: number;
  /** What is counted. */
  readonly name: string;
  /** From here on: stop. */
  readonly most: number | undefined;
  readonly stop: string;
}

/**
 * Seconds of a process, very large; past the agreed figure the sign takes their place and has their height, so that no key moves under a hand
 * that is on its way to it.
 */
export function Counted({ seconds, name, most, stop }: CountedProps) {
  const over = most !== undefined && seconds >= most;
  return (
    <div className="counted">
      {over ? (
        <StopSign words={stop} beside={`${secondsText(seconds)} s`} />
      ) : (
        <>
          <p className="counted-name">
            {name}
            {most !== undefined && `, stop at ${most} s`}
          </p>
          <p className="target-number go-seconds" data-current-number role="timer" aria-live="off">
            {secondsText(seconds)} s
          </p>
        </>
      )}
    </div>
  );
}
