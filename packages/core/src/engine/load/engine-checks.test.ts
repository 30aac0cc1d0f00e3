/**
 * Every check of the transcribed engines (reference engine-*.json, `checks`; kept in cases/engine-checks with source and page):
 * what the manual prints is reproduced or flagged by the loader, or reproduced by the calculation that a person would use.
 */
import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import published from '../../../../../cases/valve-sets.json' with { type: 'json' };
import { readExpected } from '../../calc/expected.suite.js';
import { describeCalcFault, findCalculation, runCalculation } from '../../calc/index.js';
import type { Engine } from '../model.js';
import type { BuiltLimit } from './build/limits.js';
import { judgeFits } from './checks/fits.js';
import { leftOver, rangeOf } from './checks/ranges.js';
import { judgeSizeSteps } from './checks/size-steps.js';
import { type CheckRow, expectLength, expectRange, nameOf, type Proof } from './engine-checks.suite.js';
import { engineOf, limitsOf, ROOT, read } from './try-sheets.suite.js';

interface CheckFile {
  readonly sheet: string;
  readonly rows: readonly CheckRow[];
}
const FOLDER = 'cases/engine-checks/';
const FILES = readdirSync(new URL(FOLDER, ROOT)).map((name) => JSON.parse(read(`${FOLDER}${name}`)) as CheckFile);

it('all 69 checks of the eight files are kept', () => {
  expect(FILES.map((file) => file.rows.length)).toEqual([5, 7, 15, 13, 9, 3, 5, 12]);
});

describe.each(FILES)('$sheet', ({ sheet, rows }) => {
  const engine = engineOf(read(sheet));
  const limits = limitsOf(read(sheet));
  it.each(rows)('$what ($source): $verdict', ({ proved }) => {
    expect(proved.length).toBeGreaterThan(0);
    for (const proof of proved) prove(proof, engine, limits);
  });
});

type Prover<K extends Proof['by']> = (
  proof: Extract<Proof, { by: K }>,
  engine: Engine,
  limits: readonly BuiltLimit[],
) => void;
const PROVERS: { readonly [K in Proof['by']]: Prover<K> } = {
  fit: (proof, _, limits) => {
    const fits = judgeFits(limits).filter(
      (each) =>
        nameOf(each.gap) === proof.gap &&
        (proof.scope === undefined || each.gap.limit.scope === proof.scope) &&
        (proof.grade === undefined || each.parts.every((part) => part.limit.applies?.grade === proof.grade)),
    );
    expect(fits.length).toBeGreaterThan(0);
    for (const fit of fits) {
      expectRange(fit.found, proof.found);
      expect(fit.verdict).toBe(proof.verdict);
      expect(fit.slip).toEqual(proof.slip);
    }
  },
  step: (proof, _, limits) => {
    const steps = judgeSizeSteps(limits).filter(
      ({ row }) => nameOf(row) === proof.row && row.limit.applies?.grade === proof.scope,
    );
    expect(steps).toHaveLength(1);
    expectRange(steps[0]!.wanted, proof.wanted);
    expect(steps[0]).toMatchObject({ lowAgrees: proof.lowAgrees, highAgrees: proof.highAgrees });
  },
  'left over': (proof, _, limits) => {
    const taken = proof.taken.map((name) => ({ range: rangeOf(rowOf(limits, name))!, times: 1 }));
    expectRange(leftOver(rangeOf(rowOf(limits, proof.whole))!, taken), proof.found);
  },
  calculation: (proof) => {
    const calculation = findCalculation(proof.calculation);
    const run = runCalculation(proof.calculation, proof.inputs);
    if (calculation === undefined || !run.ok)
      throw new Error(run.ok ? `no ${proof.calculation}` : run.fault.map(describeCalcFault).join('\n'));
    for (const [name, text] of Object.entries(proof.expected))
      readExpected(calculation, name, text).check(run.value.outputs[name], name);
  },
  caution: (proof, engine, limits) => {
    const said = cautionsAt(engine, limits, proof.at).filter((each) => each.code === proof.code);
    expect(said.map((each) => each.message).join('\n')).toContain(proof.says);
  },
  'no caution': (proof, engine, limits) => {
    expect(cautionsAt(engine, limits, proof.at)).toEqual([]);
  },
  sheet: (proof) => {
    const layout = '{ form: inline, cylinders: [1, 2, 3, 4, 5, 6, 7, 8] }';
    const train = JSON.stringify(proof.train);
    const { cautions } = engineOf(`gudgeon: 1\nname: Sister\nlayout: ${layout}\ncrankTrain: ${train}\n`);
    expect(cautions.map((each) => each.code)).toEqual([proof.code]);
    expect(cautions[0]?.message).toContain(proof.says);
  },
  // calc/valve-setting/published-lists.test.ts holds the planner against every row of that file.
  'valve sets': (proof, engine) => {
    const row = published.cases.find((each) => each.case === proof.case);
    expect(row?.order).toEqual(proof.order);
    expect(engine.layout.firingOrder).toEqual(proof.order);
  },
  loss: (proof, _, limits) => {
    const { limit } = rowOf(limits, proof.row);
    const worn = limit.wear?.form === 'absolute' ? limit.wear.window.low : undefined;
    expect(1 - Number(worn) / Number(limit.whenNew?.window.low)).toBeCloseTo(proof.share, 4);
  },
  lift: (proof, _, limits) => {
    const height = (name: string) => Number(/([\d.]+) mm$/.exec(rowOf(limits, name).limit.what)?.[1]) / 1000;
    expectLength(height(proof.installed) - height(proof.open), proof.pressed);
  },
  lash: (proof, engine) => {
    const lash = engine.valveGear?.lash?.[proof.valve];
    expectLength(Number(lash?.cold?.window.low) - Number(lash?.hot?.window.low), proof.closes);
  },
  twice: (proof, engine, limits) => {
    const rows = limits.filter((each) => nameOf(each) === proof.row && each.limit.scope === proof.scope);
    expect(rows.map((each) => each.limit.from.source)).toEqual(proof.sources);
    expect(new Set(rows.map((each) => JSON.stringify(each.limit.whenNew?.window))).size).toBe(1);
    const paths = rows.map(pathOf);
    const said = engine.cautions.filter((each) => paths.includes(each.path)).map((each) => each.code);
    expect(said).not.toContain('stated-twice');
  },
};

function prove<K extends Proof['by']>(
  proof: Extract<Proof, { by: K }>,
  engine: Engine,
  limits: readonly BuiltLimit[],
): void {
  PROVERS[proof.by as K](proof, engine, limits);
}

const pathOf = (row: BuiltLimit) => `${row.path[0]}[${row.path[1]}]`;

function rowOf(limits: readonly BuiltLimit[], name: string): BuiltLimit {
  const found = limits.find((each) => nameOf(each) === name);
  if (found === undefined) throw new Error(`the sheet has no row "${name}"`);
  return found;
}

/** Cautions at a row ("piston, clearance"), at one key of it ("piston, clearance: whenNew"), or at a path of the sheet. */
function cautionsAt(engine: Engine, limits: readonly BuiltLimit[], at: string): Engine['cautions'] {
  if (!at.includes(', ')) return engine.cautions.filter((each) => each.path === at);
  const [name, key] = at.split(': ');
  const rows = limits.filter((each) => nameOf(each) === name);
  expect(rows.length, `the sheet has no row "${name}"`).toBeGreaterThan(0);
  const paths = rows.map((each) => (key === undefined ? pathOf(each) : `${pathOf(each)}.${key}`));
  return engine.cautions.filter((each) => paths.includes(each.path));
}
