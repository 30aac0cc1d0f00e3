import type { Engine, Running } from '../../model.js';
import type { Path } from '../document.js';
import type { SheetReader } from '../reader.js';
import { repeated } from '../repeated.js';

/** Longest time for which anybody lets an engine run without oil pressure. */
const LONGEST_DRY = 60;

/** Fuel, ignition, limits and rules of the running engine against each other. */
export function checkRunning(engine: Engine, reader: SheetReader): void {
  checkFuel(engine, reader);
  const { running } = engine;
  if (running === undefined) return;
  checkIgnition(engine, running, reader);
  checkCompression(running, reader);
  checkStop(running, reader);
  checkHeadAgain(engine, running, reader);
  for (const what of repeated(running.service.map((each) => each.what)))
    reader.fault('name-twice', ['running', 'service'], `"${what}" stands twice; each service has its own name`);
}

/** Words that name the one fuel while the field says the other. */
function checkFuel({ fuel, name, description }: Engine, reader: SheetReader): void {
  if (fuel === undefined) return;
  const words = `${name} ${description}`;
  const saysDiesel = /\bdiesel\b/i.test(words);
  const saysSpark = /\b(petrol|gasoline)\b/i.test(words);
  if (saysDiesel === saysSpark || saysDiesel === (fuel === 'diesel')) return;
  reader.caution(
    'fuel-disagrees',
    ['fuel'],
    `"${fuel}", but name or description call it ${saysDiesel ? 'a diesel' : 'a petrol engine'}`,
  );
}

function checkIgnition({ fuel }: Engine, { ignition }: Running, reader: SheetReader): void {
  if (ignition === undefined) return;
  const path: Path = ['running', 'ignition'];
  if (fuel === 'diesel')
    reader.fault('no-spark', path, 'a diesel has no distributor; leave the section out, or correct `fuel`');
  const { staticAdvance, fullAdvance, postOfFirst } = ignition;
  const quarter = Math.PI / 2;
  for (const [name, advance] of [['staticAdvance', staticAdvance] as const, ['fullAdvance', fullAdvance] as const])
    if (advance !== undefined && Math.abs(advance.value) >= quarter)
      reader.fault(
        'not-an-advance',
        [...path, name],
        `"${advance.text}" is no advance of the spark; less than 90 deg is valid`,
      );
  if (staticAdvance !== undefined && fullAdvance !== undefined && fullAdvance.value < staticAdvance.value)
    reader.fault(
      'less-than-static',
      [...path, 'fullAdvance'],
      `"${fullAdvance.text}" is less than the static advance ${staticAdvance.text}`,
    );
  if (postOfFirst !== undefined && (postOfFirst.value < 0 || postOfFirst.value >= 2 * Math.PI))
    reader.fault(
      'not-a-direction',
      [...path, 'postOfFirst'],
      `"${postOfFirst.text}" is no direction; 0 to 359 deg are valid`,
    );
}

function checkCompression({ compression }: Running, reader: SheetReader): void {
  const low = compression?.printed?.window.low;
  const floor = compression?.floor;
  if (low === undefined || floor === undefined || floor.value <= low) return;
  reader.caution(
    'floor-above-printed',
    ['running', 'compression', 'floor'],
    `the least of any cylinder, ${floor.text}, is above the low end of what a sound engine reads, ${compression?.printed?.text}`,
  );
}

function checkStop({ stopWithoutPressure: stop }: Running, reader: SheetReader): void {
  if (stop === undefined || stop.value <= LONGEST_DRY) return;
  reader.fault(
    'too-long-dry',
    ['running', 'stopWithoutPressure'],
    `"${stop.text}" without oil pressure ends every bearing; at most ${LONGEST_DRY} s are valid`,
  );
}

/** Bolts that are used once and turned by angle have been stretched: a second turn is a question worth asking. */
function checkHeadAgain({ joints }: Engine, { headAgain }: Running, reader: SheetReader): void {
  if (headAgain === undefined || headAgain.when === 'never') return;
  const stretched = joints.find(
    ({ head, fasteners, stages }) =>
      head !== undefined &&
      fasteners.some(({ use }) => use === 'once') &&
      stages.some(({ act }) => act.kind === 'angle' || act.kind === 'stretch'),
  );
  if (stretched === undefined) return;
  reader.caution(
    'again-on-stretched',
    ['running', 'headAgain'],
    `the bolts of ${stretched.name} are turned by angle and used once, yet they are to be tightened again`,
  );
}
