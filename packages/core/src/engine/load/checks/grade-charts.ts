import { formatQuantity } from '../../../quantity/index.js';
import type { Engine, GradeChart, ShellStock } from '../../model.js';
import type { BuiltLimit } from '../build/limits.js';
import type { Path } from '../document.js';
import type { SheetReader } from '../reader.js';
import { FITS, fitsWords, type Words } from './fit-table.js';
import { fitVerdict, leftOver, type Range, rangeOf } from './ranges.js';
import { wordsOf } from './row-words.js';

const FIT_OF = { main: 'main journal in its shells', rod: 'crankpin in its shells' } as const;

/** Every row of a printed shell chart names a shell of the list, and gives the printed clearance where all sizes are known. */
export function checkGradeCharts(engine: Engine, limits: readonly BuiltLimit[], reader: SheetReader): void {
  engine.stock?.gradeCharts.forEach((chart, index) => {
    const listed = chart.for === 'main' ? engine.stock?.mainShells : engine.stock?.rodShells;
    const shells = (listed ?? []).filter((each) => each.grade !== undefined && each.undersize === 0);
    if (shells.length === 0) return;
    const parts = { shells, ...sizesFor(chart, limits) };
    chart.rows.forEach((row, at) => {
      checkRow(row, parts, ['stock', 'gradeCharts', index, 'rows', at], reader);
    });
  });
}

interface ChartParts {
  readonly shells: readonly ShellStock[];
  readonly gap: BuiltLimit | undefined;
  readonly housings: readonly BuiltLimit[];
  readonly journals: readonly BuiltLimit[];
}

function sizesFor(chart: GradeChart, limits: readonly BuiltLimit[]): Omit<ChartParts, 'shells'> {
  const rule = FITS.find((each) => each.name === FIT_OF[chart.for])!;
  const named = (words: Words) => limits.filter((each) => fitsWords(each.limit, words) && rangeOf(each) !== undefined);
  return { gap: named(rule.gap)[0], housings: named(rule.whole), journals: named(rule.taken.at(-1)!.words) };
}

function checkRow(row: GradeChart['rows'][number], parts: ChartParts, path: Path, reader: SheetReader): void {
  const shell = parts.shells.find((each) => same(each.grade, row.shell));
  if (shell === undefined) {
    const known = [...new Set(parts.shells.map((each) => each.grade))].join(', ');
    reader.caution('no-such-shell', path, `the shell "${row.shell}" is not in the list; listed: ${known}`);
    return;
  }
  const { gap } = parts;
  const hole = graded(parts.housings, row.housing);
  const shaft = graded(parts.journals, row.journal);
  const printed = gap && rangeOf(gap);
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

function graded(rows: readonly BuiltLimit[], grade: string): Range | undefined {
  const row = rows.find((each) => wordsOf(each.limit).grade?.some((mark) => same(mark, grade)));
  return row && rangeOf(row);
}

const same = (a: string | undefined, b: string) => a?.trim().toLowerCase() === b.trim().toLowerCase();
