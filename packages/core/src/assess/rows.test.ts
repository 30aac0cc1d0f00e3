/** Published rows about sizes and fits, through the path that the screens use: readings of an engine's plan, assessed. */
import { describe, expect, it } from 'vitest';
import bearings from '../../../../cases/bearings.json' with { type: 'json' };
import cylinder from '../../../../cases/cylinder.json' with { type: 'json' };
import metrology from '../../../../cases/metrology.json' with { type: 'json' };
import type { Engine } from '../engine/index.js';
import { assess } from './assess.js';
import { EXACT, EXACT_GAUGE, engineWith, findingIn, readAll, reading, readingsOf, si } from './assess.suite.js';
import type { Assessment, Finding, Instrument, SlotReading } from './model.js';
import type { Habits } from './sizes/index.js';

interface Row {
  readonly case: string;
  readonly calculation: string;
  readonly inputs: Readonly<Record<string, unknown>>;
  readonly expected?: Readonly<Record<string, unknown>>;
  readonly tolerance?: Readonly<Record<string, string>>;
  readonly refused?: string;
}
const ROWS = [...metrology.cases, ...bearings.cases, ...cylinder.cases] as readonly Row[];
const rowsOf = (calculation: string): readonly Row[] => {
  const rows = ROWS.filter((row) => row.calculation === calculation && row.refused === undefined);
  if (rows.length === 0) throw new Error(`no rows of ${calculation}`);
  return rows;
};
const text = (row: Row, name: string): string => String(row.inputs[name]);
const list = (row: Row, name: string): readonly string[] => row.inputs[name] as readonly string[];
const has = (row: Row, name: string): boolean => row.inputs[name] !== undefined;

/** Half of the last digit of a printed figure [SI], or the tolerance of the row. */
function within(row: Row, name: string, printed: string): number {
  const stated = row.tolerance?.[name];
  if (stated !== undefined) return si(stated);
  const [number = '', unit = 'mm'] = printed.split(' ');
  return si(`${(0.5 * 10 ** -(number.split('.')[1] ?? '').length).toFixed(12)} ${unit}`) * (1 + 1e-9);
}
function expectFigure(row: Row, name: string, found: number | undefined): void {
  const printed = row.expected?.[name];
  if (printed === undefined) return;
  expect(Math.abs((found ?? Number.NaN) - si(String(printed)))).toBeLessThanOrEqual(within(row, name, String(printed)));
}
const gauges = { instruments: [EXACT_GAUGE] };
const exact: Partial<SlotReading> = { instrument: 'exact' };
const found = (engine: Engine, taken: readonly SlotReading[], habits: Habits = EXACT): Assessment =>
  assess(engine, readingsOf(taken, gauges), habits);
const finding = (engine: Engine, taken: readonly SlotReading[], key: string): Finding =>
  findingIn(found(engine, taken).findings, key);

/** Window of a row as the sheet writes it. */
const window = (low?: string, high?: string): string => {
  if (low === undefined) return `<= ${high}`;
  return high === undefined ? `>= ${low}` : `${low}..${high}`.replace(/ (mm|in)\.\./, '..');
};

