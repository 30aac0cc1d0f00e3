import { type Bench, type InstrumentView, proposeCheck } from '@gudgeon/core/workbench';
import { type FormEvent, useState } from 'react';
import { ChoiceField, TextField } from '../../bench/index.js';
import type { Recorder } from '../../shell/index.js';
import { KeepGauge } from './keep-gauge.js';

interface GaugesProps {
  readonly bench: Bench;
  readonly recorder: Recorder;
  readonly gauges: readonly InstrumentView[];
}

/** The person's gauges, each with what a standard said of it at the start and at the end. */
export function Gauges({ bench, recorder, gauges }: GaugesProps) {
  return (
    <section className="stack" aria-labelledby="gauges">
      <h2 id="gauges">My gauges</h2>
      {gauges.length === 0 && <p>None kept yet.</p>}
      {gauges.map((gauge) => (
        <Gauge key={gauge.id} bench={bench} recorder={recorder} gauge={gauge} />
      ))}
      <KeepGauge bench={bench} recorder={recorder} />
    </section>
  );
}

type Moment = 'start' | 'between' | 'end';
const MOMENTS: readonly (readonly [Moment, string])[] = [
  ['start', 'before measuring'],
  ['between', 'in between'],
  ['end', 'after measuring'],
];

interface GaugeProps extends Omit<GaugesProps, 'gauges'> {
  readonly gauge: InstrumentView;
}
function Gauge({ bench, recorder, gauge }: GaugeProps) {
  const [moment, setMoment] = useState<Moment>(gauge.checked ? 'end' : 'start');
  const [standard, setStandard] = useState('');
  const [read, setRead] = useState('');
  const check = (event: FormEvent) => {
    event.preventDefault();
    const wish = {
      instrument: gauge.id,
      moment,
      standard: `${standard.trim()} ${gauge.unit}`,
      reading: `${read.trim()} ${gauge.unit}`,
    };
    if (!recorder.take(proposeCheck(bench, wish), `${gauge.name}: reads ${wish.reading} on ${wish.standard}`)) return;
    setRead('');
    setMoment('end');
  };
  return (
    <article className="card stack" aria-label={gauge.name} data-gauge={gauge.id}>
      <p>
        <strong>{gauge.name}</strong>, {gauge.unit}, {gauge.places} places
      </p>
      <p className={gauge.checked ? '' : 'still-open'}>
        {gauge.check}
        {gauge.drift ? `; ${gauge.drift}` : ''}
      </p>
      <details className="fold">
        <summary>Hold it against a standard</summary>
        <form className="measure-form" onSubmit={check} noValidate>
          <ChoiceField name="When" value={moment} choices={MOMENTS} set={setMoment} />
          <TextField name={`Standard, ${gauge.unit}`} value={standard} set={setStandard} figure />
          <TextField name={`It reads, ${gauge.unit}`} value={read} set={setRead} figure />
          <button type="submit" className="button">
            Record the check
          </button>
        </form>
      </details>
    </article>
  );
}
