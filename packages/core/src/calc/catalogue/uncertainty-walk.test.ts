/** Every entry of the catalogue with a doubt on each quantity of its example: derivatives against random draws. */
import { describe, expect, it } from 'vitest';
import { parseQuantity, toUnit } from '../../quantity/index.js';
import { type Calculation, catalogue, describeCalcFault, type OutputUncertainty, runCalculation } from '../index.js';
import type { Text } from './calculation.js';
import { isQuantity, type QuantityInput } from './spec.js';

/** Small enough that every smooth formula is straight over it. */
const RELATIVE = 1e-5;
const TRIALS = 400;
/** Five standard deviations of the spread of a sample: one in two million by chance. */
const SAMPLING = 5 / Math.sqrt(2 * TRIALS);

/**
 * Outputs that are not smooth at the figures of their example, so that a derivative cannot be compared with draws there.
 * Each has its reason.
 */
const NOT_SMOOTH: readonly { readonly because: string; readonly places: readonly string[] }[] = [
  {
    because:
      'Largest of readings, or largest less smallest, where several are alike: which one it is changes with the draw.',
    places: [
      'bearings.housing-form outOfRound',
      'bearings.housing-form smallest',
      'bearings.journal-form smallest',
      'bearings.journal-form outOfRound',
      'metrology.circle-fit minimumZone',
      'metrology.circle-fit outOfRound',
      'metrology.gauge-study meanRanges',
      'metrology.gauge-study-of-numbers meanRanges',
      'metrology.round-trace minimumZone',
      'metrology.round-trace outOfRound',
      'metrology.runout form',
      'metrology.runout highSide',
      'metrology.runout share',
      'selection.extra-part spread',
      'selection.extra-part worst',
      'selection.mass-pairs spread',
      'selection.parts-to-places spread',
      'selection.parts-to-places worst',
      'selection.table-assignment greatest',
    ],
  },
  {
    because: 'Middle of a row with alike values, and distances from it.',
    places: [
      'metrology.outlier-robust medianDistance',
      'metrology.outlier-robust robustDeviation',
      'metrology.outlier-robust scores',
      'metrology.outlier-robust-of-numbers medianDistance',
      'metrology.outlier-robust-of-numbers robustDeviation',
      'metrology.outlier-robust-of-numbers scores',
      'metrology.repeats median',
      'metrology.repeats medianDistance',
      'metrology.repeats-of-numbers median',
      'metrology.repeats-of-numbers medianDistance',
    ],
  },
  {
    because: 'Length of a vector, or a spread, that is 0 in the example, and the direction of such a vector.',
    places: [
      'balance.balance-shafts primaryAhead',
      'balance.balance-shafts primaryBack',
      'balance.balance-shafts primaryCoupleAhead',
      'balance.balance-shafts primaryCoupleBack',
      'balance.balance-shafts primaryShaft',
      'balance.balance-shafts secondaryCoupleAhead',
      'balance.balance-shafts secondaryCoupleBack',
      'balance.shaking-at forceDirections',
      'balance.shaking-forces exactCouple',
      'balance.shaking-forces exactForceAt',
      'balance.shaking-forces primaryCouple',
      'balance.shaking-forces primaryForce',
      'balance.shaking-forces secondaryCouple',
      'balance.shaking-forces secondaryForceAt',
      'balance.shaking-forces secondaryForceDirection',
      'cam.centreline-from-lobe scatter',
      'cam.centreline-from-lobe standardUncertainty',
      'selection.parts-with-shop total',
      'selection.shells-to-journals total',
      'selection.shim-pool totalDeviation',
    ],
  },
  {
    because:
      'A choice between equals, or an order of equals: another part, place or angle is as good, or at the very edge of what is allowed, and changes with the draw.',
    places: [
      'bearings.shell-selection clearances',
      'bearings.shell-selection thicker',
      'fasteners.centre-outward-order distances',
      'selection.common-spring-height heights',
      'selection.common-spring-height thickness',
      'selection.extra-part fits',
      'selection.extra-part size',
      'selection.shells-to-journals clearances',
      'selection.spring-load-shims thickness',
      'selection.spring-shims thickness',
      'valvetrain.park-angle angles',
      'valvetrain.park-angle away',
      'valvetrain.park-angle drop',
    ],
  },
  {
    because:
      'An input or a lift at the end of its range (a share of 100 %, a closed valve): draws beyond the end are refused or cut off.',
    places: [
      'fasteners.stages torques',
      'valvetrain.valve-to-piston-from-card liftAtTop',
      'valvetrain.valve-to-piston-from-card liftThere',
      'valvetrain.valve-to-piston-from-card minimumAngle',
    ],
  },
];

