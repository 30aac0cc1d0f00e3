import { expect, it } from 'vitest';
import { metrologyCalculations } from '../metrology/entries/index.js';
import { runDeclared } from './index.js';

it('takes an input of its own grammar written as a plain number, as a file holds it', () => {
  const calc = metrologyCalculations.find((one) => one.id === 'metrology.coverage-factor')!;
  const of = (degrees: unknown) => {
    const run = runDeclared(calc, { level: '95 %', degrees });
    return run.ok ? run.value.outputs.coverage?.value : run.fault[0]?.code;
  };
  expect(of(10)).toBe(of('10'));
  expect(of(-1)).toBe('wrong-shape');
  expect(of([10])).toBe('wrong-shape');
});
