import type { ReactNode } from 'react';
import type { Action } from '../keys/index.js';
import { keyWords } from '../keys/index.js';

interface ActButtonProps {
  readonly action: Action;
  readonly run: (name: string) => void;
  readonly second?: boolean;
  readonly children?: ReactNode;
}

/** A control for a gloved thumb: at least 20 mm, acting on release. */
export function ActButton({ action, run, second = false, children }: ActButtonProps) {
  return (
    <button
      type="button"
      className={second ? 'act act-second' : 'act'}
      data-bench-control={action.name}
      aria-disabled={!action.available}
      onClick={() => run(action.name)}
    >
      {children ?? action.label}
      {action.keys.length > 0 && <span className="act-key act-key-name">{keyWords(action)}</span>}
    </button>
  );
}
