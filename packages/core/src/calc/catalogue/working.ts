import type { Calculation } from './calculation.js';
import type { ReadInput } from './read-inputs.js';
import type { OutputResult, WorkingLine } from './result.js';

/** The working panel: what went in, the formula, what came out, what was assumed. */
export function workingOf(
  calc: Calculation,
  inputs: readonly ReadInput[],
  outputs: Readonly<Record<string, OutputResult>>,
): readonly WorkingLine[] {
  return [
    ...inputs.map(inputLine),
    { part: 'formula', symbol: '', text: calc.formula, meaning: '' },
    ...Object.values(outputs).map(outputLine),
    ...calc.assumptions.map((text): WorkingLine => ({ part: 'assumption', symbol: '', text, meaning: '' })),
  ];
}

const inputLine = ({ spec, values, assumed }: ReadInput): WorkingLine => ({
  part: 'input',
  symbol: spec.symbol,
  text: `${values.map((one) => one.text).join(', ')}${assumed ? ' (not given, assumed)' : ''}`,
  meaning: spec.meaning,
});

function outputLine({ symbol, text, meaning, uncertainty }: OutputResult): WorkingLine {
  const doubt = uncertainty && 'text' in uncertainty ? ` ${uncertainty.text}` : '';
  return { part: 'output', symbol, text: `${text}${doubt}`, meaning };
}

/** A working line as one line of plain text. */
export function workingText(line: WorkingLine): string {
  switch (line.part) {
    case 'formula':
    case 'assumption':
      return line.text;
    case 'input':
    case 'output':
      return `${line.symbol} = ${line.text}   ${line.meaning}`;
  }
}
