import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { engineOf, read } from '../../engine/load/try-sheets.suite.js';
import { inch, mm } from '../../quantity/index.js';
import { alternativeOf, assessed, decisionOf, figureOf, four } from './bench.suite.js';

/** Reference row O-03: bore 4.0000 in worn to 4.0065 at the top in thrust direction, 0.0030 in clean-up, oversizes on the shelf. */
const OVERSIZES = ['0.010', '0.020', '0.030', '0.040', '0.060'];
const shelf = (oversizes: readonly string[], more = '') =>
  `stock:\n  pistons:\n${['standard', ...oversizes.map((one) => `${one} in`)]
    .map((one, at) => `    - { id: p${at}, name: piston, oversize: ${one}${more} }\n`)
    .join('')}`;
const O3 = (oversizes = OVERSIZES, more = '') =>
  four(`crankTrain: { bore: 4.0000 in, stroke: 3.5 in }
limits:
  - { part: cylinder bore, what: diameter, whenNew: 4.0000 in, wear: "<= 4.0050 in" }
  - { part: piston, what: clearance, whenNew: 0.0015..0.0025 in }
machining: { boreCleanUp: 0.0030 in }
${shelf(oversizes, more)}`);
const WORN = { 'top-thrust': '4.0065 in', rest: '4.0000 in' };

describe('the smallest oversize that cleans up every bore', () => {
  it('is +0.010 in where the bar may follow the wear, with 0.0005 in to spare (O-03 a)', () => {
    const decision = decisionOf(assessed(O3(), { 'cylinder-bore': WORN }), 'bore-oversize');
    expect(decision.missing).toEqual([]);
    expect(decision.recommended).toBe('bore-254');
    expect(figureOf(decision, 'bore-254', 'Left at the worst bore')).toMatch(/^0\.000(50|5) .*in, cylinder/);
    const [order] = alternativeOf(decision, 'bore-254').orders;
    expect(order?.notes.join(' ')).toContain('Centre the bar on the worn bore at cylinders 1, 2, 3 and 4');
  });

  it('needs +0.020 in on the old axis, and says how much +0.010 is short there (O-03 b)', () => {
    const decision = decisionOf(assessed(O3(), { 'cylinder-bore': WORN }), 'bore-oversize');
    expect(figureOf(decision, 'bore-254', 'Bar on the old axis')).toContain('0.0060 in short');
    expect(figureOf(decision, 'bore-508', 'Bar on the old axis')).toBe('cleans up too, 0.0040 in left');
  });

  it('is decided by the worst bore of all, and by what exists', () => {
    const sizes = { 'cylinder-bore': '4.0010 in', 'cylinder-bore/3': { 'top-thrust': '4.0075 in', rest: '4.0000 in' } };
    const decision = decisionOf(assessed(O3(['0.010', '0.030']), sizes), 'bore-oversize');
    expect(decision.recommended).toBe('bore-762');
    expect(alternativeOf(decision, 'bore-254').against).toEqual(['cylinder 3 does not clean up: 0.0005 in short.']);
    expect(decision.proof).toContain('+0.0100 in: cylinder 3 does not clean up');
  });

  it('counts from the size to which the engine was bored before', () => {
    const decision = decisionOf(
      assessed(O3(), { 'cylinder-bore': { 'top-thrust': '4.0265 in', rest: '4.0200 in' } }),
      'bore-oversize',
    );
    expect(decision.recommended).toBe('bore-762');
    expect(figureOf(decision, 'bore-762', 'Bar on the old axis')).toContain('0.0060 in short');
  });

  it('is only near when the readings cannot tell, and the next size comes first', () => {
    const worn = { 'top-thrust': '4.00698 in', rest: '4.0000 in' };
    const decision = decisionOf(assessed(O3(), { 'cylinder-bore': worn }), 'bore-oversize');
    expect(alternativeOf(decision, 'bore-254')).toMatchObject({ verdict: 'near', possible: true });
    expect(decision.recommended).toBe('bore-508');
    expect(decision.proof).toContain('below 95 %');
  });

  it('never grows when one more oversize can be had, and is the first of the list that reaches', () => {
    const wear = fc.integer({ min: 0, max: 500 });
    fc.assert(
      fc.property(
        wear,
        fc.subarray(OVERSIZES, { minLength: 1 }),
        fc.constantFrom(...OVERSIZES),
        (tenths, some, more) => {
          const worn = { 'top-thrust': inch(4.0055 + tenths / 10_000), rest: inch(4) };
          const chosen = (list: readonly string[]) => {
            const sorted = [...new Set(list)].sort();
            const { recommended } = decisionOf(assessed(O3(sorted), { 'cylinder-bore': worn }), 'bore-oversize');
            return recommended === undefined ? Number.POSITIVE_INFINITY : Number(recommended.slice(5));
          };
          const before = chosen(some);
          expect(chosen([...some, more])).toBeLessThanOrEqual(before);
          // By hand: D0 + oversize - 0.003 in must be over the largest reading by about its uncertainty, 0.00025 in.
          const need = 0.0055 + tenths / 10_000 + 0.003;
          const sure = some.map(Number).filter((one) => one > need + 0.0003);
          const reach = some.map(Number).filter((one) => one >= need - 1e-9);
          if (sure.length > 0) expect(before).toBeLessThanOrEqual(Math.round(Math.min(...sure) * 25_400));
          expect(before).toBeGreaterThanOrEqual(Math.round(Math.min(Number.POSITIVE_INFINITY, ...reach) * 25_400));
        },
      ),
      { numRuns: 25 },
    );
  });

  it('is the same in inches and in millimetres', () => {
    const found = assessed(O3(), { 'cylinder-bore': WORN });
    const [a, b] = [decisionOf(found, 'bore-oversize', 'all', 'in'), decisionOf(found, 'bore-oversize', 'all', 'mm')];
    expect(b.recommended).toBe(a.recommended);
    expect(b.alternatives.map(({ orders }) => orders.map(({ targets }) => targets))).toEqual(
      a.alternatives.map(({ orders }) => orders.map(({ targets }) => targets)),
    );
    expect(figureOf(b, 'bore-508', 'Bar on the old axis')).toBe('cleans up too, 0.102 mm left');
  });
});

