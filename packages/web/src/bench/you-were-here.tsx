import type { Answer, ResumeView } from '@gudgeon/core/workbench';
import { useState } from 'react';
import type { AwayReason } from './use-away.js';

interface YouWereHereProps {
  readonly reason: AwayReason;
  readonly resume: ResumeView;
  readonly carryOn: (verified: readonly string[], answer: Answer | undefined) => void;
}
const whyWords: Record<AwayReason, string> = {
  'opened-again': 'This screen was opened anew.',
  paused: 'Nothing was touched here for ten minutes.',
  'other-person': 'Another person was working here before.',
};

/** After an interruption: the last steps, each touched on the engine and looked at, never done again here. */
export function YouWereHere({ reason, resume, carryOn }: YouWereHereProps) {
  const [seen, setSeen] = useState<readonly string[]>([]);
  const left = resume.verify.filter((step) => !seen.includes(step.key)).length;
  const [answer, setAnswer] = useState<Answer>();
  const ready = left === 0 && (!resume.ask || answer !== undefined);
  return (
    <section className="bench" aria-labelledby="were-here">
      <h2 id="were-here" className="step-title">
        You were here
      </h2>
      <p>
        {whyWords[reason]} {resume.words}
      </p>
      <ol className="plain here-steps">
        {resume.verify.map((step) => (
          <li key={step.key}>
            <Choice
              name={`seen ${step.key}`}
              words={step.words}
              chosen={seen.includes(step.key)}
              hint={seen.includes(step.key) ? 'touched and seen' : 'tap when touched and seen'}
              choose={() => setSeen((s) => (s.includes(step.key) ? s : [...s, step.key]))}
            />
          </li>
        ))}
      </ol>
      {resume.ask && (
        <fieldset className="plain here-steps">
          <legend className="ask-number">{resume.ask.words}</legend>
          {resume.ask.answers.map((each) => (
            <Choice
              key={each.id}
              name={`mark ${each.id}`}
              words={each.label}
              chosen={answer?.id === each.id}
              choose={() => setAnswer(each)}
            />
          ))}
        </fieldset>
      )}
      <button
        type="button"
        className="act apart"
        data-bench-control="carry-on"
        aria-disabled={!ready}
        onClick={() => ready && carryOn(seen, answer)}
      >
        {left > 0 ? `${left} still to touch` : ready ? 'Carry on' : 'Look for the mark first'}
      </button>
    </section>
  );
}

interface ChoiceProps {
  readonly name: string;
  readonly words: string;
  readonly chosen: boolean;
  readonly hint?: string;
  readonly choose: () => void;
}
function Choice({ name, words, chosen, hint, choose }: ChoiceProps) {
  return (
    <button type="button" className="act act-second" data-bench-control={name} aria-pressed={chosen} onClick={choose}>
      {chosen ? '✓ ' : ''}
      {words}
      {hint && <span className="act-key">{hint}</span>}
    </button>
  );
}
