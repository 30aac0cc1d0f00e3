import type { RunningWhat } from '@gudgeon/core/plan';
import { type GaugeView, proposeGauge } from '@gudgeon/core/workbench';
import { useState } from 'react';
import { ActButton, VerdictMark } from '../../../bench/index.js';
import { type Action, useActions } from '../../../keys/index.js';
import { clockText } from '../clock-text.js';
import { FigureEntry } from '../figure-entry.js';
import type { RunInProps } from './run-in-props.js';

/** Speed and temperature first: the window of the oil pressure holds for them. */
const ORDER: readonly RunningWhat[] = [
  'speed',
  'oil-temperature',
  'oil-pressure',
  'coolant-temperature',
  'exhaust-temperature',
];
/** An exhaust is read where somebody limits it, or has begun to. */
const isRead = ({ what, limit, newest }: GaugeView) =>
  what !== 'exhaust-temperature' || limit !== '' || newest !== undefined;

interface GaugeWalkProps extends RunInProps {
  readonly done: () => void;
  readonly stop: () => void;
}

/** All gauges one after the other while the clock goes on: a figure, or the next one. */
export function GaugeWalk({ desk, view, done, stop }: GaugeWalkProps) {
  const gauges = ORDER.flatMap((what) => view.gauges.filter((one) => one.what === what && isRead(one)));
  const [at, setAt] = useState(0);
  const [last, setLast] = useState<RunningWhat>();
  const gauge = gauges[at];
  const on = () => (at + 1 < gauges.length ? setAt(at + 1) : done());
  const running = view.clock.state === 'running';
  const without: Action = {
    name: 'without',
    label: at + 1 < gauges.length ? 'Not read: the next one' : 'Not read: back to the clock',
    keys: ['Escape'],
    available: true,
    run: on,
  };
  const stopping: Action = { name: 'stop', label: 'Stop it', keys: [], available: running, run: stop };
  const run = useActions([without, stopping]);
  if (gauge === undefined) return null;
  const take = (text: string, raw: string) => {
    const proposal = proposeGauge(desk.bench, { what: gauge.what, text });
    if (!desk.recorder.take(proposal, `${gauge.title} ${text}`, raw)) return;
    setLast(gauge.what);
    on();
  };
  const told = view.gauges.find(({ what }) => what === last);
  return (
    <section className="bench" data-gauge={gauge.what}>
      <p className="clock-line">
        {view.clock.leftSeconds !== undefined && <strong>{clockText(view.clock.leftSeconds)}</strong>}
        <span>
          gauge {at + 1} of {gauges.length}
        </span>
      </p>
      {told?.newest && (
        <p className="gauge-told" aria-live="polite" data-told={told.what}>
          <VerdictMark verdict={told.verdict} />
          <span>
            {told.title} {told.newest.text}: {told.says}
          </span>
        </p>
      )}
      <FigureEntry
        slot={gauge.title}
        about={gauge.what}
        units={gauge.units}
        memory={gauge.what}
        sign={gauge.what.endsWith('temperature')}
        ghost={gauge.limit === '' ? 'no limit is printed' : gauge.limit}
        recordLabel={at + 1 < gauges.length ? 'Record, then the next' : 'Record'}
        take={take}
      />
      <ActButton action={without} run={run} second />
      {running && (
        <div className="apart">
          <ActButton action={stopping} run={run} second />
        </div>
      )}
    </section>
  );
}
