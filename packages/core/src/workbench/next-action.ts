/** The one next thing on an engine, for its place on the home page. */
import { type Head, jointsOfHead } from '../engine/index.js';
import type { Bench } from './bench.js';
import { measureStanding } from './measure-view.js';
import { fastenersStanding, gasketStanding, partsStanding, tighteningStanding, valvesStanding } from './standings.js';
import type { NextAction } from './views.js';
import { jointUnderWay, keepsWork, workAction } from './work/index.js';

const action = (words: string, place: string): NextAction => ({ words, place, finished: false });

/** A joint under way: a bad place to leave, so it comes before everything. */
function underWay(bench: Bench): NextAction | undefined {
  const found = jointUnderWay(bench);
  return found && action(`Go on tightening: ${found.joint.name}, ${found.words}`, `tighten/${found.joint.id}`);
}

/** Gasket, fasteners, tightening of one head, in this order. */
function headAction(bench: Bench, head: Head): NextAction | undefined {
  const joints = jointsOfHead(bench.engine, head.id);
  const open = joints.find((joint) => !tighteningStanding(bench, joint).finished);
  if (joints.length > 0 && open === undefined) return undefined;
  if (!gasketStanding(bench, head).finished) return action(`Check the gasket: ${head.name}`, `gasket/${head.id}`);
  if (open === undefined) return undefined;
  if (!fastenersStanding(bench, open).finished)
    return action(`Place the fasteners: ${open.name}`, `fasteners/${open.id}`);
  return action(`Tighten: ${open.name}`, `tighten/${open.id}`);
}

function valveAction(bench: Bench): NextAction | undefined {
  const { progress, finished, again } = valvesStanding(bench);
  if (progress.of === 0 || finished) return undefined;
  if (again.due) return action(`Turn twice and look again: ${again.progress.words}`, 'valves');
  return action(`Set the valves: ${progress.words}`, 'valves');
}

function partsAction(bench: Bench): NextAction | undefined {
  const { parts, finished, progress } = partsStanding(bench);
  return parts.length === 0 || finished ? undefined : action(`Fit the valve gear: ${progress.words}`, 'parts');
}

/** Measuring under way on an engine of which nothing is put together yet; who begins to assemble has measured enough. */
function measureAction(bench: Bench): NextAction | undefined {
  const { begun, finished, progress } = measureStanding(bench);
  if (!begun || finished || bench.facts.length > 0) return undefined;
  return action(`Go on measuring: ${progress.words}`, 'measure');
}

/** What to do next on this engine: by the plan of the whole work where its log keeps that, else by what is begun of the top end. */
export function nextAction(bench: Bench): NextAction {
  if (keepsWork(bench)) return underWay(bench) ?? workAction(bench);
  const heads = bench.engine.heads.map((head) => headAction(bench, head)).find((one) => one !== undefined);
  const done = { words: 'The top end is done. Print the record.', place: 'record', finished: true };
  return underWay(bench) ?? measureAction(bench) ?? heads ?? partsAction(bench) ?? valveAction(bench) ?? done;
}