function withDoubt(spec: QuantityInput, text: string | number, relative: number) {
  const read = parseQuantity(spec.kind, String(text));
  if (!read.ok) throw new Error(`cannot read ${text}`);
  const { value, unit } = read.value;
  const shown = toUnit(spec.kind, value, unit);
  return { value: shown, unit, plusMinus: relative * (Math.abs(shown) || 1) };
}

/** Inputs of the example, each quantity with its doubt; undefined when there is no quantity among them. */
function doubtful(calc: Calculation, relative: number): Readonly<Record<string, unknown>> | undefined {
  let quantities = 0;
  const one = (spec: QuantityInput) => (text: string | number) => {
    quantities += 1;
    return withDoubt(spec, text, relative);
  };
  const inputs = Object.entries(calc.example.inputs).map(([name, given]: [string, Text]) => {
    const spec = calc.inputs[name];
    if (!spec || !isQuantity(spec)) return [name, given];
    const texts = (Array.isArray(given) ? given : [given]) as readonly (string | number)[];
    const values = texts.map(one(spec));
    return [name, Array.isArray(given) ? values : values[0]];
  });
  return quantities === 0 ? undefined : Object.fromEntries(inputs);
}

/** Doubt of each number of the example, with its place and value. */
function doubtsOf(
  calc: Calculation,
  relative: number,
  trials: number,
): readonly (readonly [string, OutputUncertainty, number])[] {
  const run = runCalculation(calc.id, doubtful(calc, relative), { uncertainty: { trials, seed: 11 } });
  if (!run.ok) throw new Error(run.fault.map(describeCalcFault).join('\n'));
  return Object.entries(run.value.outputs).flatMap(([name, { value, uncertainty }]) => {
    const all = (Array.isArray(uncertainty) ? uncertainty : [uncertainty]) as (OutputUncertainty | null | undefined)[];
    const values = (Array.isArray(value) ? value : [value]) as number[];
    return all.flatMap((doubt, at) => (doubt ? [[`${calc.id} ${name}`, doubt, values[at]!] as const] : []));
  });
}

const entries = catalogue
  .filter((calc) => doubtful(calc, RELATIVE) !== undefined)
  .map((calc) => [calc.id, calc] as const);

it('names only outputs that exist where an example is not smooth, each with a reason', () => {
  for (const { because, places } of NOT_SMOOTH) {
    expect(because.trim()).not.toBe('');
    for (const place of places) {
      const [id, output] = place.split(' ');
      expect(Object.keys(catalogue.find((calc) => calc.id === id)?.outputs ?? {}), place).toContain(output);
    }
  }
});

describe.each(entries)('the doubt of %s', (_, calc) => {
  it('is the same by derivatives and by draws, where the example is smooth', () => {
    const apart: string[] = [];
    for (const [place, { standard, monteCarlo }, value] of doubtsOf(calc, RELATIVE, TRIALS)) {
      const flat = 1e-3 * RELATIVE * Math.abs(value) + 1e-12;
      if (Math.abs(monteCarlo.standard - standard) > SAMPLING * standard + flat) apart.push(place);
    }
    const known = new Set(NOT_SMOOTH.flatMap(({ places }) => places));
    expect([...new Set(apart)].filter((place) => !known.has(place))).toEqual([]);
  });

  it('is shared out among the inputs without rest', () => {
    for (const [place, { standard, contributions }] of doubtsOf(calc, RELATIVE, 20)) {
      if (standard === 0) continue;
      const shares = contributions.map(({ share }) => share);
      expect(Math.min(...shares), place).toBeGreaterThanOrEqual(0);
      expect(
        shares.reduce((sum, share) => sum + share, 0),
        place,
      ).toBeCloseTo(1, 9);
    }
  });

  it('is zero when that of every input is', () => {
    const doubts = doubtsOf(calc, 0, 2);
    expect(doubts.length).toBeGreaterThanOrEqual(doubtsOf(calc, RELATIVE, 20).length);
    for (const [place, { standard, monteCarlo }] of doubts) {
      expect([standard, monteCarlo.standard], place).toEqual([0, 0]);
    }
  });
});