describe('out-of-round and taper (O-01, O-02, O-17)', () => {
  for (const row of rowsOf('metrology.bore-shape'))
    it(row.case, () => {
      const [x, y] = [list(row, 'directionX'), list(row, 'directionY')];
      const limits: string[] = [];
      const limit = (property: string, low?: string, high?: string, rule?: unknown) => {
        if (low === undefined && high === undefined && rule === undefined) return;
        const printed = low === undefined && high === undefined ? '<= 1 mm' : window(low, high);
        limits.push(
          `property: cylinder-bore.${property}, whenNew: "${printed}"${rule === undefined ? '' : `, rule: ${rule}`}`,
        );
      };
      const input = (name: string) => (has(row, name) ? text(row, name) : undefined);
      limit('diameter', input('low'), input('high'));
      limit('out-of-round', undefined, input('outOfRoundLimit'), row.inputs.outOfRoundRule);
      limit('taper', undefined, input('taperLimit'), row.inputs.taperRule);
      const heights = x.map((_, at) => `{ name: height ${at + 1} }`).join(', ');
      const engine = engineWith(limits, `inspection: { boreHeights: [${heights}], boreDirections: [x, y] }\n`);
      const taken = readAll(
        engine,
        'cylinder-bore',
        '1',
        x.flatMap((one, at) => [one, y[at]!]),
        exact,
      );
      const { findings, sizes } = found(engine, taken);
      const verdict = (name: string, property: string) => {
        const printed = row.expected?.[name];
        if (printed !== undefined) expect(findingIn(findings, `cylinder-bore.${property}@1`).verdict).toBe(printed);
      };
      expectFigure(row, 'outOfRound', sizes.get('cylinder-bore.out-of-round@1')?.value);
      if (x.length > 1) expectFigure(row, 'taper', sizes.get('cylinder-bore.taper@1')?.value);
      verdict('outOfRoundVerdict', 'out-of-round');
      if (x.length > 1) verdict('taperVerdict', 'taper');
      verdict('sizeVerdict', 'diameter');
    });

  for (const row of rowsOf('bearings.journal-form'))
    it(`${row.case}, and the clearance by the largest journal`, () => {
      const engine = engineWith([
        `property: main-journal.out-of-round, whenNew: "<= ${text(row, 'outOfRoundLimit')}"`,
        `property: main-journal.taper, whenNew: "<= ${text(row, 'taperLimit')}"`,
      ]);
      const [x, y] = [list(row, 'x'), list(row, 'y')];
      const taken = [
        ...readAll(
          engine,
          'main-journal',
          'main-1',
          x.flatMap((one, at) => [one, y[at]!]),
          exact,
        ),
        ...readAll(engine, 'main-bearing-bore', 'main-1', '60.0000 mm', exact),
      ];
      const { sizes, findings } = found(engine, taken);
      expectFigure(row, 'outOfRound', sizes.get('main-journal.out-of-round@main-1')?.value);
      expectFigure(row, 'taper', sizes.get('main-journal.taper@main-1')?.value);
      expect(findingIn(findings, 'main-journal.taper@main-1').verdict).toBe(row.expected?.taperVerdict);
      const clearance = sizes.get('main-bearing.clearance@main-1')?.value ?? Number.NaN;
      expectFigure(row, 'largest', si('60.0000 mm') - clearance);
    });
});

describe('oil clearance (O-10, O-11, O-13, O-15, O-18)', () => {
  const bearing = (housing: string, upper: string, lower: string, journal: string, engine: Engine) => [
    ...readAll(engine, 'main-housing', 'main-2', housing, exact),
    ...readAll(engine, 'main-shell', 'main-2', [upper, lower], exact),
    ...readAll(engine, 'main-journal', 'main-2', journal, exact),
  ];
  const key = 'main-bearing.clearance@main-2';

  for (const row of rowsOf('bearings.worst-case-clearance'))
    it(row.case, () => {
      const engine = engineWith([
        `property: main-bearing.clearance, whenNew: "${window(text(row, 'printedLow'), text(row, 'printedHigh'))}"`,
      ]);
      const wall = (end: 'Low' | 'High') => text(row, `wall${end}`);
      const tight = finding(
        engine,
        bearing(text(row, 'housingLow'), wall('High'), wall('High'), text(row, 'journalHigh'), engine),
        key,
      );
      const loose = finding(
        engine,
        bearing(text(row, 'housingHigh'), wall('Low'), wall('Low'), text(row, 'journalLow'), engine),
        key,
      );
      expectFigure(row, 'least', tight.size?.value);
      expectFigure(row, 'most', loose.size?.value);
      // Row O-10: limits are inclusive, and rounding of the arithmetic is no excess.
      if (row.expected?.verdict === 'equal') expect([tight.verdict, loose.verdict]).toEqual(['in', 'in']);
      else expect([tight.verdict, loose.verdict]).toContain('out');
    });

  for (const row of rowsOf('bearings.grade-selection'))
    it(`${row.case}: halves at the middle of their grades`, () => {
      const engine = engineWith([]);
      const middle = (half: string, at: number) =>
        `${((si(list(row, `${half}WallLow`)[at]!) + si(list(row, `${half}WallHigh`)[at]!)) * 500).toFixed(4)} mm`;
      list(row, 'grades').forEach((_, at) => {
        const taken = bearing(
          text(row, 'housing'),
          middle('upper', at),
          middle('lower', at),
          text(row, 'journal'),
          engine,
        );
        const printed = si((row.expected!.clearances as readonly string[])[at]!);
        expect(Math.abs(finding(engine, taken, key).size!.value - printed)).toBeLessThan(si('0.0005 mm'));
      });
    });

  it('O-15 a wall read with flat anvils: below nothing, out, and told to read the wall again', () => {
    const engine = engineWith(['property: main-bearing.clearance, whenNew: "0.001..0.003 in"']);
    const one = finding(engine, bearing('2.6410 in', '0.0970 in', '0.0970 in', '2.4500 in', engine), key);
    expect(one.size?.value).toBeCloseTo(si('-0.0030 in'), 9);
    expect(one.verdict).toBe('out');
    expect(one.size?.cautions.join()).toContain('ball anvil');
  });

  for (const row of rowsOf('bearings.thread-gauge'))
    it(`${row.case}: both ends of a strip are judged`, () => {
      const engine = engineWith([
        `property: main-bearing.clearance, whenNew: "${window(text(row, 'lowest'), text(row, 'highest'))}"`,
      ]);
      const [loose, tight] = list(row, 'readings');
      const one = finding(engine, readAll(engine, 'main-strip', 'main-2', [tight!, loose!], exact), key);
      expect(one.verdict).toBe('out');
      expect(one.held[0]?.nearEnd).toBe('high');
    });
});

