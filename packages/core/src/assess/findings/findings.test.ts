import { describe, expect, it } from 'vitest';
import { assess } from '../assess.js';
import { EXACT, EXACT_GAUGE, engineWith, findingIn, readAll, reading, readingsOf, si } from '../assess.suite.js';
import type { Instrument, SlotReading } from '../model.js';
import { USUAL_HABITS } from '../sizes/index.js';

const exact: Partial<SlotReading> = { instrument: 'exact' };
const gauges = { instruments: [EXACT_GAUGE] };

describe('parts and their clearance', () => {
  // Invented: each part may wear by 0.05 mm, the clearance may open to 0.08 mm.
  const engine = engineWith([
    'property: cylinder-bore.diameter, whenNew: "90.000..90.010 mm", wear: { changeFromNew: 0.05 mm }',
    'property: piston-skirt.diameter, whenNew: "89.960..89.970 mm", wear: { changeFromNew: 0.05 mm }',
    'property: piston.clearance, whenNew: "0.030..0.050 mm", wear: { clearance: <= 0.080 mm }',
  ]);
  const of = (bore: string, skirt: string) => {
    const taken = [
      ...readAll(engine, 'cylinder-bore', '2', bore, exact),
      ...readAll(engine, 'piston-skirt', '2', skirt, exact),
    ];
    const { findings } = assess(engine, readingsOf(taken, gauges), EXACT);
    return ['cylinder-bore.diameter@2', 'piston-skirt.diameter@2', 'piston.clearance@2'].map((key) => {
      const { verdict, words } = findingIn(findings, key);
      return [verdict, words];
    });
  };

  it('shows the clearance out although bore and piston are each within their wear limit', () => {
    expect(of('90.050 mm', '89.930 mm')).toEqual([
      ['in', 'worn, usable'],
      ['in', 'worn, usable'],
      ['out', 'past the wear limit'],
    ]);
  });

  it('shows a bore past its own limit although an oversize piston makes the clearance good', () => {
    expect(of('90.070 mm', '90.030 mm')).toEqual([
      ['out', 'past the wear limit'],
      ['out', 'outside the new range'],
      ['in', 'as new'],
    ]);
  });

  it('calls a clearance below the smallest new one out, though no wear limit is passed', () => {
    expect(of('90.000 mm', '89.985 mm')[2]).toEqual(['out', 'outside the new range']);
  });
});

describe('the three forms of a wear limit', () => {
  const journal = (wear: string) =>
    engineWith([`property: main-journal.diameter, whenNew: "59.980..60.000 mm", wear: ${wear}`]);
  const verdict = (wear: string, size: string) => {
    const engine = journal(wear);
    return findingIn(
      assess(engine, readingsOf(readAll(engine, 'main-journal', 'main-1', size, exact), gauges), EXACT).findings,
      'main-journal.diameter@main-1',
    );
  };

  it('counts a change from new from the end of the new range at which wear begins', () => {
    expect(verdict('{ changeFromNew: 0.030 mm }', '59.950 mm').verdict).toBe('in');
    expect(verdict('{ changeFromNew: 0.030 mm }', '59.949 mm').verdict).toBe('out');
  });
  it('takes an absolute limit as printed', () => {
    expect(verdict('">= 59.960 mm"', '59.960 mm')).toMatchObject({ verdict: 'in', words: 'worn, usable' });
    expect(verdict('">= 59.960 mm"', '59.959 mm')).toMatchObject({ verdict: 'out', words: 'past the wear limit' });
  });
  it('judges an oval journal by its smallest diameter, not by the mean', () => {
    const engine = journal('">= 59.960 mm"');
    const taken = readAll(
      engine,
      'main-journal',
      'main-1',
      ['59.975 mm', '59.958 mm', '59.975 mm', '59.975 mm'],
      exact,
    );
    const { findings } = assess(engine, readingsOf(taken, gauges), EXACT);
    expect(findingIn(findings, 'main-journal.diameter@main-1').verdict).toBe('out');
  });
});

