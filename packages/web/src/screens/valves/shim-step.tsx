import { lengthReading } from '@gudgeon/core/workbench';
import { GapEntry } from './gap-entry.js';
import { GaugeChoice } from './gauge-choice.js';
import { LargeAsk } from './large-ask.js';
import type { SettingStepProps } from './valve-step.js';

/** The chosen shim goes in, then the gap is measured again: a shim that is only marked right proves nothing. */
export function ShimStep({ desk, valve, ask, set }: SettingStepProps) {
  const shim = ask.number === '' ? undefined : lengthReading(`${ask.number} ${ask.unit}`);
  return (
    <>
      <LargeAsk lead={ask.lead} number={ask.number} unit={ask.unit} />
      <GaugeChoice desk={desk} conditions={['cold']} />
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
    </>
  );
}
