import { useState } from 'react';
import type { AwayReason } from './use-away.js';

export interface PastStep {
  readonly id: string;
  readonly words: string;
}
interface YouWereHereProps {
  readonly reason: AwayReason;
  /** At most the last three, oldest first. */
  readonly steps: readonly PastStep[];
  /** What happens to the stage at hand, in words from the core. */
  readonly then: string;
  readonly carryOn: (verified: readonly string[]) => void;
}
const whyWords: Record<AwayReason, string> = {
  'opened-again': 'This screen was opened anew.',
  paused: 'Nothing was touched here for ten minutes.',
  'other-person': 'Another person was working here before.',
};

/** After an interruption: three steps back, each looked at and touched on the engine, not done again. */
export function YouWereHere({ reason, steps, then, carryOn }: YouWereHereProps) {
  const [seen, setSeen] = useState<readonly string[]>([]);
  const left = steps.filter((step) => !seen.includes(step.id)).length;
  return (
    <section className="bench" aria-labelledby="were-here">
      <h1 id="were-here">You were here</h1>
      <p>{whyWords[reason]} Put a hand on each of these on the engine and look. Look only: do not turn it again.</p>
      <ol className="plain here-steps">
        {steps.map((step) => (
          <li key={step.id}>
            <button
              type="button"
              className="act act-second"
              data-bench-control="seen"
              aria-pressed={seen.includes(step.id)}
              onClick={() => setSeen((s) => (s.includes(step.id) ? s : [...s, step.id]))}
            >
              {seen.includes(step.id) ? '✓ ' : ''}
              {step.words}
              <span className="act-key">
                {seen.includes(step.id) ? 'touched and seen' : 'tap when touched and seen'}
              </span>
            </button>
          </li>
        ))}
      </ol>
      <p>{then}</p>
      <button
        type="button"
        className="act"
        data-bench-control="carry-on"
        aria-disabled={left > 0}
        onClick={() => left === 0 && carryOn(seen)}
      >
        {left > 0 ? `${left} still to look at` : 'Carry on'}
      </button>
    </section>
  );
}
