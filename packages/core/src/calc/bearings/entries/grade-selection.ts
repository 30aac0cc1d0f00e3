import type { Length } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation, reversedEnds, verdictOf } from '../../catalogue/index.js';
import { gradeClearances, nearestGrade, type ShellGrade } from '../grades.js';
import { clearance, clearanceOut, highest, housing, journal, lowest, size, verdict } from './inputs.js';

const list = { ...size, list: true } as const;

export const gradeSelection = defineCalculation({
  id: 'bearings.grade-selection',
  subject: 'bearings',
  title: 'Oil clearance of each shell grade, and the grade that suits',
  summary: 'Clearance that each grade gives on a measured housing and journal; upper and lower halves may differ.',
  inputs: {
    housing,
    journal,
    grades: {
      kind: 'text',
      symbol: 'grade',
      meaning: 'names of the grades',
      expected: 'a name',
      read: (text: string) => text.trim() || undefined,
      list: true,
    },
    upperWallLow: { ...list, symbol: 'tu min', meaning: 'wall of the upper half of each grade, low end' },
    upperWallHigh: { ...list, symbol: 'tu max', meaning: 'the same, high end' },
    lowerWallLow: {
      ...list,
      symbol: 'tl min',
      meaning: 'wall of the lower half of each grade, low end; left out: as the upper',
      optional: true,
    },
    lowerWallHigh: { ...list, symbol: 'tl max', meaning: 'the same, high end', optional: true },
    target: {
      ...clearance,
      symbol: 'C*',
      meaning: 'clearance wanted; left out: the middle of lowest and highest',
      optional: true,
    },
    lowest,
    highest,
  },
  outputs: {
    clearances: { ...clearanceOut, symbol: 'C mid', meaning: 'clearance at mid wall, grade by grade', list: true },
    least: { ...clearanceOut, symbol: 'C min', meaning: 'with the thickest shells of each grade', list: true },
    most: { ...clearanceOut, symbol: 'C max', meaning: 'with the thinnest shells of each grade', list: true },
    chosen: { kind: 'text', symbol: 'chosen', meaning: 'grade nearest to what is wanted', optional: true },
    clearance: { ...clearanceOut, symbol: 'C', meaning: 'its clearance at mid wall', optional: true },
    verdict,
  },
  formula: 'C = H − tu − tl − J at the middle and at the ends of the wall ranges',
  assumptions: [
    'Which half is thicker differs between engines: upper and lower stay as the chart has them.',
    'Grade marks hold for new parts; used shells are measured.',
  ],
  sources: ['shell-grades', 'derived-here'],
  example: {
    inputs: {
      housing: '64.0060 mm',
      journal: '59.9640 mm',
      grades: ['3', '34', '4'],
      upperWallLow: ['2.009 mm', '2.012 mm', '2.012 mm'],
      upperWallHigh: ['2.012 mm', '2.015 mm', '2.015 mm'],
      lowerWallLow: ['2.009 mm', '2.009 mm', '2.012 mm'],
      lowerWallHigh: ['2.012 mm', '2.012 mm', '2.015 mm'],
      target: '0.018 mm',
    },
    outputs: { clearances: ['0.0210 mm', '0.0180 mm', '0.0150 mm'], chosen: '34' },
    from: 'reference row O-13; walls printed in the source, housing and journal ours',
  },
  compute: (v) => {
    const reversed = reversedEnds(v, ['lowest', 'highest']);
    if (reversed) return reversed;
    const grades = gradesOf(v.grades, v.upperWallLow, v.upperWallHigh, v.lowerWallLow, v.lowerWallHigh);
    if (!grades) {
      return conflict(
        ['grades', 'upperWallLow', 'upperWallHigh', 'lowerWallLow', 'lowerWallHigh'],
        'each grade needs both ends of its walls, the low end first',
      );
    }
    const found = gradeClearances(v.housing, v.journal, grades);
    const target = v.target ?? middleOf(v.lowest, v.highest);
    const chosen = target === undefined ? undefined : nearestGrade(found, target);
    return answer({
      clearances: found.map(({ middle }) => middle),
      least: found.map(({ least }) => least),
      most: found.map(({ most }) => most),
      chosen: chosen?.name,
      clearance: chosen?.middle,
      verdict: chosen ? verdictOf(chosen.middle, v.lowest, v.highest) : 'no data',
    });
  },
});

const middleOf = (low: Length | undefined, high: Length | undefined): Length | undefined =>
  low === undefined || high === undefined ? undefined : (((low + high) / 2) as Length);

/** Grades with the ranges of both halves; undefined when the lists do not belong together. */
function gradesOf(
  names: readonly string[],
  upperLow: readonly Length[],
  upperHigh: readonly Length[],
  lowerLow: readonly Length[] = upperLow,
  lowerHigh: readonly Length[] = upperHigh,
): readonly ShellGrade[] | undefined {
  const grades = names.flatMap((name, at) => {
    const [a, b, c, d] = [upperLow[at], upperHigh[at], lowerLow[at], lowerHigh[at]];
    if (a === undefined || b === undefined || c === undefined || d === undefined || a > b || c > d) return [];
    return [{ name, upper: { low: a, high: b }, lower: { low: c, high: d } }];
  });
  const longest = Math.max(upperLow.length, upperHigh.length, lowerLow.length, lowerHigh.length);
  return grades.length === names.length && longest === names.length ? grades : undefined;
}
