import { describe, expect, it } from 'vitest';
import { engineOf, read } from '../../engine/load/try-sheets.suite.js';
import { grams } from '../../quantity/index.js';
import { alternativeOf, assessed, decisionOf, figureOf, four } from './bench.suite.js';
import { decisionsOf } from './index.js';
import { CLOCK_PATTERNS, fromThrust, ringClock } from './ring-clock.js';

const V8 = engineOf(read('sheets/quernside-51-v8.yaml'));
const FOUR = engineOf(read('sheets/pellgarth-t4-twin-cam.yaml'));

describe('masses', () => {
  /** Worked row of the catalogue (balance.weight-match): 583.9, 585.1, 584.2 g lose 0, 1.2, 0.3 g. */
  const engine = four(`crankTrain: { bore: 90 mm, stroke: 90 mm }\nmachining: { massMatch: 0.4 g }\n`);
  const sizes = {
    'piston-mass/1': grams(583.9),
    'piston-mass/2': grams(585.1),
    'piston-mass/3': grams(584.2),
    'piston-mass/4': grams(583.9),
  };
  it('come down to the lightest, from each what it weighs more', () => {
    const decision = decisionOf(assessed(engine, sizes), 'mass-match', 'piston-mass');
    const lighten = alternativeOf(decision, 'lighten');
    expect(lighten.figures).toEqual([
      { name: 'cylinder 2', text: 'take off 1.2 g' },
      { name: 'cylinder 3', text: 'take off 0.3 g' },
    ]);
    expect(lighten.orders[0]).toMatchObject({ measured: 'mass', property: 'piston-mass.mass' });
    expect(alternativeOf(decision, 'leave').verdict).toBe('out');
  });
  it('are held to the narrower of what the sheet prints and what the shop balances to', () => {
    // Quernside prints 4 g in one set of pistons and matches to 2 g.
    const apart = { 'piston-mass': grams(600), 'piston-mass/2': grams(603) };
    const decision = decisionOf(assessed(V8, apart), 'mass-match', 'piston-mass');
    expect(decision.proof).toContain('2.0 g');
    expect(alternativeOf(decision, 'leave').verdict).toBe('out');
    // Tollbarrow matches to 5 g where 10 g are printed.
    const six = engineOf(read('sheets/tollbarrow-6w-diesel-six.yaml'));
    const allowed = decisionOf(
      assessed(six, { 'piston-mass': grams(900), 'piston-mass/2': grams(904) }),
      'mass-match',
      'piston-mass',
    );
    expect(allowed.proof).toContain('5.0 g');
    expect(allowed.recommended).toBe('leave');
  });
  it('need no metal where pins make them alike: 500 + 101 and 502 + 99 are both 601 g', () => {
    const set = {
      'piston-mass': grams(500),
      'piston-mass/2': grams(502),
      'pin-mass': grams(101),
      'pin-mass/2': grams(101),
      'pin-mass/3': grams(99),
    };
    const decision = decisionOf(assessed(engine, set), 'mass-match', 'piston-mass');
    expect(alternativeOf(decision, 'pair').words).toContain('0.0 g apart');
    expect(figureOf(decision, 'pair', 'cylinder 2')).toBe('pin of cylinder 3: together 601.0 g');
  });
});

describe('bolts in blind holes', () => {
  const DEPTH = { 'bolt-hole-depth': '50 mm' };
  it('have thread and room: 131 mm through 95 mm reaches 36 mm into 50 mm', () => {
    const decision = decisionOf(assessed(FOUR, DEPTH), 'bolt-depth', 'head');
    expect(figureOf(decision, 'as-they-are', 'hole 1')).toBe('36.000 mm of thread, 14.000 mm of room');
    expect(decision.recommended).toBe('as-they-are');
    expect(alternativeOf(decision, 'as-they-are').verdict).toBe('in');
  });
  it('that would bottom in one hole are out, and the lengths that fit are said', () => {
    const decision = decisionOf(assessed(FOUR, { ...DEPTH, 'bolt-hole-depth/head-4': '35 mm' }), 'bolt-depth', 'head');
    expect(figureOf(decision, 'as-they-are', 'hole 4')).toContain('bottoms 1.000 mm early');
    // Shallowest hole: 95 + 35 − 1.5 · 1.5 = 127.75; least thread 95 + 10 = 105.
    expect(figureOf(decision, 'other-bolts', 'main head bolt')).toBe('105.000..127.750 mm');
  });
  it('wait for the depths', () => {
    expect(decisionOf(assessed(FOUR, {}), 'bolt-depth', 'head').missing[0]).toMatch(
      /^depth of \d+ blind holes: measure it$/,
    );
  });
});

