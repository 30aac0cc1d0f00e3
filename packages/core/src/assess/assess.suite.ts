/** Readings for the tests of assess: made by hand, or one for each slot of a plan. */
import type { Instrument, InstrumentCheck, Readings, Slot, SlotReading } from './model.js';

let made = 0;
export function reading(
  slot: Slot,
  value: number,
  text = `${value * 1000} mm`,
  more: Partial<SlotReading> = {},
): SlotReading {
  made += 1;
  return { slot, entry: `entry-${made}`, text, value, occasion: 1, at: '2026-03-02T09:00:00+00:00', by: 'A', ...more };
}

export function readingsOf(
  taken: readonly SlotReading[],
  more: { readonly instruments?: readonly Instrument[]; readonly checks?: readonly InstrumentCheck[] } = {},
): Readings {
  const bySlot = new Map<Slot, SlotReading[]>();
  for (const one of taken) bySlot.set(one.slot, [...(bySlot.get(one.slot) ?? []), one]);
  return {
    bySlot,
    before: new Map(),
    instruments: new Map((more.instruments ?? []).map((one) => [one.id, one])),
    checks: more.checks ?? [],
    choices: [],
    occasions: new Map(),
  };
}
