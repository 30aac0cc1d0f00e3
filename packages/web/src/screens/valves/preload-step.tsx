import { preloadTravel, turnCount } from '@gudgeon/core/workbench';
import { useState } from 'react';
import { ActButton, sayAgain } from '../../bench/index.js';
import { type Action, useActions } from '../../keys/index.js';
import { Converter } from './converter.js';
import { LargeAsk } from './large-ask.js';
import type { SettingStepProps } from './setting-step.js';

/** Hydraulic lifter: turns past zero lash, as the sheet asks for them or as they were really turned. */
export function PreloadStep({ desk, ask, set }: SettingStepProps) {
  const [turns, setTurns] = useState(ask.turns ?? 0.5);
  const { reading } = preloadTravel(desk.bench.engine, turns);
  const asked = turns === ask.turns;
  const words = `${turnCount(turns)} turn past zero lash`;
  const record: Action = {
    name: 'set',
    label: `Set: ${turnCount(turns)} turn`,
    keys: ['Enter', ' '],
    available: true,
    run: () => set({ adjustment: 'preload', turns, ...(reading && { plungerTravel: reading }) }, words),
  };
  const run = useActions([
    record,
    { name: 'again', label: 'Say it again', keys: ['r'], available: true, run: sayAgain },
  ]);
  return (
    <>
      <LargeAsk lead={ask.lead} number={asked ? ask.number : turnCount(turns)} unit={asked ? ask.unit : 'turn'} />
      {!asked && (
        <p className="step-lead">
          The sheet asks for {ask.number} {ask.unit}.
        </p>
      )}
      <ActButton action={record} run={run} />
      <Converter engine={desk.bench.engine} turns={turns} setTurns={setTurns} />
    </>
  );
}
