/** What has been recorded about the setting of every valve. */
import { type Engine, sameValve, type ValveId, valvesOf } from '../../engine/index.js';
import type { Fact, FactData } from '../facts.js';

export interface ValveStand {
  readonly valve: ValveId;
  /** `checked` and `bad` come from a look after the valve was last set; a valve set again is `set` again. */
  readonly state: 'open' | 'set' | 'checked' | 'bad';
  readonly set?: { readonly data: FactData['valve-set']; readonly entry?: string };
  readonly recheck?: { readonly data: FactData['valve-rechecked']; readonly entry?: string };
}
export interface ValveRecord {
  readonly valves: readonly ValveStand[];
  readonly allSet: boolean;
  readonly allChecked: boolean;
}

/** Folds the facts into the stand of every valve, in the order of `valvesOf`. */
export function valveRecord(engine: Engine, facts: readonly Fact[]): ValveRecord {
  const valves = valvesOf(engine).map((valve) => standOf(valve, facts));
  return {
    valves,
    allSet: valves.length > 0 && valves.every((one) => one.state !== 'open' && one.state !== 'bad'),
    allChecked: valves.length > 0 && valves.every((one) => one.state === 'checked'),
  };
}

function standOf(valve: ValveId, facts: readonly Fact[]): ValveStand {
  let stand: ValveStand = { valve, state: 'open' };
  for (const fact of facts) {
    if (fact.kind === 'valve-set' && sameValve(fact.data.valve, valve)) {
      stand = { valve, state: 'set', set: kept(fact) };
    } else if (fact.kind === 'valve-rechecked' && sameValve(fact.data.valve, valve) && stand.set !== undefined) {
      stand = { ...stand, state: fact.data.result === 'good' ? 'checked' : 'bad', recheck: kept(fact) };
    }
  }
  return stand;
}

function kept<D>(fact: { readonly data: D; readonly entry?: string }): { readonly data: D; readonly entry?: string } {
  return { data: fact.data, ...(fact.entry !== undefined && { entry: fact.entry }) };
}
