import type { Engine, Head, Place } from '../../model.js';
import type { Path } from '../document.js';
import type { SheetReader } from '../reader.js';

/** Every cylinder lies under one head, every head carries all its valves, and nothing lies outside its outline. */
export function checkHeads(engine: Engine, reader: SheetReader): void {
  if (engine.heads.length === 0) return;
  for (const cylinder of engine.layout.cylinders) {
    const over = engine.heads.filter((head) => head.cylinders.includes(cylinder.number)).map((head) => head.id);
    if (over.length === 0) reader.fault('no-head', ['heads'], `no head covers cylinder ${cylinder.number}`);
    if (over.length > 1)
      reader.fault('two-heads', ['heads'], `cylinder ${cylinder.number} lies under the heads ${over.join(' and ')}`);
  }
  engine.heads.forEach((head, index) => {
    checkValves(engine, head, ['heads', index], reader);
    checkOutline(engine, head, ['heads', index], reader);
  });
}

function checkValves(engine: Engine, head: Head, path: Path, reader: SheetReader): void {
  const gear = engine.valveGear;
  if (gear === undefined || head.valves.length === 0) return;
  for (const cylinder of head.cylinders) {
    for (const kind of ['intake', 'exhaust'] as const) {
      const drawn = head.valves.filter((valve) => valve.cylinder === cylinder && valve.kind === kind).length;
      const needed = kind === 'intake' ? gear.intakeValves : gear.exhaustValves;
      if (drawn === needed) continue;
      const what = `cylinder ${cylinder} has ${drawn} ${kind} ${drawn === 1 ? 'valve' : 'valves'} here, but the valve gear says ${needed}`;
      reader.fault('valve-count', [...path, 'valves'], what);
    }
  }
}

function checkOutline(engine: Engine, head: Head, path: Path, reader: SheetReader): void {
  const inside = (at: Place) => at.x >= 0 && at.x <= head.length && Math.abs(at.y) <= head.width / 2;
  const strays = [
    ...Object.entries(head.cylinderCentres).map(([number, at]) => ({ name: `the centre of cylinder ${number}`, at })),
    ...head.valves.map((valve) => ({ name: `cylinder ${valve.cylinder} ${valve.kind} ${valve.index}`, at: valve.at })),
    ...head.gasket.openings.map((opening) => ({ name: `opening ${opening.id}`, at: opening.at })),
    ...engine.joints
      .filter((joint) => joint.head === head.id)
      .flatMap((joint) =>
        joint.holes.flatMap((hole) =>
          hole.at === undefined ? [] : [{ name: `hole ${hole.id} of ${joint.id}`, at: hole.at }],
        ),
      ),
  ].filter((each) => !inside(each.at));
  if (strays.length === 0) return;
  const names = strays.slice(0, 4).map((each) => each.name);
  const more = strays.length > 4 ? ` and ${strays.length - 4} more` : '';
  reader.caution(
    'outside-the-head',
    path,
    `${names.join(', ')}${more} lie outside the outline (x from the front end, y from the middle of the width)`,
  );
}
