import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import published from '../../../../cases/head-torque-acts.json' with { type: 'json' };
import { gudgeon } from '../memory-io.suite.js';

const recipe = (name: string): string =>
  readFileSync(new URL(`../../../../cases/recipes/${name}`, import.meta.url), 'utf8');

interface PrintedAct {
  readonly act: number;
  readonly stage: number;
  readonly hole: string;
  readonly kind: string;
  readonly target: { readonly text: string; readonly low?: number; readonly high?: number; readonly unit?: string };
}
interface Listed {
  readonly joint: string;
  readonly order: { readonly holes: readonly string[]; readonly origin: string; readonly words: string };
  readonly acts: readonly PrintedAct[];
}

/** "1-3", "A-C", "S1-S2", "L1" as a list. */
function named(range: string): string[] {
  const [, prefix = '', from = '', to = from] = /^(\D*)(\d*)(?:-\1(\d*))?$/.exec(range) ?? [];
  if (from !== '')
    return Array.from({ length: Number(to) - Number(from) + 1 }, (_, k) => `${prefix}${Number(from) + k}`);
  const [first = '', last = first] = range.split('-');
  const start = first.charCodeAt(0);
  return Array.from({ length: last.charCodeAt(0) - start + 1 }, (_, k) => String.fromCharCode(start + k));
}
// Exact by definition: the pound-force is 4.4482216152605 N, the foot 0.3048 m, the inch 25.4 mm.
const IN_UNIT = { N·m: 1, 'lb-ft': 4.4482216152605 * 0.3048, deg: 1, in: 25.4 } as const;

type PrintedStage = (typeof published.cases)[number]['stages'][number];

/** The holes that a printed stage visits, in order. */
function visited(stage: PrintedStage, order: readonly string[]): string[] {
  if (stage.holes === 'joint') return ['all'];
  const own = stage.holes === 'all' ? [...order] : order.filter((hole) => named(stage.holes).includes(hole));
  return 'reverse' in stage ? own.reverse() : own;
}
function windowOf(stage: PrintedStage): { low?: number; high?: number } {
  if (!('unit' in stage) || stage.unit === undefined) return {};
  const times = IN_UNIT[stage.unit as keyof typeof IN_UNIT];
  return {
    ...('low' in stage && stage.low !== undefined && { low: stage.low * times }),
    ...('high' in stage && stage.high !== undefined && { high: stage.high * times }),
  };
}

describe('gudgeon tighten --json', () => {
  it.each(published.cases)('$case: lists every act as printed (cases/head-torque-acts.json)', async (row) => {
    const said = await gudgeon(['tighten', 'sheet', 'joint', '--json'], { sheet: recipe(row.sheet) });
    expect(said).toMatchObject({ code: 0, err: [] });
    const listed: Listed = JSON.parse(said.out);
    const expected = row.stages.flatMap((stage, index) =>
      visited(stage, listed.order.holes).map((hole) => ({
        stage: index + 1,
        hole,
        kind: stage.kind,
        ...windowOf(stage),
      })),
    );
    expect(listed.acts.map(({ stage, hole, kind }) => ({ stage, hole, kind }))).toEqual(
      expected.map(({ stage, hole, kind }) => ({ stage, hole, kind })),
    );
    for (const [index, { low, high }] of expected.entries()) {
      const { target } = listed.acts[index]!;
      expect(target.low === undefined).toBe(low === undefined);
      expect(target.high === undefined).toBe(high === undefined);
      if (low !== undefined) expect(target.low).toBeCloseTo(low, 6);
      if (high !== undefined) expect(target.high).toBeCloseTo(high, 6);
    }
  });

  it('has exactly the parts of its contract', async () => {
    const said = await gudgeon(['tighten', '-', 'joint', '--json'], { '-': recipe('03-windows-single-use.yaml') });
    const listed: Listed = JSON.parse(said.out);
    expect(Object.keys(listed)).toEqual(['joint', 'order', 'acts']);
    expect(Object.keys(listed.order)).toEqual(['holes', 'origin', 'words']);
    expect(listed.acts[0]).toEqual({
      act: 1,
      stage: 1,
      hole: '1',
      kind: 'torque',
      target: { text: '37..43 N·m', low: 37, high: 43, unit: 'N·m' },
    });
    expect(listed.acts.map((act) => act.act)).toEqual(listed.acts.map((_, index) => index + 1));
  });

  it('says that an order was not printed, and takes the fasteners as listed', async () => {
    const said = await gudgeon(['tighten', 'sheet', 'joint', '--json'], {
      sheet: recipe('06-loosen-in-reverse-order.yaml'),
    });
    const listed: Listed = JSON.parse(said.out);
    expect(listed.order.origin).toBe('as-listed');
    const loosened = listed.acts.filter((act) => act.kind === 'loosen').map((act) => act.hole);
    expect(loosened).toEqual(listed.order.holes.toReversed());
  });
});

describe('gudgeon tighten', () => {
  it('prints a heading for every stage and a line for every act', async () => {
    const said = await gudgeon(['tighten', 'sheet', 'joint'], { sheet: recipe('11-rod-bolts-by-stretch.yaml') });
    expect(said.code).toBe(0);
    expect(said.out).toContain('whole joint: tighten through the three steps of the printed torque table');
    expect(said.out).toContain('Stage 2: tight reading minus zero reading of the same bolt');
    expect(said.out).toMatch(/\n2 {2}hole 1: stretch to 0\.0135/);
  });

  it('names the joints of the sheet when the one asked for is not there', async () => {
    const said = await gudgeon(['tighten', 'sheet', 'head'], { sheet: recipe('01-seat-loosen-angle-two-groups.yaml') });
    expect(said).toMatchObject({
      code: 2,
      out: '',
      err: ['tighten: there is no joint "head"; joints of this sheet: joint'],
    });
  });

  it('says what is wrong with a sheet, one line a fault, with its line', async () => {
    const said = await gudgeon(['tighten', 'sheet', 'joint'], { sheet: 'gudgeon: 1\nname: "x"\nbogus: 3\n' });
    expect(said.code).toBe(2);
    expect(said.err.length).toBeGreaterThan(0);
    for (const line of said.err) expect(line).toMatch(/^sheet(:\d+)?: /);
  });
});