describe('a part of unknown grade', () => {
  // Invented: bores A and B touch, C lies apart; pistons go by the grade of the bore.
  const engine = engineWith([
    'property: cylinder-bore.diameter, whenNew: "90.000..90.010 mm", scope: { grade: A }, wear: { changeFromNew: 0.050 mm }',
    'property: cylinder-bore.diameter, whenNew: "90.010..90.020 mm", scope: { grade: B }, wear: { changeFromNew: 0.050 mm }',
    'property: cylinder-bore.diameter, whenNew: "90.250..90.260 mm", scope: { grade: C }, wear: { changeFromNew: 0.050 mm }',
  ]);
  const bore = (size: string | readonly string[], more: Partial<SlotReading> = exact, habits = EXACT) =>
    findingIn(
      assess(engine, readingsOf(readAll(engine, 'cylinder-bore', '1', size, more), gauges), habits).findings,
      'cylinder-bore.diameter@1',
    );

  it('must fit one of the grades, not the first one; the words say which', () => {
    expect(bore('90.005 mm')).toMatchObject({ verdict: 'in', words: 'as new, grade A' });
    expect(bore('90.015 mm')).toMatchObject({ verdict: 'in', words: 'as new, grade B' });
    expect(bore('90.255 mm')).toMatchObject({ verdict: 'in', words: 'as new, grade C' });
  });
  it('is as new at the end that two grades share, and may be of either', () => {
    expect(bore('90.010 mm')).toMatchObject({ verdict: 'in', words: 'as new, grade A or B' });
    const doubtful = bore('90.0105 mm', {}, USUAL_HABITS);
    expect(doubtful.words).toMatch(/grade A or B/);
  });
  it('is worn from the nearest grade, and past its limit beyond what that one may wear', () => {
    // 90.020 + 0.050 and 90.260 + 0.050
    expect(bore('90.060 mm')).toMatchObject({ verdict: 'in', words: 'worn, usable, nearest grade B' });
    expect(bore('90.080 mm')).toMatchObject({ verdict: 'out', words: 'past the wear limit, nearest grade B' });
    expect(bore('90.300 mm')).toMatchObject({ verdict: 'in', words: 'worn, usable, nearest grade C' });
  });
  it('is in no grade where it lies between two that do not touch', () => {
    const held = bore('90.100 mm').held.find(({ against }) => against === 'new');
    expect(held).toMatchObject({ verdict: 'out', window: { low: 0.09, high: expect.closeTo(0.09002, 9) } });
  });
});

describe('what is not known', () => {
  const engine = engineWith(['property: cylinder-bore.taper, whenNew: "<= 0.010 mm"']);

  it('is no data, and never in', () => {
    const { findings, sizes } = assess(engine, readingsOf([]));
    expect(sizes.size).toBe(0);
    expect(new Set(findings.map(({ verdict }) => verdict))).toEqual(new Set(['no data']));
    expect(findingIn(findings, 'cylinder-bore.diameter@1')).toMatchObject({ words: 'not read', held: [] });
  });
  it('says how much is read and what is missing', () => {
    const taken = reading('cylinder-bore/1/top-thrust', '90.001 mm');
    const one = findingIn(assess(engine, readingsOf([taken])).findings, 'cylinder-bore.diameter@1');
    expect(one.words).toBe('1 of 6 read');
    expect(one.missing).toHaveLength(5);
    expect(one.missing).not.toContain(taken.slot);
  });
  it('forms a taper by its ends before the middle is read', () => {
    const ends = ['top-thrust', 'top-axial', 'bottom-thrust', 'bottom-axial'].map((station) =>
      reading(`cylinder-bore/1/${station}`, station.startsWith('top') ? '90.008 mm' : '90.001 mm', exact),
    );
    const { sizes } = assess(engine, readingsOf(ends, gauges), EXACT);
    expect(sizes.get('cylinder-bore.taper@1')?.value).toBeCloseTo(7e-6, 12);
    expect(sizes.has('cylinder-bore.diameter@1')).toBe(false);
  });
  it('says what is missing of the way that is nearest to whole', () => {
    const taken = [
      ...readAll(engine, 'main-housing', 'main-1', '64.000 mm'),
      ...readAll(engine, 'main-journal', 'main-1', '59.960 mm'),
    ];
    const one = findingIn(assess(engine, readingsOf(taken)).findings, 'main-bearing.clearance@main-1');
    expect(one.missing).toEqual(['main-shell/main-1/upper', 'main-shell/main-1/lower']);
  });
  it('gives no verdict where no limit is printed, and offers the general rule as advice only', () => {
    const taken = readAll(engine, 'valve-stem', '1-intake-1', '7.960 mm', exact);
    const without = findingIn(
      assess(engine, readingsOf(taken, gauges), EXACT).findings,
      'valve-stem.diameter@1-intake-1',
    );
    expect(without).toMatchObject({ verdict: 'no data', words: 'no limit printed' });
    const stated = engineWith(['property: valve-stem.diameter, whenNew: "7.970..7.985 mm"']);
    const worn = findingIn(assess(stated, readingsOf(taken, gauges), EXACT).findings, 'valve-stem.diameter@1-intake-1');
    // Trade map O07 [R65]: a stem may wear 0.001 in = 0.0254 mm; it has worn 0.010 mm below the smallest new one.
    expect(worn).toMatchObject({ verdict: 'out', advice: { source: 'general-wear' } });
    expect(worn.words).toBe('outside the new range; within a general wear rule of one military manual, as advice');
  });
});

