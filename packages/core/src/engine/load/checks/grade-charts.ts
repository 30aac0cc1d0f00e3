import { formatQuantity } from '../../../quantity/index.js';
import type { Engine, GradeChart } from '../../model.js';
import type { BuiltLimit } from '../build/limits.js';
import type { Path } from '../document.js';
import type { SheetReader } from '../reader.js';
import { FITS, fitsWords } from './fit-table.js';
import { fitVerdict, leftOver, type Range, rangeOf } from './ranges.js';
import { wordsOf } from './row-words.js';

const FIT_OF = { main: 'main journal in its shells', rod: 'crankpin in its shells' } as const;

/** Every row of a printed shell chart names a shell of the list, and gives the printed clearance where all sizes are known. */
export function checkGradeCharts(engine: Engine, limits: readonly BuiltLimit[], reader: SheetReader): void {
  engine.stock?.gradeCharts.forEach((chart, index) => {
    chart.rows.forEach((row, at) => {
      checkRow(engine, chart, row, limits, ['stock', 'gradeCharts', index, 'rows', at], reader);
    });
  });
}

function checkRow(
  engine: Engine,
  chart: GradeChart,
  row: GradeChart['rows'][number],
  limits: readonly BuiltLimit[],
  path: Path,
  reader: SheetReader,
): void {
  const listed = chart.for === 'main' ? engine.stock?.mainShells : engine.stock?.rodShells;
  const graded = (listed ?? []).filter((each) => each.grade !== undefined && each.undersize === 0);
  if (graded.length === 0) return;
  const shell = graded.find((each) => same(each.grade, row.shell));
  if (shell === undefined) {
    const known = [...new Set(graded.map((each) => each.grade))].join(', ');
    reader.caution('no-such-shell', path, `the shell "${row.shell}" is not in the list; listed: ${known}`);
    return;
  }
  const rule = FITS.find((each) => each.name === FIT_OF[chart.for])!;
  const journalWords = rule.taken.at(-1)!.words;
  const gap = limits.find((each) => fitsWords(each.limit, rule.gap) && rangeOf(each) !== undefined);
  const housing = limits.find((each) => fitsWords(each.limit, rule.whole) && gradeIs(each, row.housing));
  const journal = limits.find((each) => fitsWords(each.limit, journalWords) && gradeIs(each, row.journal));
  const [printed, hole, shaft] = [gap, housing, journal].map((each) => each && rangeOf(each));
  if (gap === undefined || printed === undefined || hole === undefined || shaft === undefined) return;
  const found = leftOver(hole, [
    { range: shell.wall as Range, times: 2 },
    { range: shaft, times: 1 },
  ]);
  if (fitVerdict(found, printed, 0.51 * gap.step) === 'agrees') return;
  const show = (value: number) => formatQuantity('length', value, gap.unit, gap.unit === 'in' ? 5 : 4);
  const give = `housing ${row.housing}, journal ${row.journal} and shell ${row.shell} give ${show(found.low)} to ${show(found.high)}`;
  reader.caution('chart-disagrees', path, `${give}, but ${gap.limit.whenNew?.text} is printed`);
}

const same = (a: string | undefined, b: string) => a?.trim().toLowerCase() === b.trim().toLowerCase();
const gradeIs = (row: BuiltLimit, grade: string) =>
  wordsOf(row.limit).grade?.some((each) => same(each, grade)) ?? false;
