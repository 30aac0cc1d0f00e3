import type { ValveSettingView } from '@gudgeon/core/workbench';
import { StrikeOut } from '../../bench/index.js';
import type { Desk } from './desk.js';

const stateWords: Readonly<Record<ValveSettingView['state'], string>> = {
  open: 'open',
  set: 'set',
  checked: 'set, looked at again',
  bad: 'found wrong after two turns',
};

/** Every valve with what is recorded; each record can be struck out with a reason, and stays readable. */
export function DoneValves({ desk }: { readonly desk: Desk }) {
  const done = desk.view.valves.filter((valve) => valve.given !== undefined);
  if (done.length === 0) return null;
  return (
    <details className="fold">
      <summary>Recorded so far ({done.length})</summary>
      <ol className="plain stack">
        {done.map(({ key, place, state, given }) => (
          <li key={key}>
            {given && (
              <StrikeOut
                words={`${place}: ${given.words}; ${stateWords[state]}`}
                given={given}
                strike={(reason) => desk.recorder.strikeOut(given.entry, reason)}
              />
            )}
          </li>
        ))}
      </ol>
    </details>
  );
}
