import { type Engine, type ValveId, valvesOf } from '../../engine/index.js';
import { indexOfLimits } from '../limits/index-of-limits.js';
import { PROPERTIES } from '../limits/properties.js';
import { loadHeight } from '../limits/scope-words.js';
import type { Anatomy } from './anatomy.js';
import { camshaftsOf } from './camshafts.js';
import { camJournals, crankpinsOf, mainJournals } from './journals.js';

/**
 * What the engine is made of, as far as measuring goes. Where the sheet is silent something usual is taken and said in `assumptions`; what
 * cannot be placed at all is in `missing`.
 */
export function anatomyOf(engine: Engine): Anatomy {
  const mains = mainJournals(engine);
  const cams = camJournals(engine);
  const valves = valvesOrUsual(engine);
  const shafts = camshaftsOf(engine, cams.count);
  const cylinders = walk(engine);
  return {
    engine,
    cylinders,
    banks: engine.layout.banks.map(({ id }) => id),
    mains: mains.count,
    ...(engine.inspection?.thrustAt === undefined ? {} : { thrustAt: engine.inspection.thrustAt }),
    crankpins: crankpinsOf(engine),
    camshafts: shafts.camshafts,
    valves: inWalk(engine, valves.valves, cylinders),
    loadHeights: { ...heightOf(engine, 'closed'), ...heightOf(engine, 'open') },
    asked: askedBy(engine),
    assumptions: [
      ...said('main-journal', mains.assumed),
      ...said('cam-journal', cams.assumed),
      ...said('cam-journal', shafts.assumed),
      ...said('valve-stem', valves.assumed),
    ],
    missing: missingIn(engine),
  };
}

function said(feature: string, words: string | undefined): Anatomy['assumptions'] {
  return words === undefined ? [] : [{ feature, words }];
}

/** Along one bank from the front, back along the next. */
function walk({ layout }: Engine): Anatomy['cylinders'] {
  return layout.banks.flatMap(({ id }, index) => {
    const own = layout.cylinders.filter(({ bank }) => bank === id).sort((a, b) => a.place - b.place);
    return index % 2 === 0 ? own : own.reverse();
  });
}

interface Valves {
  readonly valves: readonly ValveId[];
  readonly assumed?: string;
}
function valvesOrUsual(engine: Engine): Valves {
  const valves = valvesOf(engine);
  if (valves.length > 0) return { valves };
  const usual = engine.layout.cylinders.flatMap(({ number }) =>
    (['intake', 'exhaust'] as const).map((kind) => ({ cylinder: number, kind, index: 1 })),
  );
  return { valves: usual, assumed: 'one intake and one exhaust valve a cylinder: the sheet does not say how many' };
}

/** Valves in the order of the cylinders, in each as they stand along the head where the sheet draws them. */
function inWalk(engine: Engine, valves: readonly ValveId[], cylinders: Anatomy['cylinders']): readonly ValveId[] {
  const drawn = engine.heads.flatMap((head) => head.valves);
  const along = (valve: ValveId) =>
    drawn.find((each) => each.cylinder === valve.cylinder && each.kind === valve.kind && each.index === valve.index)?.at
      .x ?? 0;
  const backwards = new Set(engine.layout.banks.filter((_, index) => index % 2 === 1).map(({ id }) => id));
  return cylinders.flatMap(({ number, bank }) => {
    const own = valves.filter((valve) => valve.cylinder === number).sort((a, b) => along(a) - along(b));
    return backwards.has(bank) ? own.reverse() : own;
  });
}

function heightOf(engine: Engine, when: 'closed' | 'open'): Anatomy['loadHeights'] {
  const rows = indexOfLimits(engine).get(`spring-load-${when}.load`) ?? [];
  const text = rows.map(loadHeight).find((height) => height !== undefined)?.text;
  return text === undefined ? {} : { [when]: text };
}

/** Features that a limit of the sheet names, directly or through a clearance. */
function askedBy(engine: Engine): ReadonlySet<string> {
  return new Set([...indexOfLimits(engine).keys()].flatMap((property) => PROPERTIES.get(property)?.needs ?? []));
}

function missingIn(engine: Engine): Anatomy['missing'] {
  const missing = [
    { feature: 'core-plug', why: 'the sheet lists no core and gallery plugs; count and measure them before ordering' },
  ];
  if (engine.valveGear === undefined)
    missing.push({ feature: 'lifter', why: 'the sheet does not say what drives the valves (valveGear)' });
  const asked = askedBy(engine);
  if (!asked.has('timing-backlash') && !asked.has('chain-slack'))
    missing.push({
      feature: 'timing-backlash',
      why: 'the sheet does not say whether gears, a chain or a belt drive the camshaft',
    });
  return missing;
}