describe('pistons and rings (O-04, O-06, O-44)', () => {
  for (const row of rowsOf('cylinder.clearance-band'))
    it(row.case, () => {
      const engine = engineWith([]);
      const ends = (bore: string, piston: string) =>
        finding(
          engine,
          [
            ...readAll(engine, 'cylinder-bore', '1', text(row, bore), exact),
            ...readAll(engine, 'piston-skirt', '1', text(row, piston), exact),
          ],
          'piston.clearance@1',
        ).size?.value;
      expectFigure(row, 'least', ends('boreLeast', 'pistonMost'));
      expectFigure(row, 'most', ends('boreMost', 'pistonLeast'));
    });

  for (const row of rowsOf('cylinder.piston-clearance'))
    it(row.case, () => {
      const engine = engineWith(
        has(row, 'least')
          ? [`property: piston.clearance, whenNew: "${window(text(row, 'least'), text(row, 'most'))}"`]
          : [],
      );
      const one = finding(
        engine,
        [
          ...readAll(engine, 'cylinder-bore', '1', text(row, 'bore'), exact),
          ...readAll(engine, 'piston-skirt', '1', text(row, 'piston'), exact),
        ],
        'piston.clearance@1',
      );
      expectFigure(row, 'clearance', one.size?.value);
      const words = { within: 'in', 'too small': 'out', 'too large': 'out' } as Readonly<Record<string, string>>;
      const printed = row.expected?.verdict;
      if (printed !== undefined) expect(one.verdict).toBe(words[String(printed)]);
    });

  for (const row of rowsOf('cylinder.ring-side-clearance'))
    it(row.case, () => {
      const engine = engineWith([
        `property: ring-groove-top.clearance, whenNew: "${window(text(row, 'least'), text(row, 'most'))}"`,
        'property: groove-width-top.width, whenNew: "1.24..1.26 mm"',
        'property: ring-width-top.width, whenNew: "1.18..1.20 mm"',
      ]);
      const one = finding(
        engine,
        [
          ...readAll(engine, 'groove-width-top', '1', text(row, 'groove'), exact),
          ...readAll(engine, 'ring-width-top', '1', text(row, 'ring'), exact),
        ],
        'ring-groove-top.clearance@1',
      );
      expectFigure(row, 'clearance', one.size?.value);
      expect(one.verdict).toBe('in');
    });
});