describe('which reading to take again', () => {
  const engine = engineWith(['property: main-bearing.clearance, whenNew: "0.024..0.062 mm"']);
  const gauge = (id: string, mm: number): Instrument => ({ ...EXACT_GAUGE, id, name: id, resolution: mm / 1000 });
  const instruments = [gauge('fine', 0.001), gauge('coarse', 0.02)];
  const taken = (coarse: string, journal = '59.9375 mm') => [
    ...readAll(engine, 'main-housing', 'main-1', '63.9600 mm', { instrument: 'fine' }),
    ...readAll(engine, 'main-journal', 'main-1', journal, { instrument: 'fine' }),
    ...['upper', 'lower'].map((half) =>
      reading(`main-shell/main-1/${half}`, '1.9990 mm', { instrument: half === coarse ? 'coarse' : 'fine' }),
    ),
  ];
  const found = (readings: readonly SlotReading[], gauges_: readonly Instrument[] = instruments) =>
    findingIn(
      assess(engine, readingsOf(readings, { instruments: gauges_ }), EXACT).findings,
      'main-bearing.clearance@main-1',
    );

  it('is the one whose doubt, taken away, lowers that of the clearance most', () => {
    const one = found(taken('lower'));
    expect(one.verdict).toBe('near');
    expect(one.again?.key).toBe('main-shell/main-1/lower');
    const { u = 0, parts } = one.size!;
    const without = (key: string) =>
      Math.sqrt(
        Math.max(
          0,
          u ** 2 -
            parts.reduce((sum, part) => sum + (part.key === key ? (part.sensitivity * (part.u ?? 0)) ** 2 : 0), 0),
        ),
      );
    const keys = parts.map(({ key }) => key);
    expect(keys.toSorted((a, b) => without(a) - without(b))[0]).toBe(one.again?.key);
    const fine = found(taken('none'));
    expect(fine.size!.u).toBeLessThan(u);
    expect(one.again!.share).toBeCloseTo(1 - (without(one.again!.key) / u) ** 2, 9);
  });
  it('is the slot whose repeats disagree', () => {
    const again = [
      ...taken('none'),
      reading('main-housing/main-1/front-vertical', '63.9900 mm', { instrument: 'fine' }),
    ];
    const one = found(again);
    expect([one.verdict, one.words, one.again?.key]).toEqual([
      'check again',
      'readings disagree',
      'main-housing/main-1/front-vertical',
    ]);
  });
  it('is not asked of a verdict that is sure', () => {
    expect(found(taken('none', '59.9200 mm')).again).toBeUndefined();
  });
});

describe('sizes of parts together', () => {
  it('takes the crankpin of the cylinder', () => {
    const engine = engineWith([]);
    const taken = [
      ...readAll(engine, 'rod-bearing-bore', '3', '52.050 mm', exact),
      ...readAll(engine, 'crankpin', 'crankpin-3', '52.000 mm', exact),
    ];
    const { sizes } = assess(engine, readingsOf(taken, gauges), EXACT);
    expect(sizes.get('rod-bearing.clearance@3')?.value).toBeCloseTo(si('0.050 mm'), 12);
  });
  it('prefers the bore with its shells in to housing and walls, and shows its working', () => {
    const engine = engineWith([]);
    const taken = [
      ...readAll(engine, 'main-bearing-bore', 'main-1', '60.040 mm', exact),
      ...readAll(engine, 'main-housing', 'main-1', '64.000 mm', exact),
      ...readAll(engine, 'main-shell', 'main-1', '1.990 mm', exact),
      ...readAll(engine, 'main-journal', 'main-1', ['59.990 mm', '60.000 mm', '59.990 mm', '59.990 mm'], exact),
    ];
    const size = assess(engine, readingsOf(taken, gauges), EXACT).sizes.get('main-bearing.clearance@main-1')!;
    expect(size.value).toBeCloseTo(si('0.040 mm'), 12);
    expect(size.working.join('\n')).toContain('main journal of main 1, front, at right angles: 60.000 mm');
    expect(size.working.at(-1)).toBe(
      'main bearing clearance, main 1 = bore with its shells in, less journal at its largest: 0.040000 mm (k = 2)',
    );
  });
});

describe('the figure of the hole that a maker names for a clearance', () => {
  // Tapered by 0.012 mm: 90.010 at the top, 90.004 in the middle, 89.998 at the bottom; the piston 89.960.
  const clearance = (rule: string) => {
    const engine = engineWith([`property: piston.clearance, whenNew: "0.030..0.046 mm"${rule}`]);
    const bore = ['90.010 mm', '90.010 mm', '90.004 mm', '90.004 mm', '89.998 mm', '89.998 mm'];
    const taken = [
      ...readAll(engine, 'cylinder-bore', '1', bore, exact),
      ...readAll(engine, 'piston-skirt', '1', '89.960 mm', exact),
    ];
    return findingIn(assess(engine, readingsOf(taken, gauges), EXACT).findings, 'piston.clearance@1');
  };
  it.each([
    ['', 0.038, 'in', 'bore at its smallest less piston'],
    [', rule: smallest', 0.038, 'in', 'bore at its smallest less piston'],
    [', rule: mean', 0.044, 'in', 'mean bore less piston'],
    [', rule: largest', 0.05, 'out', 'bore at its largest less piston'],
  ])('%s: %s mm, %s', (rule, mm, verdict, formula) => {
    const found = clearance(rule);
    expect(found.size?.value).toBeCloseTo(mm / 1000, 9);
    expect(found.verdict).toBe(verdict);
    expect(found.size?.working.at(-1)).toContain(formula);
  });
});