describe('the order for the bores', () => {
  /** Reference row O-04: skirt 80.480 mm measured, clearance 0.025 to 0.045, hone allowance 0.02: bore to 80.495, hone to 80.515. */
  const O4 = four(`crankTrain: { bore: 80.000 mm, stroke: 88 mm }
limits:
  - { part: piston, what: clearance, whenNew: 0.025..0.045 mm }
machining: { honeAllowance: 0.02 mm, boreFinish: "400 grit", torquePlate: "40 mm plate" }
stock:
  pistons:
    - { id: a, name: piston, oversize: standard }
    - { id: b, name: piston, partNumber: P-50, oversize: 0.50 mm, skirt: 80.465..80.495 mm }
  rings: [{ id: r, name: top ring, ring: top, oversize: 0.50 mm }]
`);
  const worn = { 'top-thrust': '80.100 mm', rest: '80.010 mm' };

  it('fits each bore to the measured piston that will run in it (O-04)', () => {
    const sizes = { 'cylinder-bore': worn, 'piston-skirt': '80.480 mm', 'piston-skirt/2': '80.490 mm' };
    const decision = decisionOf(assessed(O4, sizes), 'bore-oversize');
    const { orders, buys } = alternativeOf(decision, 'bore-500');
    const [order] = orders;
    expect(order).toMatchObject({
      id: 'bore/all',
      finish: '400 grit',
      with: '40 mm plate',
      property: 'cylinder-bore.diameter',
    });
    const at = (place: string) => order?.targets?.find((one) => one.place === place);
    expect(at('1')?.window.low).toBeCloseTo(0.080505, 9);
    expect(at('1')?.window.high).toBeCloseTo(0.080525, 9);
    expect(at('2')?.window.low).toBeCloseTo(0.080515, 9);
    expect(at('1')?.fittedTo).toBe('piston of cylinder 1, 80.480 mm');
    expect(order?.notes[0]).toContain('80.495 mm (cylinders 1, 3 and 4); 80.505 mm (cylinder 2)');
    expect(buys.map(({ part }) => part)).toEqual(['top ring']);
  });

  it('asks for the pistons to be measured where no bore suits every skirt that is printed', () => {
    const decision = decisionOf(assessed(O4, { 'cylinder-bore': worn }), 'bore-oversize');
    expect(alternativeOf(decision, 'bore-500')).toMatchObject({ possible: false, verdict: 'no data', orders: [] });
    expect(alternativeOf(decision, 'bore-500').against[0]).toContain('measure the pistons first');
  });

  it('finishes the rear pair larger where the maker does: 4.0079 to 4.0084 in (TM 9-2815-237-34, 289:3-41)', () => {
    const sheet = read('sheets/transcribed/tm9-2815-237-34.yaml');
    const engine = engineOf(`${sheet}
stock:
  pistons:
    - { id: std, name: piston, oversize: standard, skirt: 3.9729..3.9754 in }
    - { id: first, name: piston, oversize: 0.030 in, skirt: 4.0034..4.0039 in }
`);
    const decision = decisionOf(assessed(engine, { 'cylinder-bore': '3.9850 in' }), 'bore-oversize');
    const [order] = alternativeOf(decision, 'bore-762').orders;
    const at = (place: string) => order?.targets?.find((one) => one.place === place)?.window;
    expect([at('7')?.low, at('7')?.high]).toEqual([expect.closeTo(inch(4.0079), 9), expect.closeTo(inch(4.0084), 9)]);
    expect([at('1')?.low, at('1')?.high]).toEqual([expect.closeTo(inch(4.0074), 9), expect.closeTo(inch(4.0079), 9)]);
  });
});

