/** Reference rows of cases/*.json through the same path as the command line. Each row names its own source. */
import { describe, expect, it } from 'vitest';
import balance from '../../../../cases/balance.json' with { type: 'json' };
import bearings from '../../../../cases/bearings.json' with { type: 'json' };
import cam from '../../../../cases/cam.json' with { type: 'json' };
import camMotion from '../../../../cases/cam-motion.json' with { type: 'json' };
import crank from '../../../../cases/crank.json' with { type: 'json' };
import cylinder from '../../../../cases/cylinder.json' with { type: 'json' };
import fasteners from '../../../../cases/fasteners.json' with { type: 'json' };
import joints from '../../../../cases/fasteners-joints.json' with { type: 'json' };
import fits from '../../../../cases/fits.json' with { type: 'json' };
import metrology from '../../../../cases/metrology.json' with { type: 'json' };
import selection from '../../../../cases/selection.json' with { type: 'json' };
import valveRoom from '../../../../cases/valve-room.json' with { type: 'json' };
import valveSprings from '../../../../cases/valve-springs.json' with { type: 'json' };
import valvetrain from '../../../../cases/valvetrain.json' with { type: 'json' };
import type { Text } from './catalogue/calculation.js';
import { readExpected } from './expected.suite.js';
import { describeCalcFault, findCalculation, runCalculation } from './index.js';

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

const files = {
  cylinder,
  balance,
  metrology,
  bearings,
  fits,
  crank,
  cam,
  camMotion,
  valvetrain,
  valveSprings,
  valveRoom,
  fasteners,
  joints,
  selection,
};

describe.each(Object.entries(files))('reference rows of %s', (_, file) => {
  const rows = file.cases as unknown as readonly Case[];

  it.each(rows.map((row) => [row.case, row] as const))('%s', (_case, row) => {
    const calc = findCalculation(row.calculation);
    if (!calc) throw new Error(`no calculation ${row.calculation}`);
    expect(row.from.trim()).not.toBe('');
    const run = runCalculation(row.calculation, row.inputs);
    if (row.refused !== undefined) {
      expect(run.ok).toBe(false);
      if (!run.ok) expect(run.fault.map(describeCalcFault).join('\n')).toContain(row.refused);
      return;
    }
    if (!run.ok) throw new Error(run.fault.map(describeCalcFault).join('\n'));
    const expected = Object.entries(row.expected ?? {});
    expect(expected.length).toBeGreaterThan(0);
    for (const [name, text] of expected) {
      const found = run.value.outputs[name];
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
  });
});
