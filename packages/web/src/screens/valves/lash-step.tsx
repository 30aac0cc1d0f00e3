import { gapConditions } from '@gudgeon/core/workbench';
import { AskThenKey } from './ask-then-key.js';
import { GapEntry } from './gap-entry.js';
import { GaugeChoice } from './gauge-choice.js';
import type { SettingStepProps } from './setting-step.js';

/** Mechanical lash: set with the feeler, then the gap as measured, cold or hot. */
export function LashStep({ desk, valve, ask, set }: SettingStepProps) {
  const conditions = gapConditions(desk.bench.engine, valve.valve.kind);
  return (
    <AskThenKey
      desk={desk}
      ask={ask}
      label="It is set: key the gap"
      choice={<GaugeChoice desk={desk} conditions={conditions} />}
    >
      <GapEntry
        desk={desk}
        valve={valve}
        slot={`${valve.place}: gap as set, ${desk.condition}`}
        take={({ raw, reading }, words) => set({ adjustment: 'lash', lash: reading }, words, raw)}
      />
    </AskThenKey>
  );
}
