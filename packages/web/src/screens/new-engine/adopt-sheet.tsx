import { useEffect, useId, useState } from 'react';
import { useLocation } from 'wouter';
import { beginJob, openJob } from '../../log/index.js';
import type { CheckedSheet } from '../../sheet-text/index.js';

interface AdoptSheetProps {
  readonly text: string;
  readonly checked?: CheckedSheet;
  readonly stale: boolean;
  readonly mayAdopt: boolean;
}

/** Makes the sheet the first entry of a new log, and goes to the engine once the server has confirmed it. */
export function AdoptSheet({ text, checked, stale, mayAdopt }: AdoptSheetProps) {
  const id = useId();
  const [, go] = useLocation();
  const [job, setJob] = useState<string>();
  const [trouble, setTrouble] = useState('');
  const engine = checked?.engine;
  const hindrance = whyNot(checked, stale, mayAdopt);

  useEffect(() => {
    if (!job) return;
    const store = openJob(job);
    const look = () => {
      const state = store.get();
      if (state.engine && state.waiting.length === 0) go(`/engine/${job}`);
      else if (state.waiting.length > 0) setTrouble(state.trouble ?? '');
    };
    look();
    return store.subscribe(look);
  }, [job, go]);

  const adopt = () => {
    if (hindrance || !engine || job) return;
    const made = beginJob();
    const written = made.store.write({
      kind: 'sheet-adopted',
      data: { name: engine.name, text, reason: 'first sheet of this engine' },
    });
    if (written.ok) setJob(made.job);
    else setTrouble(written.fault);
  };

  return (
    <div className="stack">
      <button
        type="button"
        className="button button-main"
        aria-disabled={hindrance !== undefined || job !== undefined}
        aria-describedby={`${id}-why`}
        onClick={adopt}
      >
        {job ? 'Waiting for the server to confirm…' : 'Put this engine on a stand'}
      </button>
      <p id={`${id}-why`} role="status">
        {trouble || hindrance || 'The sheet becomes the first entry of the log of this engine.'}
      </p>
    </div>
  );
}

function whyNot(checked: CheckedSheet | undefined, stale: boolean, mayAdopt: boolean): string | undefined {
  if (!mayAdopt) return 'First say who works at this device: every entry names its person.';
  if (!checked || stale) return 'Reading the sheet…';
  if (checked.faults.length > 0) return `${checked.faults.length} to mend first; each is listed above with its line.`;
  return undefined;
}
