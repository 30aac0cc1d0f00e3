import type { SubjectView } from '@gudgeon/core/workbench';
import { useState } from 'react';
import { Working } from '../fit/working.js';

/** Working, sources, what is assumed and what to bear in mind: on a tap. What is assumed is said before the tap as well. */
export function Behind({ view }: { readonly view: SubjectView }) {
  const [open, setOpen] = useState(false);
  const { working, sources, assumed, cautions } = view;
  if (working.length + sources.length + assumed.length + cautions.length === 0) return null;
  return (
    <>
      {cautions.length > 0 && (
        <ul className="plain fit-list" aria-label="To bear in mind">
          {cautions.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
      <details className="fit-fold" onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>
          <h2>Working, sources{assumed.length === 0 ? '' : ` and what is assumed (${assumed.length})`}</h2>
        </summary>
        {open && (
          <div className="stack fit-opened">
            {assumed.length > 0 && (
              <section className="stack" aria-label="Assumed">
                <strong>Assumed, because nobody says otherwise</strong>
                <ul className="fit-working">
                  {assumed.map((line) => (
                    <li key={line}>{line}</li>
                  ))}
                </ul>
              </section>
            )}
            <Working working={working} sources={sources} cautions={[]} />
          </div>
        )}
      </details>
    </>
  );
}
