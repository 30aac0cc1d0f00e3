/** The two groups of plain bearings on a crank, in the words and keys of each. */
import type { Engine, GradeChart, ShellStock } from '../../engine/index.js';
import type { Assessment, Place } from '../model.js';
import { placesOf } from './decision.js';

export interface Group {
  readonly id: 'main' | 'rod';
  /** "main journals", "crankpins". */
  readonly journals: string;
  readonly journal: 'main-journal' | 'crankpin';
  readonly housing: 'main-housing' | 'big-end-bore';
  /** "main housing", "big end". */
  readonly housingWord: string;
  readonly shell: 'main-shell' | 'rod-shell';
  readonly clearance: 'main-bearing.clearance' | 'rod-bearing.clearance';
  /** Where the thicker half goes when two differ: on the side that carries the load. Common practice, no source. */
  readonly thicker: 'upper' | 'lower';
}

export const MAINS: Group = {
  id: 'main',
  journals: 'main journals',
  journal: 'main-journal',
  housing: 'main-housing',
  housingWord: 'main housing',
  shell: 'main-shell',
  clearance: 'main-bearing.clearance',
  thicker: 'lower',
};
export const RODS: Group = {
  id: 'rod',
  journals: 'crankpins',
  journal: 'crankpin',
  housing: 'big-end-bore',
  housingWord: 'big-end bore',
  shell: 'rod-shell',
  clearance: 'rod-bearing.clearance',
  thicker: 'upper',
};
export const GROUPS: readonly Group[] = [MAINS, RODS];

export const shellsOf = ({ stock }: Engine, { id }: Group): readonly ShellStock[] =>
  (id === 'main' ? stock?.mainShells : stock?.rodShells) ?? [];
export const chartsOf = ({ stock }: Engine, { id }: Group): readonly GradeChart[] =>
  (stock?.gradeCharts ?? []).filter((chart) => chart.for === id);

/** One bearing: the place of its housing, and the journal that runs in it. */
export interface Position {
  readonly place: Place;
  readonly journal: Place;
}

/** Bearings of a group; a crankpin that carries two rods makes two. */
export function positionsOf(assessment: Assessment, group: Group): readonly Position[] {
  const journals = placesOf(assessment, group.journal);
  return placesOf(assessment, group.housing).flatMap((place) => {
    const journal = journals.find((one) =>
      group.id === 'main' ? one.id === place.id : carries(assessment.engine, one, place),
    );
    return journal === undefined ? [] : [{ place, journal }];
  });
}

/** Whether a crankpin carries the rod of a cylinder: as the sheet shares them out, else one pin for each cylinder in its place. */
function carries({ layout }: Engine, pin: Place, { cylinder }: Place): boolean {
  const own = layout.cylinders.find(({ number }) => number === cylinder);
  if (own === undefined) return false;
  return pin.cylinder === undefined ? (own.crankpin ?? own.place) === pin.journal : pin.cylinder === cylinder;
}
