import type { Caution } from '@gudgeon/core/workbench';
import { SignalPanel } from './signal-panel.js';

/** The hazards of this work, folded away but never gone. */
export function CautionsAgain({ cautions }: { readonly cautions: readonly Caution[] }) {
  if (cautions.length === 0) return null;
  return (
    <details className="fold">
      <summary>Cautions for this work ({cautions.length})</summary>
      <div className="stack">
        {cautions.map((caution) => (
          <SignalPanel key={caution.can} {...caution} />
        ))}
      </div>
    </details>
  );
}
