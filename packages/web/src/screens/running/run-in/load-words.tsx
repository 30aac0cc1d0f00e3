import { proposeGauge } from '@gudgeon/core/workbench';
import { useState } from 'react';
import { Pick } from '../../../bench/index.js';
import type { RunInProps } from './run-in-props.js';

const LOADS = ['none', 'a quarter', 'half', 'three quarters', 'full', 'changing'] as const;

/** The load is told in words. */
export function LoadWords({ desk }: RunInProps) {
  const [load, setLoad] = useState('');
  const record = (text: string) => {
    if (desk.recorder.take(proposeGauge(desk.bench, { what: 'load-words', text }), `Load: ${text}`)) setLoad(text);
  };
  return (
    <details className="fold">
      <summary>Tell the load</summary>
      <Pick name="Load now" choices={LOADS} chosen={load} choose={record} />
    </details>
  );
}
