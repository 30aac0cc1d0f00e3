import { ActButton, sayAgain } from '../../bench/index.js';
import { type Action, useActions } from '../../keys/index.js';
import type { SettingStepProps } from './setting-step.js';

/** Nothing to adjust: the rocker is tightened while its valve rests. */
export function FixedStep({ ask, set }: SettingStepProps) {
  const record: Action = {
    name: 'set',
    label: 'Rocker tightened',
    keys: ['Enter', ' '],
    available: true,
    run: () => set({ adjustment: 'fixed' }, 'rocker tightened'),
  };
  const run = useActions([
    record,
    { name: 'again', label: 'Say it again', keys: ['r'], available: true, run: sayAgain },
  ]);
  return (
    <>
      <p className="step-lead" data-current-number>
        {ask.lead}
      </p>
      <ActButton action={record} run={run} />
    </>
  );
}
