import { Verdict } from '../../bench/index.js';
import type { Desk } from './desk.js';

/** The verdict on the gap before, kept in sight until the next one. */
export function LastGap({ desk }: { readonly desk: Desk }) {
  if (!desk.last) return null;
  return (
    <section className="stack" aria-label="Measured before this">
      <p className="field-name">{desk.last.place}</p>
      <Verdict {...desk.last.verdict} />
    </section>
  );
}
