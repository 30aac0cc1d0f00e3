import type { Length } from '../../../quantity/index.js';
import { answer, type Caution, conflict, defineCalculation, reversedEnds } from '../../catalogue/index.js';
import type { Sizes } from '../clearance.js';
import { type ChartPair, checkChart } from '../grades.js';
import { clearance, clearanceOut, size } from './inputs.js';

const list = { ...size, list: true } as const;
const disagree: Caution = {
  code: 'chart-disagrees',
  text: 'the chart contradicts its own clearance: a row or a mark is misprinted; measure the parts and do not select by it',
};

export const gradeChart = defineCalculation({
  id: 'bearings.grade-chart-check',
  subject: 'bearings',
  title: 'Whether a shell selection chart agrees with its own clearance',
  summary: 'Works out the worst-case clearance of every pair of bore and journal marks of a chart; finds misprints.',
  inputs: {
    housingLow: { ...list, symbol: 'H min', meaning: 'housing bores by mark 1, 2, 3 …, low ends' },
    housingHigh: { ...list, symbol: 'H max', meaning: 'the same, high ends' },
    journalLow: { ...list, symbol: 'J min', meaning: 'journals by mark 1, 2, 3 …, low ends' },
    journalHigh: { ...list, symbol: 'J max', meaning: 'the same, high ends' },
    wallLow: { ...list, symbol: 't min', meaning: 'shell walls in the order of shellMarks, low ends' },
    wallHigh: { ...list, symbol: 't max', meaning: 'the same, high ends' },
    shellMarks: {
      kind: 'count',
      symbol: 'n',
      meaning: 'mark printed beside each shell wall',
      range: { from: 0, to: 1000 },
      list: true,
    },
    offset: {
      kind: 'count',
      symbol: 'k',
      meaning: 'shell mark = bore mark + journal mark + this; −1 where marks 1 and 1 take shell 1',
      range: { from: -1000, to: 1000 },
      default: 0,
    },
    printedLow: { ...clearance, symbol: 'P min', meaning: 'printed standard clearance, low end' },
    printedHigh: { ...clearance, symbol: 'P max', meaning: 'printed standard clearance, high end' },
  },
  outputs: {
    verdict: { kind: 'text', symbol: 'verdict', meaning: 'agrees, or contradicts the printed clearance' },
    pairs: { kind: 'count', symbol: 'pairs', meaning: 'pairs of marks in the chart' },
    wrong: { kind: 'count', symbol: 'wrong', meaning: 'pairs that do not give the printed clearance' },
    findings: {
      kind: 'text',
      symbol: 'pair',
      meaning: 'each pair of marks, bore by bore: its shell and how it stands to the printed clearance',
      list: true,
    },
    least: {
      ...clearanceOut,
      symbol: 'C min',
      meaning: 'least clearance of each pair that has one shell, in the same order',
      list: true,
    },
    most: { ...clearanceOut, symbol: 'C max', meaning: 'most clearance of each of these pairs', list: true },
  },
  formula: 'C min = H min − 2·t max − J max; C max = H max − 2·t min − J min; shell = bore mark + journal mark + k',
  assumptions: [
    'Both halves of a pair have the same wall. New parts: marks say nothing about worn ones.',
    'A pair is wrong when some of its clearances lie outside the printed ones by more than 0.5 µm.',
  ],
  sources: ['grade-chart', 'derived-here'],
  example: {
    inputs: {
      housingLow: ['74.026 mm', '74.032 mm'],
      housingHigh: ['74.032 mm', '74.038 mm'],
      journalLow: ['68.994 mm', '68.988 mm'],
      journalHigh: ['69.000 mm', '68.994 mm'],
      wallLow: ['2.489 mm', '2.492 mm', '2.495 mm'],
      wallHigh: ['2.492 mm', '2.495 mm', '2.498 mm'],
      shellMarks: [2, 3, 4],
      printedLow: '0.042 mm',
      printedHigh: '0.060 mm',
    },
    outputs: { verdict: 'agrees', pairs: 4, wrong: 0 },
    from: 'reference row O-10, four of its nine pairs',
  },
  compute: (v) => {
    const housings = rangesOf(v.housingLow, v.housingHigh);
    if (!housings) return uneven('housingLow', 'housingHigh');
    const journals = rangesOf(v.journalLow, v.journalHigh);
    if (!journals) return uneven('journalLow', 'journalHigh');
    const walls = rangesOf(v.wallLow, v.wallHigh);
    if (!walls) return uneven('wallLow', 'wallHigh');
    if (walls.length !== v.shellMarks.length) return uneven('wallLow', 'shellMarks');
    const reversed = reversedEnds(v, ['printedLow', 'printedHigh']);
    if (reversed) return reversed;
    const shells = walls.map((wall, at) => ({ wall, mark: v.shellMarks[at]! }));
    const printed = { low: v.printedLow, high: v.printedHigh };
    const pairs = checkChart({ housings, journals, shells, offset: v.offset }, printed);
    const wrong = pairs.filter(({ verdict }) => verdict !== 'equal' && verdict !== 'inside').length;
    const known = pairs.flatMap((pair) => pair.clearance ?? []);
    return answer(
      {
        verdict: wrong === 0 ? 'agrees' : 'contradicts',
        pairs: pairs.length,
        wrong,
        findings: pairs.map(pairText),
        least: known.map(({ low }) => low),
        most: known.map(({ high }) => high),
      },
      wrong > 0 ? [disagree] : [],
    );
  },
});

const pairText = ({ housing, journal, shell, verdict }: ChartPair): string =>
  `bore ${housing} + journal ${journal}, shell ${shell}: ${verdict}`;

const uneven = (one: string, other: string) =>
  conflict([one, other], 'the lists must be equally long, and no low end above its high end');

/** Ends side by side; undefined when the lists differ in length or a pair is reversed. */
function rangesOf(low: readonly Length[], high: readonly Length[]): readonly Sizes[] | undefined {
  if (low.length !== high.length) return undefined;
  const ranges = low.map((one, at) => ({ low: one, high: high[at]! }));
  return ranges.every((range) => range.low <= range.high) ? ranges : undefined;
}
