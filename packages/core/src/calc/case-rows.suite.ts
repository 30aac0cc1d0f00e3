/** For tests: what each room of `calc` must prove of its own entries, through the path of the command line. Each row names its own source. */
import { describe, expect, it } from 'vitest';
import type { Text } from './catalogue/calculation.js';
import { type CalcResult, describeCalcFault, runDeclared } from './catalogue/index.js';
import { readExpected } from './expected.suite.js';
import type { Calculation } from './index.js';

interface Case {
  readonly case: string;
  readonly calculation: string;
  readonly inputs: Readonly<Record<string, unknown>>;
  readonly expected?: Readonly<Record<string, Text>>;
  readonly tolerance?: Readonly<Record<string, string>>;
  /** Printed figures that our value does not meet within the tolerance: our value by hand arithmetic, and who is right. */
  readonly disagrees?: Readonly<
    Record<string, { readonly ours: string; readonly right: string; readonly why: string }>
  >;
  /** Part of the line with which the inputs are refused. */
  readonly refused?: string;
  readonly from: string;
}

/** The worked example of each entry, and the rows of the given files of cases/ that are of this room. */
export function proveEntries(entries: readonly Calculation[], ...files: readonly unknown[]): void {
  it.each(entries.map((calc) => [calc.id, calc] as const))(
    '%s computes its example to the digits stated',
    (_, calc) => {
      const outputs = Object.entries(calc.example.outputs);
      expect(outputs.length).toBeGreaterThan(0);
      const result = answered(calc, calc.example.inputs);
      for (const [name, text] of outputs) readExpected(calc, name, text).check(result.outputs[name], name);
    },
  );
  if (files.length === 0) return;
  const subject = entries[0]!.subject;
  const rows = files
    .flatMap((file) => (file as { readonly cases: readonly Case[] }).cases)
    .filter(({ calculation }) => calculation.startsWith(`${subject}.`));
  describe('reference rows', () => {
    it.each(rows.map((row) => [row.case, row] as const))('%s', (_, row) => {
      const calc = entries.find(({ id }) => id === row.calculation);
      if (!calc) throw new Error(`no calculation ${row.calculation}`);
      expect(row.from.trim()).not.toBe('');
      if (row.refused === undefined) proveRow(calc, row);
      else proveRefused(calc, row.inputs, row.refused);
    });
  });
}

function answered(calc: Calculation, inputs: unknown): CalcResult {
  const run = runDeclared(calc, inputs);
  if (!run.ok) throw new Error(run.fault.map(describeCalcFault).join('\n'));
  return run.value;
}

function proveRefused(calc: Calculation, inputs: unknown, words: string): void {
  const run = runDeclared(calc, inputs);
  expect(run.ok).toBe(false);
  if (!run.ok) expect(run.fault.map(describeCalcFault).join('\n')).toContain(words);
}

function proveRow(calc: Calculation, row: Case): void {
  const result = answered(calc, row.inputs);
  const expected = Object.entries(row.expected ?? {});
  expect(expected.length).toBeGreaterThan(0);
  for (const [name, text] of expected) {
    const found = result.outputs[name];
    const printed = () => readExpected(calc, name, text, row.tolerance?.[name]).check(found, name);
    const disagreement = row.disagrees?.[name];
    if (disagreement === undefined) {
      printed();
      continue;
    }
    expect(disagreement.why.trim()).not.toBe('');
    readExpected(calc, name, disagreement.ours).check(found, name);
    expect(printed, `${name} agrees after all`).toThrow();
  }
  for (const name of Object.keys(row.disagrees ?? {})) expect(Object.keys(row.expected ?? {})).toContain(name);
}
