import { useEffect } from 'react';
import { ActButton, say } from '../../../bench/index.js';
import { type Action, useActions, useFromTop } from '../../../keys/index.js';
import type { GoProps } from './start-props.js';

/** Fuel is on: one key, and nothing to read. */
export function ClearStep({ go }: GoProps) {
  useFromTop('clear');
  useEffect(() => say('All clear?'), []);
  const crank: Action = {
    name: 'crank',
    label: 'Cranking',
    keys: ['Enter', ' ', 'PageDown'],
    available: true,
    run: () => go.set({ phase: 'cranking', crankedAt: Date.now() }),
  };
  const back: Action = {
    name: 'back',
    label: 'Not now: fuel off',
    keys: ['Escape'],
    available: true,
    run: () => go.set({ phase: 'lines' }),
  };
  const run = useActions([crank, back]);
  return (
    <section className="bench" data-go="clear">
      <h2 className="aloud">All clear?</h2>
      <div className="go-main">
        <ActButton action={crank} run={run} />
      </div>
      <div className="apart">
        <ActButton action={back} run={run} second />
      </div>
    </section>
  );
}
