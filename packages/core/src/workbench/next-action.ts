/** The one next thing on an engine, for its place on the home page. */
import type { Bench } from './bench.js';
import { fastenersView } from './fasteners-view.js';
import { gasketView } from './gasket-view.js';
import { partsView } from './parts-view.js';
import { tightenView } from './tighten-view.js';
import { valvesView } from './valves-view.js';
import type { NextAction } from './views.js';

const action = (words: string, place: string): NextAction => ({ words, place, finished: false });

/** Gasket, fasteners, tightening of one head, in this order. */
function headAction(bench: Bench, head: string): NextAction | undefined {
  const gasket = gasketView(bench, head);
  const joints = bench.engine.joints.filter((joint) => joint.head === head);
  const tightened = joints.map((joint) => tightenView(bench, joint.id));
  if (tightened.length > 0 && tightened.every((view) => view?.finished)) return undefined;
  const begun = tightened.find((view) => view !== undefined && view.progress.done > 0 && !view.finished);
  if (begun !== undefined)
    return action(`Go on tightening: ${begun.title}, ${begun.progress.words}`, `tighten/${begun.joint}`);
  if (gasket !== undefined && !gasket.finished) return action(`Check the gasket: ${gasket.title}`, `gasket/${head}`);
  for (const joint of joints) {
    const map = fastenersView(bench, joint.id);
    if (map !== undefined && !map.finished)
      return action(`Place the fasteners: ${joint.name}`, `fasteners/${joint.id}`);
    const walk = tightenView(bench, joint.id);
    if (walk !== undefined && !walk.finished) return action(`Tighten: ${joint.name}`, `tighten/${joint.id}`);
  }
  return undefined;
}

function valveAction(bench: Bench): NextAction | undefined {
  const valves = valvesView(bench);
  if (valves.progress.of === 0 || valves.finished) return undefined;
  const words = valves.recheck.due
    ? `Turn twice and look again: ${valves.recheck.progress.words}`
    : `Set the valves: ${valves.progress.words}`;
  return action(words, 'valves');
}

/** What to do next on this engine. A joint under way comes before everything: it is a bad place to leave. */
export function nextAction(bench: Bench): NextAction {
  const heads = bench.engine.heads.map((head) => headAction(bench, head.id));
  const underWay = heads.find((one) => one?.words.startsWith('Go on'));
  const first = underWay ?? heads.find((one) => one !== undefined);
  if (first !== undefined) return first;
  const parts = partsView(bench);
  if (parts.parts.length > 0 && !parts.finished) return action(`Fit the valve gear: ${parts.progress.words}`, 'parts');
  return valveAction(bench) ?? { words: 'The top end is done. Print the record.', place: 'record', finished: true };
}
