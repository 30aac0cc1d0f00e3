import {
  describePlanFault,
  describeTimingFault,
  planValveStops,
  type ValvePlan,
  type ValveTiming,
  type ValveTimingInput,
  valveTiming,
} from '@gudgeon/core/calc/valve-setting';
import { degrees } from '@gudgeon/core/quantity';
import type { Command } from 'commander';
import { engineOf, nameOf } from '../engine-of-sheet.js';
import { BadInput, type Io } from '../io.js';
import { readCam, readDegrees, readDegreesList, readOrder } from './valve-flags.js';
import { planAsJson, planAsText } from './valve-words.js';

interface Flags {
  readonly order?: string;
  readonly intervals?: string;
  readonly cam?: string;
  readonly stops?: string;
  readonly margin?: string;
  readonly json?: boolean;
}

/** Layout and cam card of a sheet; an order given beside the sheet must be one of the same engine. */
async function fromSheet(path: string, order: readonly number[] | undefined, io: Io): Promise<ValveTimingInput> {
  const { layout, cam } = await engineOf(path, io);
  const count = layout.cylinders.length;
  if (order === undefined && layout.firingOrder.length === 0) {
    throw new BadInput([
      `${nameOf(path)}: the sheet prints no firing order; give one with --order, such as --order 1,3,4,2`,
    ]);
  }
  if (order !== undefined && order.length !== count) {
    throw new BadInput([`--order: ${order.length} cylinders given; the engine of the sheet has ${count}`]);
  }
  return {
    firingOrder: layout.firingOrder,
    ...(layout.firingIntervals ? { firingIntervals: layout.firingIntervals } : {}),
    ...(cam ? { cam } : {}),
  };
}

/** What the flags say; they win over the sheet. */
function fromFlags(flags: Flags, problems: string[]): Partial<ValveTimingInput> {
  const margin = flags.margin === undefined ? undefined : readDegrees('--margin', flags.margin, problems);
  return {
    ...(flags.order === undefined ? {} : { firingOrder: readOrder(flags.order, problems) }),
    ...(flags.intervals === undefined
      ? {}
      : { firingIntervals: readDegreesList('--intervals', flags.intervals, problems).map(degrees) }),
    ...(flags.cam === undefined ? {} : { cam: readCam(flags.cam, problems) }),
    ...(margin === undefined ? {} : { margin: degrees(margin) }),
  };
}

async function readInput(sheet: string | undefined, flags: Flags, io: Io): Promise<ValveTimingInput> {
  if (sheet === undefined && flags.order === undefined) {
    throw new BadInput(['valves: give a sheet, or a firing order such as --order 1,3,4,2']);
  }
  const problems: string[] = [];
  const given = fromFlags(flags, problems);
  if (problems.length > 0) throw new BadInput(problems);
  if (sheet === undefined) return { firingOrder: [], ...given };
  const { firingIntervals, ...rest } = await fromSheet(sheet, given.firingOrder, io);
  // Intervals printed for one firing order say nothing about another.
  const keep = flags.order === undefined && firingIntervals ? { firingIntervals } : {};
  return { ...rest, ...keep, ...given };
}

function readStops(flags: Flags): { stops?: readonly number[] } {
  if (flags.stops === undefined) return {};
  const problems: string[] = [];
  const stops = readDegreesList('--stops', flags.stops, problems);
  if (problems.length > 0) throw new BadInput(problems);
  return { stops };
}

function plan(input: ValveTimingInput, flags: Flags): { timing: ValveTiming; plan: ValvePlan } {
  const timing = valveTiming(input);
  if (!timing.ok) throw new BadInput(timing.fault.map(describeTimingFault));
  const planned = planValveStops(timing.value, readStops(flags));
  if (!planned.ok) throw new BadInput([describePlanFault(planned.fault)]);
  return { timing: timing.value, plan: planned.value };
}

/** `gudgeon valves`: the crank stops at which all valves can be set, and which ones at each. */
export function valves(program: Command, io: Io): void {
  program
    .command('valves')
    .description('plan the crank stops for setting valves: fewest stops, turning only forward')
    .argument('[sheet]', 'engine sheet; "-" reads standard input')
    .option('--order <list>', 'firing order, such as 1,8,4,3,6,5,7,2; wins over the sheet')
    .option('--intervals <list>', 'crank degrees from each firing to the next, 720 in all; even when left out')
    .option('--cam <card>', 'cam card, such as io=30,ic=70,eo=70,ec=30, with at=0.050in for events at a lift')
    .option('--stops <list>', 'plan over exactly these crank degrees, such as 0,360')
    .option('--margin <degrees>', 'least crank degrees from opening and from closing; 5 when left out')
    .option('--json', 'print one JSON object')
    .action(async (sheet: string | undefined, flags: Flags) => {
      const result = plan(await readInput(sheet, flags, io), flags);
      io.out(flags.json ? JSON.stringify(planAsJson(result.plan), null, 2) : planAsText(result.timing, result.plan));
    });
}
