import { useId } from 'react';

interface SpeedSliderProps {
  /** rad/s; absent where neither the engine nor the person says one. */
  readonly speed?: number;
  /** Highest speed of the engine. */
  readonly highest?: number;
  readonly set: (speed: number) => void;
}
const RPM = 30 / Math.PI;
const STEP = 50;
const USUAL_MOST = 8000;
const LEAST = 500;

/** Crank speed for the plots; it changes neither the scratch copy nor the record. */
export function SpeedSlider({ speed, highest, set }: SpeedSliderProps) {
  const id = useId();
  const most = Math.ceil((highest === undefined ? USUAL_MOST : highest * RPM * 1.3) / STEP) * STEP;
  const now = speed === undefined ? LEAST : Math.round(speed * RPM);
  return (
    <div className="field turning-slider">
      <label htmlFor={id}>
        Crank speed <b>{speed === undefined ? 'not chosen' : `${now} r/min`}</b>
      </label>
      <input
        id={id}
        className="slider"
        type="range"
        min={LEAST}
        max={most}
        step={STEP}
        value={now}
        aria-valuetext={`${now} r/min`}
        data-arrows
        onChange={(event) => set(Number(event.target.value) / RPM)}
      />
    </div>
  );
}
