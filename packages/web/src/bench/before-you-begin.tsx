import type { Caution } from '@gudgeon/core/workbench';
import { useActions } from '../keys/index.js';
import { ActButton } from './act-button.js';
import { SignalPanel } from './signal-panel.js';

/** Hazards stand before the first step that needs them, once, and not on every screen after. */
export function BeforeYouBegin({
  cautions,
  begin,
}: {
  readonly cautions: readonly Caution[];
  readonly begin: () => void;
}) {
  const actions = [{ name: 'begin', label: 'Read. Begin', keys: ['Enter', ' '], available: true, run: begin }] as const;
  const run = useActions(actions);
  return (
    <section className="bench" aria-labelledby="before">
      <h2 id="before">Before you begin</h2>
      {cautions.map((caution) => (
        <SignalPanel key={caution.can} {...caution} />
      ))}
      <p className="field-hint">The engine maker’s manual and the part maker’s sheet decide.</p>
      <ActButton action={actions[0]} run={run} />
    </section>
  );
}
