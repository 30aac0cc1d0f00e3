import type { Engine } from '@gudgeon/core/engine';
import { useId } from 'react';
import { cycle, type Turning } from './use-turning.js';

/** Turns the drawn crank by slider, by buttons, or slowly by itself. */
export function TurnCrank({ crank, engine }: { readonly crank: Turning; readonly engine: Engine }) {
  const id = useId();
  const first = engine.layout.firingOrder[0];
  const words = `${Math.round(crank.degrees)}° after firing top dead centre${first === undefined ? '' : ` of cylinder ${first}`}`;
  return (
    <div className="stack not-printed">
      <div className="field">
        <label htmlFor={id}>Crank angle</label>
        <input
          id={id}
          className="slider"
          type="range"
          min={0}
          max={cycle}
          step={1}
          value={Math.round(crank.degrees)}
          aria-valuetext={words}
          onChange={(event) => crank.set(Number(event.target.value))}
        />
        <output className="angle-now" htmlFor={id}>
          {words}
        </output>
      </div>
      <div className="row">
        {[-90, -10, 10, 90].map((step) => (
          <button key={step} type="button" className="button" onClick={() => crank.set(crank.degrees + step)}>
            {step > 0 ? `+${step}°` : `−${-step}°`}
          </button>
        ))}
        {crank.toggle ? (
          <button type="button" className="button" aria-pressed={crank.turning} onClick={crank.toggle}>
            {crank.turning ? 'Stop' : 'Turn slowly'}
          </button>
        ) : (
          <span className="soft">This device asks for no motion, so the crank turns by hand only.</span>
        )}
      </div>
    </div>
  );
}
