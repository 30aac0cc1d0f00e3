import { type FormEvent, useState } from 'react';
import { TextField } from '../../bench/index.js';
import type { WrenchChoice } from './use-wrench.js';

/** An adapter that moves the drive away from the wrench's own axis; a straight extension needs none of this. */
export function WrenchAdapter({ choice }: { readonly choice: WrenchChoice }) {
  const { adapter } = choice.hand;
  const [reach, setReach] = useState(adapter?.reach ?? '');
  const [angle, setAngle] = useState(adapter?.angle ?? '0 deg');
  const fit = (event: FormEvent) => {
    event.preventDefault();
    if (reach.trim() !== '') choice.fit({ reach: withUnit(reach, 'mm'), angle: withUnit(angle, 'deg') });
  };
  return (
    <form className="measure-form" onSubmit={fit} noValidate>
      <TextField
        name="Adapter, square drive to fastener"
        value={reach}
        set={setReach}
        hint="With its unit; mm where none is written. A straight extension is no adapter."
        figure
      />
      <TextField
        name="Angle of the adapter"
        value={angle}
        set={setAngle}
        hint="0 deg straight ahead, 90 deg to the side, 180 deg folded back."
        figure
      />
      <button type="submit" className="button">
        Adapter is on
      </button>
      {adapter && (
        <button type="button" className="button" onClick={() => choice.fit()}>
          Adapter is off
        </button>
      )}
    </form>
  );
}

const withUnit = (text: string, unit: string): string =>
  /^[\d.,\s]+$/.test(text) ? `${text.trim()} ${unit}` : text.trim();
