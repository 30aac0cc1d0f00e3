import type { WrenchLine, WrenchView } from '@gudgeon/core/workbench';
import { Link } from 'wouter';
import { letGo } from '../../keys/index.js';
import type { WrenchChoice } from './use-wrench.js';
import { WrenchAdapter } from './wrench-adapter.js';

interface WrenchChoiceProps {
  readonly wrench: WrenchView;
  readonly choice: WrenchChoice;
  /** Where gauges and wrenches are kept. */
  readonly gauges: string;
  /** What the sheet asks for. */
  readonly asked?: string;
}

/** Which wrench is in the hand, why it fits or not, and an adapter on it. */
export function ChooseWrench({ wrench, choice, gauges, asked }: WrenchChoiceProps) {
  const { state, kept, warnings, notes, set } = wrench;
  const chosen = kept.some((one) => one.chosen);
  return (
    <>
      {state !== 'fits' && state !== 'does-not-fit' && <p className="still-open">{wrench.words}</p>}
      {warnings.map((words) => (
        <p key={words} className="still-open">
          {words}
        </p>
      ))}
      <details className="fold">
        <summary>{chosen ? `Wrench: ${kept.find((one) => one.chosen)?.name}` : 'Torque wrench'}</summary>
        <div className="stack">
          {asked && <p>By the sheet: {asked}.</p>}
          {kept.map((line) => (
            <WrenchButton key={line.id} line={line} take={choice.take} />
          ))}
          {set && <p>{set.working}</p>}
          {notes.length > 0 && <p>{notes.join(' ')}</p>}
          {chosen && <WrenchAdapter key={choice.hand.adapter?.reach} choice={choice} />}
          <Link className="button" href={gauges}>
            Keep a wrench, or hold one against a standard
          </Link>
        </div>
      </details>
    </>
  );
}

function WrenchButton({ line, take }: { readonly line: WrenchLine; readonly take: (wrench: string) => void }) {
  return (
    <div>
      <button
        type="button"
        className="button"
        aria-pressed={line.chosen}
        onClick={(event) => {
          take(line.id);
          letGo(event);
        }}
      >
        {line.name}
      </button>
      <p className="field-hint">
        {line.fits === undefined ? 'Not known' : line.fits ? 'Fits' : 'Does not fit'}: {line.words}.
      </p>
    </div>
  );
}
