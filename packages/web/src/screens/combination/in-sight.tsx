import type { AnswerRow } from '@gudgeon/core/workbench';
import { VerdictShape, verdictState } from '../../bench/index.js';

/** As many as fit over the sliders of a phone. */
const MOST = 3;

/** The answers that are watched stay over the sliders while a hand moves one. */
export function InSight({ rows }: { readonly rows: readonly AnswerRow[] }) {
  if (rows.length === 0) return null;
  return (
    <ul className="plain in-sight" aria-label="In sight">
      {rows.slice(0, MOST).map(({ key, name, value, verdict, nearEnd }) => (
        <li key={key} data-watched={key}>
          {verdict && (
            <span className="small-shape">
              <VerdictShape state={verdictState(verdict)} {...(nearEnd ? { nearEnd } : {})} />
            </span>
          )}
          <span>
            <small>{name}</small> <b>{value}</b> {verdict && <small>{verdict}</small>}
          </span>
        </li>
      ))}
    </ul>
  );
}
