import { gapConditions } from '@gudgeon/core/workbench';
import { GapEntry } from './gap-entry.js';
import { GaugeChoice } from './gauge-choice.js';
import { LargeAsk } from './large-ask.js';
import type { SettingStepProps } from './valve-step.js';

/** Mechanical lash: set with the feeler, then the gap as measured, cold or hot. */
export function LashStep({ desk, valve, ask, set }: SettingStepProps) {
  const conditions = gapConditions(desk.bench.engine, valve.valve.kind);
  return (
    <>
      <LargeAsk lead={ask.lead} number={ask.number} unit={ask.unit} />
      <GaugeChoice desk={desk} conditions={conditions} />
      <GapEntry
        desk={desk}
        valve={valve}
        slot={`${valve.place}: gap as set, ${desk.condition}`}
        take={({ raw, reading }, words) => set({ adjustment: 'lash', lash: reading }, words, raw)}
      />
    </>
  );
}