describe('temperature (O-24, O-25)', () => {
  const warm = (degrees: number): Partial<SlotReading> => ({ ...exact, temperature: 273.15 + degrees, room: 293.15 });

  for (const row of rowsOf('metrology.size-at-reference'))
    it(row.case, () => {
      const engine = engineWith([], 'inspection: { materials: { block: aluminium } }\n');
      const taken = readAll(engine, 'cylinder-bore', '1', text(row, 'reading'), warm(35));
      expectFigure(row, 'size', found(engine, taken).sizes.get('cylinder-bore.diameter@1')?.value);
    });

  for (const row of rowsOf('metrology.clearance-at-reference'))
    it(row.case, () => {
      const engine = engineWith([], 'inspection: { materials: { block: cast-iron, piston: aluminium } }\n');
      const degrees = (name: string) => Number.parseFloat(text(row, name));
      const taken = [
        ...readAll(engine, 'cylinder-bore', '1', text(row, 'hole'), warm(degrees('holeTemperature'))),
        ...readAll(engine, 'piston-skirt', '1', text(row, 'shaft'), warm(degrees('shaftTemperature'))),
      ];
      const { sizes } = found(engine, taken);
      expectFigure(row, 'holeSize', sizes.get('cylinder-bore.diameter@1')?.value);
      expectFigure(row, 'shaftSize', sizes.get('piston-skirt.diameter@1')?.value);
      const clearance = sizes.get('piston.clearance@1')?.value ?? Number.NaN;
      expectFigure(row, 'clearance', clearance);
      expectFigure(row, 'correction', clearance - (si(text(row, 'hole')) - si(text(row, 'shaft'))));
    });
});

describe('doubt and verdict (O-26, O-30, O-31, O-32)', () => {
  const gauge = (id: string, u: string): Instrument => ({ ...EXACT_GAUGE, id, name: id, expanded: 2 * si(u) });
  const float = (limit: string) => engineWith([`property: crank-end-float.float, whenNew: "${limit}"`]);
  const slot = 'crank-end-float/crankshaft/float';

  it('O-26 five readings of one slot', () => {
    const row = rowsOf('metrology.repeats')[0]!;
    const engine = engineWith([]);
    const taken = list(row, 'readings').map((one) => reading('piston-skirt/1/skirt', one, exact));
    const size = found(engine, taken).sizes.get('piston-skirt.diameter@1');
    expectFigure(row, 'mean', size?.value);
    expectFigure(row, 'uncertainty', size?.u);
  });

  it('O-30 oil clearance of four readings, each with its own gauge', () => {
    const row = rowsOf('metrology.clearance-uncertainty')[0]!;
    const engine = engineWith([]);
    const by = (instrument: string): Partial<SlotReading> => ({ instrument });
    const [upper, lower] = ['upper', 'lower'].map((half) =>
      reading(`main-shell/main-1/${half}`, text(row, 'wall'), by(half)),
    );
    const readings = readingsOf(
      [
        ...readAll(engine, 'main-housing', 'main-1', text(row, 'housing'), by('bore')),
        ...readAll(engine, 'main-journal', 'main-1', text(row, 'journal'), by('journal')),
        upper!,
        lower!,
      ],
      {
        instruments: [
          gauge('bore', text(row, 'uHousing')),
          gauge('journal', text(row, 'uJournal')),
          gauge('upper', text(row, 'uWall')),
          gauge('lower', text(row, 'uWall')),
        ],
      },
    );
    const size = assess(engine, readings, EXACT).sizes.get('main-bearing.clearance@main-1');
    expectFigure(row, 'clearance', size?.value);
    expectFigure(row, 'uncertainty', size?.u);
  });

  it('one micrometer for both walls: its setting counts twice, and does not add in squares', () => {
    const engine = engineWith([]);
    const walls = readAll(engine, 'main-shell', 'main-1', '2.430 mm', { instrument: 'wall' });
    const rest = [
      ...readAll(engine, 'main-housing', 'main-1', '68.350 mm', exact),
      ...readAll(engine, 'main-journal', 'main-1', '63.440 mm', exact),
    ];
    const readings = readingsOf([...walls, ...rest], { instruments: [EXACT_GAUGE, gauge('wall', '0.001 mm')] });
    expect(assess(engine, readings, EXACT).sizes.get('main-bearing.clearance@main-1')?.u).toBeCloseTo(2e-6, 12);
  });

  it('O-31 chance that a clearance is inside', () => {
    const row = rowsOf('metrology.conformance').find((one) => one.case === 'O-31 a clearance')!;
    const engine = float(window(text(row, 'low'), text(row, 'high')));
    const taken = reading(slot, text(row, 'value'), { instrument: 'dial' });
    const { findings } = assess(
      engine,
      readingsOf([taken], { instruments: [gauge('dial', text(row, 'uncertainty'))] }),
      EXACT,
    );
    const inside = findingIn(findings, 'crank-end-float.float@crankshaft').held[0]?.inside ?? Number.NaN;
    expect(Math.abs(inside - 0.8944)).toBeLessThan(0.00005);
  });

  const guarded = rowsOf('metrology.verdict').filter(
    (row) =>
      row.inputs.rule === 'guarded' &&
      has(row, 'readings') &&
      list(row, 'readings').length === 1 &&
      has(row, 'expanded'),
  );
  for (const row of guarded)
    it(`${row.case}`, () => {
      const engine = float(
        window(has(row, 'low') ? text(row, 'low') : undefined, has(row, 'high') ? text(row, 'high') : undefined),
      );
      const taken = reading(slot, list(row, 'readings')[0]!, { instrument: 'dial' });
      const u = `${si(text(row, 'expanded')) * 500} mm`;
      const habits = { ...EXACT, guardFactor: Number(row.inputs.guardFactor ?? 1) };
      const { findings } = assess(engine, readingsOf([taken], { instruments: [gauge('dial', u)] }), habits);
      expect(findingIn(findings, 'crank-end-float.float@crankshaft').verdict).toBe(row.expected?.verdict);
    });
});

