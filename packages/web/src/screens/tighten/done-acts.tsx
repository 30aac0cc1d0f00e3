import type { TightenView } from '@gudgeon/core/workbench';
import { StrikeOut } from '../../bench/index.js';
import type { Recorder } from '../../shell/index.js';

/** What has been recorded on this joint, latest first; each can be struck out with a reason, and stays readable. */
export function DoneActs({ view, recorder }: { readonly view: TightenView; readonly recorder: Recorder }) {
  if (view.done.length === 0 && view.notes.length === 0) return null;
  return (
    <>
      {view.done.length > 0 && (
        <details className="fold">
          <summary>Recorded here ({view.done.length})</summary>
          <ol className="plain stack">
            {view.done.toReversed().map((one) => (
              <li key={one.key}>
                <StrikeOut
                  words={one.words}
                  given={one.given}
                  strike={(reason) => recorder.strikeOut(one.given.entry, reason)}
                />
              </li>
            ))}
          </ol>
        </details>
      )}
      {view.notes.length > 0 && (
        <details className="fold">
          <summary>Notes of the sheet ({view.notes.length})</summary>
          <ul className="stack">
            {view.notes.map((note) => (
              <li key={note}>{note}</li>
            ))}
          </ul>
        </details>
      )}
      {view.advisory && (
        <details className="fold">
          <summary>{view.advisory.words}</summary>
          <ul className="stack">
            {[...view.advisory.working, ...view.advisory.sources].map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}
