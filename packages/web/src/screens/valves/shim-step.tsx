import { lengthReading } from '@gudgeon/core/workbench';
import { AskThenKey } from './ask-then-key.js';
import { GapEntry } from './gap-entry.js';
import { GaugeChoice } from './gauge-choice.js';
import type { SettingStepProps } from './setting-step.js';

/** The chosen shim goes in, then the gap is measured again: a shim that is only marked right proves nothing. */
export function ShimStep({ desk, valve, ask, set }: SettingStepProps) {
  const shim = ask.number === '' ? undefined : lengthReading(`${ask.number} ${ask.unit}`);
  return (
    <AskThenKey desk={desk} ask={ask} label="It is in: key the gap" choice={<GaugeChoice desk={desk} />}>
      <GapEntry
        desk={desk}
        valve={valve}
        slot={`${valve.place}: gap with this shim in`}
        take={({ raw, reading }, words) =>
          set(
            { adjustment: 'shim', lash: reading, ...(shim && { shim }) },
            `${shim ? `shim ${shim.text}, ` : ''}gap ${words}`,
            raw,
          )
        }
      />
    </AskThenKey>
  );
}
