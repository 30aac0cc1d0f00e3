import { type Bench, gapConditions, gapGauge, type ValveChoices, type ValvesView } from '@gudgeon/core/workbench';
import { useState } from 'react';
import { type OpenJob, useRecord } from '../../shell/index.js';
import type { Condition, Desk, LengthUnit } from './desk.js';

/** The choices of the person that stay from valve to valve: engine cold or hot, and the unit of the feeler. */
export function useDesk(open: OpenJob, bench: Bench, view: ValvesView, choices: ValveChoices, began: () => void): Desk {
  const recorder = useRecord(open, bench);
  const [condition, setCondition] = useState<Condition>(() => firstCondition(bench));
  const [unit, setUnit] = useState<LengthUnit>(() => gapGauge(bench.engine).unit);
  const [last, setLast] = useState<Desk['last']>();
  const desk = {
    job: open.job,
    bench,
    view,
    choices,
    recorder,
    began,
    condition,
    setCondition,
    unit,
    setUnit,
    setLast,
  };
  return last === undefined ? desk : { ...desk, last };
}

/** Cold, unless the sheet prints hot gaps only. */
function firstCondition({ engine }: Bench): Condition {
  const printed = gapConditions(engine, 'intake');
  return printed.includes('cold') ? 'cold' : (printed[0] ?? 'cold');
}
