import type { InstrumentKind, Measured } from '@gudgeon/core/assess';
import { type Bench, proposeInstrument } from '@gudgeon/core/workbench';
import { type FormEvent, useState } from 'react';
import { ChoiceField, TextField, useSettings } from '../../bench/index.js';
import type { Recorder } from '../../shell/index.js';

interface Usual {
  readonly words: string;
  readonly measured: Measured;
  /** Usual smallest step, metric and inch; only offered, the person's own counts. */
  readonly step: readonly [string, string];
}
const KINDS: Readonly<Record<InstrumentKind, Usual>> = {
  'outside-micrometer': { words: 'outside micrometer', measured: 'length', step: ['0.001', '0.0001'] },
  'bore-gauge': { words: 'dial bore gauge', measured: 'length', step: ['0.001', '0.0001'] },
  'small-bore-gauge': { words: 'small-bore gauge', measured: 'length', step: ['0.001', '0.0001'] },
  'depth-micrometer': { words: 'depth micrometer', measured: 'length', step: ['0.001', '0.0001'] },
  'dial-indicator': { words: 'dial indicator', measured: 'length', step: ['0.01', '0.0005'] },
  'height-gauge': { words: 'height gauge', measured: 'length', step: ['0.01', '0.0005'] },
  'straightedge-and-feeler': { words: 'straight edge and feelers', measured: 'length', step: ['0.01', '0.001'] },
  'feeler-gauge': { words: 'feeler gauges', measured: 'length', step: ['0.01', '0.001'] },
  caliper: { words: 'caliper', measured: 'length', step: ['0.01', '0.0005'] },
  burette: { words: 'burette', measured: 'volume', step: ['0.1', '0.1'] },
  scale: { words: 'scale', measured: 'mass', step: ['0.1', '0.1'] },
  'spring-tester': { words: 'spring tester', measured: 'force', step: ['1', '1'] },
  'gauging-strip': { words: 'gauging strip', measured: 'length', step: ['0.01', '0.0005'] },
  protractor: { words: 'protractor', measured: 'angle', step: ['0.5', '0.5'] },
  'radius-gauge': { words: 'radius gauges', measured: 'length', step: ['0.25', '0.010'] },
  'ultrasonic-gauge': { words: 'ultrasonic gauge', measured: 'length', step: ['0.1', '0.005'] },
  'torque-wrench': { words: 'torque wrench', measured: 'torque', step: ['1', '1'] },
};
const CHOICES = (Object.keys(KINDS) as InstrumentKind[]).map((kind) => [kind, KINDS[kind].words] as const);
const UNITS: Readonly<Record<Measured, readonly [string, string]>> = {
  length: ['mm', 'in'],
  volume: ['cm3', 'cm3'],
  mass: ['g', 'g'],
  force: ['N', 'lbf'],
  angle: ['deg', 'deg'],
  torque: ['N·m', 'lbf·ft'],
};
const idOf = (name: string): string =>
  name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');

interface KeepGaugeProps {
  readonly bench: Bench;
  readonly recorder: Recorder;
}

/** Keeps a gauge under its name; the same name again changes what is known of it. Unit and step go with every reading. */
export function KeepGauge({ bench, recorder }: KeepGaugeProps) {
  const system = useSettings().length === 'in' ? 1 : 0;
  const [kind, setKind] = useState<InstrumentKind>('bore-gauge');
  const [name, setName] = useState('');
  const [unit, setUnit] = useState<string>(UNITS.length[system]);
  const [step, setStep] = useState<string>(KINDS['bore-gauge'].step[system]);
  const [expanded, setExpanded] = useState('');
  const [low, setLow] = useState('');
  const [high, setHigh] = useState('');
  const [grip, setGrip] = useState('');
  const [certified, setCertified] = useState('');
  const { measured, words } = KINDS[kind];
  const choose = (next: InstrumentKind) => {
    setKind(next);
    setUnit(UNITS[KINDS[next].measured][system]);
    setStep(KINDS[next].step[system]);
  };
  const chooseUnit = (next: string) => {
    setUnit(next);
    setStep(KINDS[kind].step[next === UNITS[measured][1] ? 1 : 0]);
  };
  const lengths = UNITS.length[system];
  const figure = (text: string) => `${text.trim()} ${unit}`;
  const keep = (event: FormEvent) => {
    event.preventDefault();
    const called = name.trim() || words;
    const wish = {
      id: idOf(called) || kind,
      name: called,
      kind,
      measured,
      unit,
      resolution: figure(step),
      ...(low.trim() !== '' && { low: figure(low) }),
      ...(high.trim() !== '' && { high: figure(high) }),
      ...(expanded.trim() !== '' && { expanded: figure(expanded) }),
      ...(kind === 'torque-wrench' && grip.trim() !== '' && { gripLength: `${grip.trim()} ${lengths}` }),
      ...(kind === 'torque-wrench' && certified.trim() !== '' && { certified: certified.trim() }),
    };
    if (recorder.take(proposeInstrument(bench, wish), `Kept: ${called}, ${figure(step)}`)) setName('');
  };
  const units = [...new Set(UNITS[measured])].map((one) => [one, one] as const);
  return (
    <details className="fold">
      <summary>Keep a gauge</summary>
      <form className="measure-form" onSubmit={keep} noValidate>
        <ChoiceField name="What it is" value={kind} choices={CHOICES} set={choose} />
        <TextField name="What you call it" value={name} set={setName} hint="e.g. the old bore gauge" />
        <ChoiceField name="It reads in" value={unit} choices={units} set={chooseUnit} />
        <TextField name={`Smallest step, ${unit}`} value={step} set={setStep} figure />
        <TextField
          name={`Uncertainty, ${unit}`}
          value={expanded}
          set={setExpanded}
          hint="Expanded (k = 2), from maker or certificate; empty where unknown."
          figure
        />
        <TextField name={`Reads from, ${unit}`} value={low} set={setLow} figure />
        <TextField name={`Reads to, ${unit}`} value={high} set={setHigh} figure />
        {kind === 'torque-wrench' && (
          <>
            <TextField
              name={`Middle of the grip to the square drive, ${lengths}`}
              value={grip}
              set={setGrip}
              hint="Needed only for an adapter."
              figure
            />
            <TextField
              name="Day of its certificate"
              value={certified}
              set={setCertified}
              hint="Year-month-day; empty where it has none."
            />
          </>
        )}
        <button type="submit" className="button">
          Keep it
        </button>
      </form>
    </details>
  );
}
