import type { Engine, Head, Hole, Joint, ValveId } from './model.js';

/** `cylinder 3 intake`; where a cylinder has several of the kind, the place from the front is added: `cylinder 3 intake 2`. */
export function valveName(engine: Engine, valve: ValveId): string {
  const gear = engine.valveGear;
  const drawn = engine.heads
    .flatMap((head) => head.valves)
    .filter((each) => each.cylinder === valve.cylinder && each.kind === valve.kind).length;
  const count = gear === undefined ? drawn : valve.kind === 'intake' ? gear.intakeValves : gear.exhaustValves;
  return `cylinder ${valve.cylinder} ${valve.kind}${count > 1 ? ` ${valve.index}` : ''}`;
}

/** `left head, hole 7`, or `main caps, hole 7` for a joint that holds no head. */
export function holeName(joint: Joint, hole: Hole): string {
  return `${joint.name}, hole ${hole.id}`;
}

/** The head's name, or the id itself where the engine has no such head. */
export function headName(engine: Engine, id: string): string {
  return engine.heads.find((head) => head.id === id)?.name ?? id;
}

/** The head that carries a cylinder; undefined where the sheet draws none. */
export function headOfCylinder(engine: Engine, cylinder: number): Head | undefined {
  return engine.heads.find((head) => head.cylinders.includes(cylinder));
}
