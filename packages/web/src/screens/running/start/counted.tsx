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

/** Seconds of a process, very large; past the agreed figure it says stop. */
export function Counted({ seconds, name, most, stop }: CountedProps) {
  const over = most !== undefined && seconds >= most;
  return (
    <>
      {over && <StopSign words={stop} />}
      <div className="target">
        <h2 className="step-lead">{name}</h2>
        <p className="target-number go-seconds" data-current-number role="timer" aria-live="off">
          {secondsText(seconds)} s
        </p>
        {most !== undefined && !over && <p>Stop at {most} s</p>}
      </div>
    </>
  );
}
