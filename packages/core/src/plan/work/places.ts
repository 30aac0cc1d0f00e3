import { type CylinderNumber, type Engine, valveKey, valveName, valvesOf } from '../../engine/index.js';
import type { PlaceKind, WorkPlace, WorksheetToFill } from './model.js';

/** Kinds that a sheet can leave without a number of places; then one place stands for all of them. */
export type Countable = Exclude<PlaceKind, 'joint' | 'worksheet'>;
export interface Places {
  readonly of: Readonly<Record<Countable, readonly WorkPlace[]>>;
  readonly assumptions: readonly string[];
}

const ENGINE: WorkPlace = { kind: 'engine', id: 'engine', name: '' };

/**
 * The places of an engine. Heads: as drawn, else one for each bank. Mains and camshafts: as the worksheets count them. What the sheet
 * leaves uncounted is one place for all of them, and `assumptions` says so.
 */
export function placesOf(engine: Engine, worksheets: readonly WorksheetToFill[]): Places {
  const mains = mainsOf(worksheets);
  const valves = valvePlaces(engine);
  const camshafts = camshaftsOf(worksheets);
  return {
    of: {
      engine: [ENGINE],
      head: headsOf(engine),
      main: mains.length > 0 ? mains : [{ kind: 'main', id: 'all', name: 'all main bearings' }],
      cylinder: cylindersOf(engine).map((number) => ({
        kind: 'cylinder',
        id: `${number}`,
        name: `cylinder ${number}`,
        cylinders: [number],
      })),
      valve: valves.length > 0 ? valves : cylindersOf(engine).map(valvesOfCylinder),
      camshaft: camshafts.length > 0 ? camshafts : [{ kind: 'camshaft', id: 'all', name: 'each camshaft' }],
      'run-in': runInOf(engine),
    },
    assumptions: [
      ...(mains.length > 0
        ? []
        : ['the sheet does not say how many main bearings there are: they are one act together']),
      ...(valves.length > 0
        ? []
        : ['the sheet does not say which valves a cylinder has: those of a cylinder are one act together']),
      ...(engine.heads.length > 0 ? [] : ['the sheet draws no heads: one for each bank is taken']),
      ...(engine.runIn.length > 0
        ? []
        : ['the sheet prints no run-in: the maker’s or part maker’s own is to be followed']),
    ],
  };
}

const cylindersOf = ({ layout }: Engine): readonly CylinderNumber[] =>
  layout.cylinders.map(({ number }) => number).sort((a, b) => a - b);

function headsOf(engine: Engine): readonly WorkPlace[] {
  if (engine.heads.length > 0)
    return engine.heads.map(({ id, name, cylinders }) => ({ kind: 'head', id, name, cylinders }));
  const { banks, cylinders } = engine.layout;
  return banks.map(({ id }) => ({
    kind: 'head',
    id,
    name: banks.length === 1 ? 'head' : `${id} head`,
    cylinders: cylinders.filter(({ bank }) => bank === id).map(({ number }) => number),
  }));
}

function mainsOf(worksheets: readonly WorksheetToFill[]): readonly WorkPlace[] {
  const sheet = worksheets.find(({ feature }) => feature === 'main-journal') ?? worksheets.find(isOfMains);
  return (sheet?.places ?? []).flatMap(({ journal }) =>
    journal === undefined
      ? []
      : [{ kind: 'main' as const, id: `main-${journal}`, name: `main ${journal}`, main: journal }],
  );
}

/** Worksheets whose `journal` counts main journals. */
export const isOfMains = ({ feature }: Pick<WorksheetToFill, 'feature'>): boolean => feature.startsWith('main-');

function camshaftsOf(worksheets: readonly WorksheetToFill[]): readonly WorkPlace[] {
  const sheet = worksheets.find(({ feature }) => feature === 'cam-runout');
  return (sheet?.places ?? []).map(({ id, name }) => ({ kind: 'camshaft', id, name }));
}

function valvePlaces(engine: Engine): readonly WorkPlace[] {
  return valvesOf(engine).map((valve) => ({
    kind: 'valve',
    id: valveKey(valve),
    name: valveName(engine, valve),
    cylinders: [valve.cylinder],
    valve: valveKey(valve),
  }));
}
const valvesOfCylinder = (number: CylinderNumber): WorkPlace => ({
  kind: 'valve',
  id: `valves-${number}`,
  name: `valves of cylinder ${number}`,
  cylinders: [number],
});

function runInOf(engine: Engine): readonly WorkPlace[] {
  if (engine.runIn.length === 0) return [{ kind: 'run-in', id: 'all', name: 'run-in of the maker' }];
  return engine.runIn.map(({ text }, index) => ({ kind: 'run-in', id: `line-${index + 1}`, name: text }));
}

/**
 * Whether what is done at one place touches the other: the same main, the same valve, a cylinder in common. A place that serves the
 * whole engine touches all.
 */
export function linked(a: WorkPlace, b: WorkPlace): boolean {
  if (a.valve !== undefined && b.valve !== undefined) return a.valve === b.valve;
  if (a.main !== undefined && b.main !== undefined) return a.main === b.main;
  if (a.kind === 'camshaft' && b.kind === 'camshaft') return a.id === b.id;
  if (a.cylinders === undefined || b.cylinders === undefined) return true;
  return a.cylinders.some((number) => b.cylinders?.includes(number));
}
