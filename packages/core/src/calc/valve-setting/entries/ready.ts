import type { Angle, Outcome } from '../../../quantity/index.js';
import { done } from '../../../quantity/index.js';
import { type Caution, type Conflict, conflict } from '../../catalogue/index.js';
import { valveTiming } from '../timing.js';
import type { ValveTiming } from '../types.js';
import { describeAssumption, describeTimingFault } from '../words.js';
import { type camEvents, cardOf } from './inputs.js';

interface Given extends Readonly<Record<keyof typeof camEvents, Angle | undefined>> {
  readonly firingOrder: readonly number[];
  readonly intervals?: readonly Angle[] | undefined;
  readonly margin: Angle;
}

const eventNames = ['intakeOpens', 'intakeCloses', 'exhaustOpens', 'exhaustCloses'];

/** The engine of an entry's inputs, with what it rests on as cautions, or the refusal in the words of the catalogue. */
export function readyTiming(v: Given): Outcome<{ timing: ValveTiming; cautions: readonly Caution[] }, Conflict> {
  const card = cardOf(v);
  if (!card) return conflict(eventNames, 'a cam card needs all four events; without a card leave all four out');
  const { firingOrder, intervals, margin } = v;
  const timing = valveTiming({ firingOrder, ...(intervals ? { firingIntervals: intervals } : {}), margin, ...card });
  if (timing.ok) {
    const cautions = timing.value.assumed.map((one) => ({ code: one.code, text: describeAssumption(one) }));
    return done({ timing: timing.value, cautions });
  }
  const names = ['firingOrder', 'intervals', 'margin', ...eventNames];
  return conflict(names, timing.fault.map(describeTimingFault).join('; '));
}