describe('end float and wear (O-45, O-02)', () => {
  for (const row of rowsOf('bearings.end-float'))
    it(row.case, () => {
      const limits = `property: crank-end-float.float, whenNew: "${window(text(row, 'newLow'), text(row, 'newHigh'))}", wear: "<= ${text(row, 'discard')}"`;
      const engine = engineWith([limits]);
      const one = finding(
        engine,
        [reading('crank-end-float/crankshaft/float', text(row, 'measured'), exact)],
        'crank-end-float.float@crankshaft',
      );
      const usable = row.expected?.verdict === 'usable, note it';
      expect([one.verdict, one.words]).toEqual(usable ? ['in', 'worn, usable'] : ['out', 'past the wear limit']);
    });

  it('O-02 a bore past its wear limit at its top, though its mean is inside', () => {
    const engine = engineWith(['property: cylinder-bore.diameter, whenNew: "98.000..98.030 mm", wear: "<= 98.130 mm"']);
    const one = finding(
      engine,
      readAll(
        engine,
        'cylinder-bore',
        '1',
        ['98.131 mm', '98.120 mm', '98.10 mm', '98.10 mm', '98.05 mm', '98.05 mm'],
        exact,
      ),
      'cylinder-bore.diameter@1',
    );
    expect([one.verdict, one.words]).toEqual(['out', 'past the wear limit']);
  });
});

describe('liners (O-39)', () => {
  const rows = rowsOf('metrology.liner-protrusion');
  for (const row of rows.filter((one) => has(one, 'stepLimit')))
    it(`${row.case}, by the steps between neighbours`, () => {
      const engine = engineWith(
        [`property: liner-protrusion.neighbours, whenNew: "<= ${text(row, 'stepLimit')}"`],
        'crankTrain: { wetLiners: true }\n',
      );
      const heights = list(row, 'protrusions');
      const taken = ['1', '2', '3', '4'].flatMap((place, at) =>
        readAll(engine, 'liner-protrusion', place, heights[at] ?? heights[heights.length - 1]!, exact),
      );
      const one = finding(engine, taken, 'liner-protrusion.neighbours@all');
      expect(one.verdict).toBe(row.expected?.stepVerdict ?? row.expected?.verdict);
      expectFigure(row, 'largestStep', one.size?.value);
    });
  for (const row of rows.filter((one) => has(one, 'pointsPerLiner')))
    it(`${row.case}: mean of the points`, () => {
      const engine = engineWith(
        [`property: liner-protrusion.height, whenNew: "${window(text(row, 'low'), text(row, 'high'))}"`],
        'crankTrain: { wetLiners: true }\n',
      );
      const one = finding(
        engine,
        readAll(engine, 'liner-protrusion', '1', list(row, 'protrusions'), exact),
        'liner-protrusion.height@1',
      );
      expect(one.verdict).toBe(row.expected?.heightVerdict);
    });
});
