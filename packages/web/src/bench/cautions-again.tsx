import type { Caution } from '@gudgeon/core/workbench';
import { memo } from 'react';
import { SignalPanel } from './signal-panel.js';

interface CautionsProps {
  readonly cautions: readonly Caution[];
}

/** The hazards of this work, folded away but never gone. */
export const CautionsAgain = memo(function CautionsAgain({ cautions }: CautionsProps) {
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
}, sameCautions);

function sameCautions(a: CautionsProps, b: CautionsProps): boolean {
  return a.cautions.length === b.cautions.length && a.cautions.every((one, i) => one === b.cautions[i]);
}
