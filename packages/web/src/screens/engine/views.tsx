import { frontView, headFromAbove, valveGearSection } from '@gudgeon/core/drawing';
import { type Engine, headName, valveKey, valveName, valvesOf } from '@gudgeon/core/engine';
import type { Angle } from '@gudgeon/core/quantity';
import { useId, useMemo, useState } from 'react';
import { FigureView, usePlan, useShownWidth } from '../../figures/index.js';
import { TurnCrank } from './turn-crank.js';
import { useTurning } from './use-turning.js';

const radians = (degrees: number) => ((degrees * Math.PI) / 180) as Angle;

type ViewName = 'front' | `head ${string}` | 'gear';

/** The engine as drawings: from the front, each head from above, and one valve with what drives it. */
export function Views({ engine }: { readonly engine: Engine }) {
  const [view, setView] = useState<ViewName>('front');
  const crank = useTurning();
  const names: readonly (readonly [ViewName, string])[] = [
    ['front', 'From the front'],
    ...engine.heads.map((head) => [`head ${head.id}` as const, `${headName(engine, head.id)} from above`] as const),
    ...(engine.valveGear ? [['gear', 'Valve gear'] as const] : []),
  ];
  return (
    <section className="stack" aria-label="Drawings">
      <fieldset className="plain row">
        <legend className="only-read">Which drawing</legend>
        {names.map(([name, words]) => (
          <button
            key={name}
            type="button"
            className="button"
            aria-pressed={view === name}
            onClick={() => setView(name)}
          >
            {words}
          </button>
        ))}
      </fieldset>
      {view === 'front' && <Front engine={engine} degrees={crank.degrees} />}
      {view.startsWith('head ') && <Head engine={engine} head={view.slice(5)} />}
      {view === 'gear' && <Gear engine={engine} degrees={crank.degrees} />}
      {!view.startsWith('head ') && <TurnCrank crank={crank} engine={engine} />}
    </section>
  );
}

function Front({ engine, degrees }: { readonly engine: Engine; readonly degrees: number }) {
  const shownWidth = useShownWidth();
  return (
    <FigureView
      figure={useMemo(() => frontView(engine, radians(degrees), { shownWidth }), [engine, degrees, shownWidth])}
    />
  );
}

function Head({ engine, head }: { readonly engine: Engine; readonly head: string }) {
  const plan = usePlan();
  return <FigureView figure={headFromAbove(engine, head, {}, plan)} />;
}

function Gear({ engine, degrees }: { readonly engine: Engine; readonly degrees: number }) {
  const id = useId();
  const shownWidth = useShownWidth();
  const valves = valvesOf(engine);
  const [key, setKey] = useState(() => (valves[0] ? valveKey(valves[0]) : ''));
  const valve = valves.find((each) => valveKey(each) === key) ?? valves[0];
  const figure = useMemo(
    () => (valve ? valveGearSection(engine, valve, radians(degrees), engine.cam?.events, { shownWidth }) : undefined),
    [engine, valve, degrees, shownWidth],
  );
  if (!figure) return <p>The sheet names no valves.</p>;
  return (
    <div className="stack">
      <div className="field">
        <label htmlFor={id}>Valve</label>
        <select id={id} className="input" value={key} onChange={(event) => setKey(event.target.value)}>
          {valves.map((each) => (
            <option key={valveKey(each)} value={valveKey(each)}>
              {valveName(engine, each)}
            </option>
          ))}
        </select>
      </div>
      <FigureView figure={figure} />
    </div>
  );
}
