import type { SubjectView } from '@gudgeon/core/workbench';
import { useState } from 'react';
import { StateFigure } from './missing-figures.js';
import type { CombinationDesk } from './use-combination.js';

interface MoreFiguresProps {
  readonly desk: CombinationDesk;
  readonly view: Pick<SubjectView, 'inputs' | 'missing'>;
}

/** Figures that nobody has given and that nothing waits for: limits that are wanted, small rooms that are not counted. */
export function MoreFigures({ desk, view }: MoreFiguresProps) {
  const [open, setOpen] = useState(false);
  const [picked, setPicked] = useState<string>();
  const waited = new Set(view.missing.map(({ key }) => key));
  const free = view.inputs.filter(({ key, origin }) => origin === 'missing' && !waited.has(key.split('@')[0] ?? key));
  if (free.length === 0) return null;
  const shown = free.find(({ key }) => key === picked);
  return (
    <details className="fit-fold" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <h2>Add a figure or a limit ({free.length})</h2>
      </summary>
      {open && (
        <div className="stack fit-opened">
          <ul className="plain row">
            {free.map(({ key, title }) => (
              <li key={key}>
                <button type="button" className="button" aria-pressed={key === picked} onClick={() => setPicked(key)}>
                  {title}
                </button>
              </li>
            ))}
          </ul>
          {shown && <StateFigure key={shown.key} desk={desk} figure={shown.key} />}
        </div>
      )}
    </details>
  );
}
