import { type Bench, proposeTemperature } from '@gudgeon/core/workbench';
import { type FormEvent, useState } from 'react';
import { TextField, useSettings } from '../../bench/index.js';
import type { Recorder } from '../../shell/index.js';

interface TemperatureProps {
  readonly bench: Bench;
  readonly recorder: Recorder;
  readonly noted?: string;
}

/** Temperature of room and parts. It holds for what is read after it, until the next one. */
export function Temperature({ bench, recorder, noted }: TemperatureProps) {
  const unit = useSettings().length === 'in' ? '°F' : '°C';
  const [room, setRoom] = useState('');
  const [part, setPart] = useState('');
  const withUnit = (text: string) => (/[°a-z]/i.test(text) ? text.trim() : `${text.trim()} ${unit}`);
  const note = (event: FormEvent) => {
    event.preventDefault();
    const wish = {
      ...(room.trim() !== '' && { room: withUnit(room) }),
      ...(part.trim() !== '' && { part: withUnit(part) }),
    };
    const words = [wish.room && `room ${wish.room}`, wish.part && `parts ${wish.part}`].filter(Boolean).join(', ');
    if (!recorder.take(proposeTemperature(bench, wish), `Noted: ${words}`)) return;
    setRoom('');
    setPart('');
  };
  return (
    <section className="stack" aria-labelledby="temperature">
      <h2 id="temperature">Temperature</h2>
      <p>{noted ? `Holds now: ${noted}.` : 'Not noted: sizes are taken as they were read.'}</p>
      <form className="measure-form" onSubmit={note} noValidate>
        <TextField name={`Room, ${unit}`} value={room} set={setRoom} figure />
        <TextField name={`Parts, ${unit}, where they differ`} value={part} set={setPart} figure />
        <button type="submit" className="button">
          Note it
        </button>
      </form>
    </section>
  );
}
