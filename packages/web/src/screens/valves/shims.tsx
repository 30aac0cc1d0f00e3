import { useState } from 'react';
import { Hindrances, Progress } from '../../bench/index.js';
import { Said } from '../../shell/index.js';
import type { Desk } from './desk.js';
import { MeasureShim } from './measure-shim.js';
import { ShimTables } from './shim-tables.js';
import { SpareShims } from './spare-shims.js';

/** Every gap and shim as found, then one choice over all valves with the fewest bought. */
export function Shims({ desk }: { readonly desk: Desk }) {
  const [measuring, setMeasuring] = useState<string>();
  const { shims, valves } = desk.view;
  if (!shims) return null;
  const valve = valves.find((one) => one.key === measuring);
  return (
    <>
      <Progress {...shims.progress} />
      {valve ? (
        <>
          <MeasureShim
            key={`${valve.key} ${measuring}`}
            desk={desk}
            valve={valve}
            done={() => setMeasuring(shims.measured.find((one) => one.gap === undefined && one.key !== valve.key)?.key)}
          />
          <button type="button" className="button" onClick={() => setMeasuring(undefined)}>
            Back to all shims
          </button>
        </>
      ) : (
        <>
          <Hindrances hindrances={shims.hindrances.map((words) => ({ code: 'shims', words }))} />
          <ShimTables shims={shims} measure={setMeasuring} />
          <SpareShims desk={desk} shims={shims} />
        </>
      )}
      <Said recorder={desk.recorder} />
    </>
  );
}
