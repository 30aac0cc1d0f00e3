import {
  type CalcResult,
  type CalculationPage,
  catalogue,
  describeCalcFault,
  findCalculation,
  pageOf,
  type RunOptions,
  runCalculation,
  workingText,
} from '@gudgeon/core/calc';
import { type Command, InvalidArgumentError } from 'commander';
import { BadInput, type Io, readJson } from '../io.js';

interface Options {
  readonly list?: true;
  readonly input?: string;
  readonly json?: true;
  readonly uncertainty?: true;
  readonly seed: number;
  readonly trials: number;
  readonly display?: 'inch' | 'metric';
}

/** `gudgeon calc --list` and `gudgeon calc <id> --input FILE`. */
export function register(program: Command, io: Io): void {
  program
    .command('calc')
    .description('compute with one of the catalogue’s calculations, or list them')
    .argument('[id]', 'calculation, such as crank.motion; without --input its data sheet is shown')
    .option('--list', 'list all calculations')
    .option(
      '--input <file>',
      'JSON object of inputs, values such as "4.030 in" or { "value": 102.36, "unit": "mm" }; "-" reads standard input',
    )
    .option('--json', 'answer as JSON')
    .option('--uncertainty', 'work out the doubt from inputs that state a standard uncertainty, "4.030 ±0.0005 in"')
    .option('--seed <number>', 'seed of the Monte Carlo cross-check', wholeNumber, 1)
    .option('--trials <number>', 'trials of the Monte Carlo cross-check', wholeNumber, 5000)
    .option('--display <system>', 'show texts in inch or metric units, whatever was typed', system)
    .action((id: string | undefined, options: Options) => calc(id, options, io));
}

async function calc(id: string | undefined, options: Options, io: Io): Promise<void> {
  if (options.list) {
    list(options, io);
    return;
  }
  if (id === undefined) throw new BadInput(['calc: name a calculation, or ask with --list']);
  if (options.input === undefined) {
    dataSheet(id, options, io);
    return;
  }
  if (!findCalculation(id)) throw unknown(id);
  const found = runCalculation(id, await readJson(io, options.input), runOptions(options));
  if (!found.ok) throw new BadInput(found.fault.map(describeCalcFault));
  io.out(options.json ? JSON.stringify(jsonOf(found.value), null, 2) : textOf(found.value));
}

const runOptions = ({ uncertainty, seed, trials, display }: Options): RunOptions => ({
  uncertainty: uncertainty && { seed, trials },
  system: display,
});

function list({ json }: Options, io: Io): void {
  const pages = catalogue.map(pageOf);
  io.out(json ? JSON.stringify(pages, null, 2) : listText(pages));
}

function listText(pages: readonly CalculationPage[]): string {
  const widest = Math.max(...pages.map((page) => page.id.length));
  return pages.map((page) => `${page.id.padEnd(widest)}  ${page.title}`).join('\n');
}

function dataSheet(id: string, { json }: Options, io: Io): void {
  const found = findCalculation(id);
  if (!found) throw unknown(id);
  const page = pageOf(found);
  io.out(json ? JSON.stringify(page, null, 2) : sheetText(page));
}

/** The refusal of an id that is in no catalogue, before any file is read. */
function unknown(id: string): BadInput {
  const found = runCalculation(id, {});
  return new BadInput(found.ok ? [] : found.fault.map(describeCalcFault));
}

function jsonOf({ id, title, outputs, working, cautions, sources, trials }: CalcResult): object {
  return {
    id,
    title,
    outputs,
    working: working.map((line) => ({ ...line, line: workingText(line) })),
    cautions,
    sources,
    ...(trials && { trials }),
  };
}

function textOf({ title, outputs, working, cautions, sources }: CalcResult): string {
  const results = Object.values(outputs).map(({ symbol, text, meaning, uncertainty }) => {
    const doubt = uncertainty && 'text' in uncertainty ? ` ${uncertainty.text} (standard uncertainty)` : '';
    return `${meaning}: ${symbol} = ${text}${doubt}`;
  });
  return [
    title,
    ...results.map(indent),
    ...cautions.map((caution) => `Caution: ${caution.text}`),
    'Working',
    ...working.map((line) => indent(workingText(line))),
    'Sources',
    ...sources.map(({ title: name, locator, standing }) => indent(`${name}; ${locator} (${standing})`)),
  ].join('\n');
}

function sheetText(page: CalculationPage): string {
  return [
    `${page.id}: ${page.title}`,
    page.summary,
    `Formula: ${page.formula}`,
    'Inputs',
    ...page.inputs.map((one) =>
      indent(`${one.name}${one.required ? '' : ' (may be left out)'}: ${one.meaning}; ${one.takes}`),
    ),
    'Outputs',
    ...page.outputs.map((one) => indent(`${one.name}: ${one.meaning}${one.unit ? ` [${one.unit}]` : ''}`)),
    'Assumptions',
    ...page.assumptions.map(indent),
    'Sources',
    ...page.sources.map(indent),
    'Example input',
    indent(JSON.stringify(page.example.inputs)),
  ].join('\n');
}

const indent = (line: string): string => `  ${line}`;

const MOST = 1_000_000;

function wholeNumber(text: string): number {
  const number = Number(text);
  if (/^\d+$/.test(text) && number >= 1 && number <= MOST) return number;
  throw new InvalidArgumentError(`a whole number from 1 to ${MOST} is needed.`);
}

function system(text: string): 'inch' | 'metric' {
  if (text === 'inch' || text === 'metric') return text;
  throw new InvalidArgumentError('inch or metric is needed.');
}
