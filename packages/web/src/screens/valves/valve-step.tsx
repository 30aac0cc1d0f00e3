import { type ValveSettingView, valveAsk } from '@gudgeon/core/workbench';
import { useEffect } from 'react';
import { say } from '../../bench/index.js';
import { useFromTop } from '../../keys/index.js';
import type { Desk, SetAt } from './desk.js';
import { FixedStep } from './fixed-step.js';
import { LashStep } from './lash-step.js';
import { PreloadStep } from './preload-step.js';
import type { SettingStepProps } from './setting-step.js';
import { ShimStep } from './shim-step.js';

interface ValveStepProps {
  readonly desk: Desk;
  readonly valve: ValveSettingView;
  readonly at: SetAt;
  readonly done: () => void;
}
/** One valve: its name, what it asks for as large as can be, how far it is from its own lobe, and the record of it. */
export function ValveStep({ desk, valve, at, done }: ValveStepProps) {
  const ask = valveAsk(desk.bench.engine, valve.valve, desk.condition, desk.view.shims);
  useFromTop(valve.key);
  useEffect(() => say(`${valve.place}: ${ask.spoken}`), [valve.place, ask.spoken]);
  const set: SettingStepProps['set'] = (setting, words, raw) => {
    const data = { valve: valve.valve, ...at, ...setting, condition: desk.condition };
    const line = `${valve.place}: ${words}`;
    if (!desk.recorder.record({ kind: 'valve-set', data }, line, raw, desk.choices)) return false;
    desk.began();
    done();
    return true;
  };
  const step = { desk, valve, ask, set };
  return (
    <section className="bench" aria-live="polite" data-valve={valve.key}>
      <h2 className="valve-name">{valve.place}</h2>
      {ask.adjustment === 'preload' && <PreloadStep {...step} />}
      {ask.adjustment === 'lash' && <LashStep {...step} />}
      {ask.adjustment === 'shim' && <ShimStep {...step} />}
      {ask.adjustment === 'fixed' && <FixedStep {...step} />}
      <p className="field-hint">
        {at.method === 'neighbour' && valve.marginDegrees === 0
          ? ''
          : `At least ${valve.marginDegrees}° from its own opening and closing. `}
        {ask.note} From: {ask.origin}.
      </p>
    </section>
  );
}
