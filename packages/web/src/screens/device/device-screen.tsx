import { useId, useState } from 'react';
import { changeSettings, type DeviceSettings, speechPossible, useSettings } from '../../bench/index.js';
import { setPersonName, usePerson } from '../../log/index.js';
import { AskPerson, Shell, Title } from '../../shell/index.js';

/** What belongs to this device: who works at it, and how it looks, sounds and speaks. */
export function DeviceScreen() {
  const person = usePerson();
  const settings = useSettings();
  return (
    <Shell place="This device">
      <div className="stack-wide">
        <Title tab="This device">This device</Title>
        {person === '' ? <AskPerson /> : <ChangePerson person={person} />}
        <section className="stack" aria-labelledby="look">
          <h2 id="look">Look and sound</h2>
          <Switch
            name="Dark screen"
            hint="White is easier to read in daylight."
            on={settings.theme === 'black'}
            set={(on) => changeSettings({ theme: on ? 'black' : 'white' })}
          />
          <Switch
            name="Lengths in inches"
            hint="Else in millimetres. What is stored stays as it was keyed, and each gauge keeps its own unit."
            on={settings.length === 'in'}
            set={(on) => changeSettings({ length: on ? 'in' : 'mm' })}
          />
          <Toggle
            setting="tones"
            name="Tones"
            hint="Short and high: taken. Two, low and long: refused."
            settings={settings}
          />
          <Toggle
            setting="speech"
            name="Speak targets and results"
            hint={
              speechPossible() ? 'Digits one by one.' : 'This browser cannot speak; everything stands on the screen.'
            }
            settings={settings}
          />
          <Toggle setting="awake" name="Keep the screen on at the bench" hint={awakeHint()} settings={settings} />
        </section>
      </div>
    </Shell>
  );
}

function awakeHint(): string {
  return window.isSecureContext
    ? 'While a bench screen is open.'
    : 'Not over plain http to another machine: lengthen the screen time-out of this device instead.';
}

interface ToggleProps {
  readonly setting: 'tones' | 'speech' | 'awake';
  readonly name: string;
  readonly hint: string;
  readonly settings: DeviceSettings;
}
function Toggle({ setting, name, hint, settings }: ToggleProps) {
  return <Switch name={name} hint={hint} on={settings[setting]} set={(on) => changeSettings({ [setting]: on })} />;
}

function Switch({
  name,
  hint,
  on,
  set,
}: {
  readonly name: string;
  readonly hint: string;
  readonly on: boolean;
  readonly set: (on: boolean) => void;
}) {
  return (
    <label className="choice">
      <input type="checkbox" checked={on} onChange={(event) => set(event.target.checked)} />
      <span>
        <strong>{name}</strong>
        <br />
        <span className="field-hint">{hint}</span>
      </span>
    </label>
  );
}

function ChangePerson({ person }: { readonly person: string }) {
  const id = useId();
  const [name, setName] = useState(person);
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        if (name.trim() !== '') setPersonName(name);
      }}
    >
      <div className="field">
        <label htmlFor={id}>Who works at this device</label>
        <input
          id={id}
          className="input"
          autoComplete="name"
          maxLength={60}
          value={name}
          onChange={(event) => setName(event.target.value)}
        />
        <span className="field-hint">Stands beside every entry made from now on.</span>
      </div>
      <button type="submit" className="button button-main" disabled={name.trim() === '' || name.trim() === person}>
        {name.trim() === person ? 'This name is in use' : 'Use this name'}
      </button>
    </form>
  );
}