describe('what stands in the way of an oversize', () => {
  const engine = (more: string) =>
    four(`crankTrain: { bore: 100 mm, stroke: 90 mm }
limits:
  - { part: cylinder bore, what: diameter, whenNew: 100.000..100.020 mm, wear: "<= 100.100 mm" }
  - { part: cylinder bore, what: taper, wear: "<= 0.300 mm" }
  - { part: piston, what: clearance, whenNew: 0.030..0.050 mm, wear: "<= 0.120 mm" }
machining: { boreCleanUp: 0.10 mm, honeAllowance: 0.06 mm, leastBoreWall: 4.0 mm }
stock:
  pistons:
    - { id: s, name: piston, oversize: standard, skirt: 99.970..99.975 mm }
    - { id: a, name: piston, oversize: 0.50 mm, skirt: 100.470..100.475 mm${more} }
    - { id: b, name: piston, oversize: 1.00 mm, skirt: 100.970..100.975 mm }
`);
  const worn = { 'top-thrust': '100.20 mm', rest: '100.005 mm' };

  it('is a wall that would become too thin; unmeasured walls are said to be unknown', () => {
    const blind = decisionOf(assessed(engine(''), { 'cylinder-bore': worn }), 'bore-oversize');
    expect(figureOf(blind, 'bore-500', 'Thinnest wall left')).toBe('not known: walls were not measured');
    expect(blind.cautions.join(' ')).toContain('walls were not measured');
    const thin = decisionOf(
      assessed(engine(''), { 'cylinder-bore': worn, 'bore-wall': '4.4 mm', 'bore-wall/2': '3.7 mm' }),
      'bore-oversize',
    );
    expect(alternativeOf(thin, 'bore-500').against).toEqual([expect.stringContaining('thinner than 4.000 mm')]);
  });

  it('is a set that is not complete', () => {
    const decision = decisionOf(assessed(engine(', count: 3'), { 'cylinder-bore': worn }), 'bore-oversize');
    expect(alternativeOf(decision, 'bore-500').against).toEqual([
      'Only 3 pistons of this size can be had; 4 are needed.',
    ]);
    expect(decision.recommended).toBe('bore-1000');
  });

  it('is lacking data: then nothing is offered and what to do is said', () => {
    const partly = decisionOf(assessed(engine(''), { 'cylinder-bore/1': worn }), 'bore-oversize');
    expect(partly).toMatchObject({
      alternatives: [],
      missing: expect.arrayContaining(['bore of cylinder 3: measure it']),
    });
    const bare = decisionOf(assessed(four('crankTrain: { bore: 100 mm, stroke: 90 mm }\n'), {}), 'bore-oversize');
    expect(bare.missing).toEqual([
      'bore: measure all 4 places',
      'pistons: the sheet lists none that can be had (stock, pistons)',
    ]);
    expect(bare.recommended).toBeUndefined();
  });

  it('is nothing where every bore and clearance is inside its limits: the bores are left', () => {
    const decision = decisionOf(
      assessed(engine(''), { 'cylinder-bore': '100.030 mm', 'piston-skirt': '99.972 mm' }),
      'bore-oversize',
    );
    expect(decision.recommended).toBe('as-is');
    expect(alternativeOf(decision, 'as-is')).toMatchObject({ verdict: 'in', orders: [], buys: [] });
  });

  it('is nothing for bores that were bored before and suit their pistons, though past the printed standard size', () => {
    const sizes = { 'cylinder-bore': '100.512 mm', 'piston-skirt': '100.472 mm' };
    const decision = decisionOf(assessed(engine(''), sizes), 'bore-oversize');
    expect(decision.recommended).toBe('as-is');
    expect(alternativeOf(decision, 'as-is').against[0]).toContain('Bored before');
  });

  it('does not call the bores good while a piston is not measured', () => {
    const pistons = { 'piston-skirt/1': '99.972 mm', 'piston-skirt/2': '99.972 mm', 'piston-skirt/3': '99.972 mm' };
    const decision = decisionOf(assessed(engine(''), { 'cylinder-bore': '100.030 mm', ...pistons }), 'bore-oversize');
    expect(alternativeOf(decision, 'as-is')).toMatchObject({ possible: false, verdict: 'no data' });
    expect(alternativeOf(decision, 'as-is').against).toEqual(['piston clearance, cylinder 4: not known.']);
  });

  it('offers to sleeve or bore the one worn bore, and says what speaks against two sizes of piston', () => {
    const sizes = { 'cylinder-bore': '100.010 mm', 'cylinder-bore/2': '100.180 mm', 'piston-skirt': '99.972 mm' };
    const decision = decisionOf(assessed(engine(''), sizes), 'bore-oversize');
    expect(decision.recommended).toBe('bore-500');
    expect(alternativeOf(decision, 'some-500')).toMatchObject({
      possible: true,
      words: 'Bore only cylinder 2 to +0.500 mm',
    });
    expect(alternativeOf(decision, 'some-500').against[0]).toContain('one size in all bores');
    expect(alternativeOf(decision, 'some-500').orders[0]?.places).toEqual(['2']);
    const sleeve = alternativeOf(decision, 'sleeve').orders[0]?.targets?.[0];
    expect(sleeve).toMatchObject({ place: '2', fittedTo: 'piston of cylinder 2, 99.972 mm' });
    expect(sleeve?.window.low).toBeCloseTo(mm(100.002), 9);
  });
});