describe('bolts used again up to a length', () => {
  // Quernside: rod bolts of 52.4 mm, at most 52.55 mm for another use.
  const rodBolts = (more: Record<string, string> = {}) =>
    decisionOf(assessed(V8, { 'bolt-length': '52.45 mm', ...more }), 'bolt-reuse', 'rods');
  it('stay where every one is surely shorter than its maker allows', () => {
    const decision = rodBolts();
    expect(decision.recommended).toBe('use-again');
    expect(alternativeOf(decision, 'use-again')).toMatchObject({ verdict: 'in', buys: [] });
  });
  it('that have grown are renewed, and so is one that may have by the doubt of the gauge', () => {
    const decision = rodBolts({ 'bolt-length/rods-1': '52.70 mm', 'bolt-length/rods-2': '52.549 mm' });
    expect(decision.recommended).toBe('renew-grown');
    expect(alternativeOf(decision, 'renew-grown').words).toBe('Renew 2 bolts: hole 1 and hole 2');
    expect(alternativeOf(decision, 'renew-grown').buys).toEqual([
      { part: 'connecting rod bolt', size: 'M9x1', count: 2, for: 'connecting rod bolts' },
    ]);
    expect(alternativeOf(decision, 'use-again').verdict).toBe('out');
    expect(alternativeOf(decision, 'renew-all').buys[0]?.count).toBe(16);
  });
  it('wait for the lengths', () => {
    expect(decisionOf(assessed(V8, {}), 'bolt-reuse', 'rods').missing[0]).toMatch(/^length of \d+ bolts: measure it$/);
  });
});

describe('the ledger of parts used again', () => {
  it('has a line for a part past its limit, with repair and renewal before use', () => {
    const decision = decisionOf(assessed(V8, { 'crank-runout': '0.12 mm' }), 'reuse');
    expect(decision.alternatives[0]?.id).toBe('repair');
    expect(alternativeOf(decision, 'use-again').verdict).toBe('out');
    expect(decision.cautions.join(' ')).toContain('Who decides signs');
  });
  it('has none where everything read is in, and none for what another decision settles', () => {
    const reused = (sizes: Parameters<typeof assessed>[1]) =>
      decisionsOf(assessed(V8, sizes)).filter(({ id }) => id === 'reuse');
    expect(reused({ 'crank-runout': '0.01 mm' })).toEqual([]);
    expect(reused({ 'cylinder-bore': '99.5 mm' })).toEqual([]);
  });
});

describe('ring gaps round the piston', () => {
  it('stay off the thrust faces by at least a twelfth of a turn', () => {
    for (const pattern of CLOCK_PATTERNS) expect(fromThrust(pattern)).toBeGreaterThanOrEqual(30);
  });
  it('keep top and second gap far apart', () => {
    for (const { angles } of CLOCK_PATTERNS) {
      const at = (ring: string) => angles.find((one) => one.ring === ring)?.angle ?? 0;
      expect(Math.abs(((at('top') - at('second') + 540) % 360) - 180)).toBeGreaterThanOrEqual(120);
    }
  });
  it('see the thrust side on the valley side of the driver’s left bank when the crankshaft turns clockwise', () => {
    // The crankpin goes right seen from the front; the rod leans after it and presses the piston to the left, the driver's right.
    expect(ringClock(V8, 'left')).toMatchObject({ thrustSide: 'left', thrustAngle: 90, thrustName: 'valley side' });
    expect(ringClock(V8, 'right').thrustName).toBe('outer side');
  });
  it('turn the large chamfers of two rods on one crankpin away from each other', () => {
    const facing = [...ringClock(V8, 'left').rods, ...ringClock(V8, 'right').rods];
    const of = (cylinder: number) => facing.find((one) => one.cylinder === cylinder)?.chamfer;
    for (const [one, other] of [
      [1, 2],
      [3, 4],
      [5, 6],
      [7, 8],
    ] as const)
      expect(new Set([of(one), of(other)])).toEqual(new Set(['front', 'rear']));
  });
  it('know no mate on an inline engine', () => {
    expect(ringClock(FOUR, FOUR.layout.banks[0]?.id ?? '').rods.every(({ chamfer }) => chamfer === 'both')).toBe(true);
  });
});
