/** The numbers at the end of every derivation, worked out by hand there, through the catalogue here. */
import { readdirSync, readFileSync } from 'node:fs';
import { catalogue, describeCalcFault, findCalculation, runCalculation } from '@gudgeon/core/calc';
import { describe, expect, it } from 'vitest';
import type { Text } from '../../packages/core/src/calc/catalogue/calculation.js';
import { readExpected } from '../../packages/core/src/calc/expected.suite.js';

interface Example {
  readonly id: string;
  readonly inputs: Readonly<Record<string, unknown>>;
  readonly outputs: Readonly<Record<string, Text>>;
}

const folder = new URL('../../docs/derivations/', import.meta.url);
const pages = readdirSync(folder).filter((name) => name.endsWith('.md') && name !== 'README.md');
const textOf = (page: string): string => readFileSync(new URL(page, folder), 'utf8');
const examplesOf = (page: string): readonly Example[] =>
  [...textOf(page).matchAll(/^```json example\n([\s\S]*?)^```$/gm)].map((block) => JSON.parse(block[1]!));

describe.each(pages)('%s', (page) => {
  const examples = examplesOf(page);

  it('ends with numbers, and is on the list of derivations', () => {
    expect(examples.length).toBeGreaterThan(0);
    expect(textOf('README.md')).toContain(`(${page})`);
  });

  it.each(examples.map((example, at) => [`${example.id}, example ${at + 1}`, example] as const))('%s', (_, example) => {
    const calc = findCalculation(example.id);
    if (!calc) throw new Error(`no calculation ${example.id}`);
    const run = runCalculation(example.id, example.inputs);
    if (!run.ok) throw new Error(run.fault.map(describeCalcFault).join('\n'));
    expect(Object.keys(example.outputs).length).toBeGreaterThan(0);
    for (const [name, text] of Object.entries(example.outputs)) {
      readExpected(calc, name, text).check(run.value.outputs[name], name);
    }
  });
});

/** Subjects whose derivations are all written down as pages; the others derive in the docstring of the function. */
const WRITTEN = ['crank', 'valve-setting'];

describe('a calculation that cites our own derivation', () => {
  const derived = new Set(pages.flatMap(examplesOf).map((example) => example.id));
  const citing = catalogue.filter((calc) => WRITTEN.includes(calc.subject) && calc.sources.includes('derived-here'));

  it.each(citing.map((calc) => calc.id))('%s is worked out on one of the pages', (id) => {
    expect([...derived]).toContain(id);
  });
});
