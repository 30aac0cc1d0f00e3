import { done, type Outcome, refused } from '../quantity/outcome.js';
import type { Engine, ValveId, ValveKind } from './model.js';

const KINDS: readonly ValveKind[] = ['intake', 'exhaust'];

/**
 * Every valve of the engine in a stable order: by cylinder number, intake before exhaust, front before rear. Counts
 * come from the valve gear, else from the valves drawn on the heads; empty where the sheet gives neither.
 */
export function valvesOf(engine: Engine): readonly ValveId[] {
  const gear = engine.valveGear;
  const numbers = engine.layout.cylinders.map((each) => each.number).sort((a, b) => a - b);
  const drawn = engine.heads.flatMap((head) => head.valves);
  const count = (cylinder: number, kind: ValveKind) => {
    if (gear !== undefined) return kind === 'intake' ? gear.intakeValves : gear.exhaustValves;
    return drawn.filter((valve) => valve.cylinder === cylinder && valve.kind === kind).length;
  };
  return numbers.flatMap((cylinder) =>
    KINDS.flatMap((kind) =>
      Array.from({ length: count(cylinder, kind) }, (_, place) => ({ cylinder, kind, index: place + 1 })),
    ),
  );
}

/** Short stable text for one valve, usable as a map key and in a log: `3-intake-1`. */
export function valveKey(valve: ValveId): string {
  return `${valve.cylinder}-${valve.kind}-${valve.index}`;
}

/** The valve that `valveKey` wrote. Refuses with `not-a-valve-key` for any other text. */
export function valveOfKey(
  key: string,
): Outcome<ValveId, { readonly code: 'not-a-valve-key'; readonly given: string }> {
  const parts = /^([1-9]\d?)-(intake|exhaust)-([1-9])$/.exec(key);
  if (parts === null) return refused({ code: 'not-a-valve-key', given: key });
  return done({ cylinder: Number(parts[1]), kind: parts[2] as ValveKind, index: Number(parts[3]) });
}

/** Whether two ids name one valve: same cylinder, kind and place among its kind. */
export function sameValve(a: ValveId, b: ValveId): boolean {
  return a.cylinder === b.cylinder && a.kind === b.kind && a.index === b.index;
}
