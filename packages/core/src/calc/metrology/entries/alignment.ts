import { type Angle, degrees, type Length, metres } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { atMost } from '../decision.js';
import { mean, spread } from '../repeats.js';
import { asLength, lengths } from './flavour.js';
import { asRatio } from './inputs.js';

const baseLength = { kind: 'length', unit: 'mm', range: { above: 0, to: metres(100) } } as const;
const limit = { ...lengths.size, symbol: 'L', optional: true } as const;
const verdict = { kind: 'text', symbol: 'verdict', meaning: 'in, out or no data (no limit)' } as const;
const judged = (value: number, allowed: number | undefined): string =>
  allowed === undefined ? 'no data' : atMost(value, allowed) ? 'in' : 'out';

export const squareness = defineCalculation({
  id: 'metrology.squareness',
  subject: 'metrology',
  title: 'Squareness from two readings along a side',
  summary: 'Angle off square, and how far that is out over another length: valve spring, cap, bore to deck, rod.',
  inputs: {
    near: { ...lengths.input, symbol: 'a', meaning: 'gap or indicator reading near the base' },
    far: { ...lengths.input, symbol: 'b', meaning: 'gap or reading at the far place' },
    distance: { ...baseLength, symbol: 'h', meaning: 'distance between the two places' },
    over: {
      ...baseLength,
      symbol: 'H',
      meaning: 'length over which the error is wanted; left out: 100 mm',
      default: metres(0.1),
    },
    limit: { ...limit, meaning: 'largest error over that length, inclusive' },
  },
  outputs: {
    error: {
      ...lengths.output,
      symbol: 'e',
      meaning: 'out of square over the length asked for, signed: far less near',
    },
    angle: { kind: 'angle', symbol: 'φ', meaning: 'angle off square', unit: 'deg', places: 4 },
    verdict,
  },
  formula: 'φ = arctan((b − a)/h); e = (b − a)·H/h',
  assumptions: ['The side is straight between the places.'],
  sources: ['derived-here'],
  example: {
    inputs: { near: '0 mm', far: '0.05 mm', distance: '50 mm', limit: '0.08 mm' },
    outputs: { error: '0.10 mm', angle: '0.0573 deg', verdict: 'out' },
    from: 'hand arithmetic',
  },
  compute: (v) => {
    const slope = (v.far - v.near) / v.distance;
    const error = slope * v.over;
    return answer({
      error: asLength(error),
      angle: Math.atan(slope) as Angle,
      verdict: judged(Math.abs(error), v.limit),
    });
  },
});

export const parallelism = defineCalculation({
  id: 'metrology.parallelism',
  subject: 'metrology',
  title: 'Parallelism from distances',
  summary: 'Distances between two faces or axes at several places: deck to crank centre, rod ends, head thickness.',
  inputs: {
    distances: { ...lengths.input, symbol: 'h', meaning: 'distance at each place', list: true },
    between: {
      ...baseLength,
      symbol: 'l',
      meaning: 'distance from the first place to the last, for the angle',
      optional: true,
    },
    limit: { ...limit, meaning: 'largest difference, inclusive' },
  },
  outputs: {
    parallelism: { ...lengths.output, symbol: 'P', meaning: 'largest less smallest distance' },
    lowest: { ...lengths.output, symbol: 'h min', meaning: 'smallest distance: decides what may still be cut' },
    highest: { ...lengths.output, symbol: 'h max', meaning: 'largest distance' },
    mean: { ...lengths.output, symbol: 'h̄', meaning: 'mean distance' },
    tilt: { ...lengths.output, symbol: 't', meaning: 'last less first distance' },
    angle: { kind: 'angle', symbol: 'φ', meaning: 'angle of that tilt', unit: 'deg', places: 4, optional: true },
    verdict,
  },
  formula: 'P = h max − h min; φ = arctan((h last − h first)/l)',
  assumptions: ['One face (or axis) is the datum that the distances are measured from.'],
  sources: ['derived-here'],
  example: {
    inputs: { distances: ['230.02 mm', '230.05 mm', '230.04 mm'], limit: '0.05 mm' },
    outputs: { parallelism: '0.03 mm', tilt: '0.02 mm', verdict: 'in' },
    from: 'hand arithmetic',
  },
  compute: (v) => {
    const tilt = v.distances[v.distances.length - 1]! - v.distances[0]!;
    const parallel = spread(v.distances);
    return answer({
      parallelism: asLength(parallel),
      lowest: Math.min(...v.distances) as Length,
      highest: Math.max(...v.distances) as Length,
      mean: asLength(mean(v.distances)),
      tilt: asLength(tilt),
      angle: v.between === undefined ? undefined : (Math.atan(tilt / v.between) as Angle),
      verdict: judged(parallel, v.limit),
    });
  },
});

export const runout = defineCalculation({
  id: 'metrology.runout',
  subject: 'metrology',
  title: 'Runout and bend from an indicator round a shaft',
  summary: 'Total indicator reading, the part of it that is eccentricity (bend), and where its high side is.',
  inputs: {
    readings: {
      ...lengths.input,
      symbol: 'r',
      meaning: 'indicator at equal steps round the shaft, three or more',
      list: true,
    },
    limit: { ...limit, meaning: 'largest runout (total indicator reading), inclusive' },
  },
  outputs: {
    runout: { ...lengths.output, symbol: 'TIR', meaning: 'highest less lowest reading' },
    eccentricity: {
      ...lengths.output,
      symbol: 'e',
      meaning: 'offset of the axis by the first harmonic; half the runout of a round shaft',
    },
    highSide: {
      kind: 'angle',
      symbol: 'φ',
      meaning: 'angle of the high side from the first reading, 0 to 360°',
      unit: 'deg',
      places: 1,
    },
    form: { ...lengths.output, symbol: 'F', meaning: 'what is left without the eccentricity: form of the journal' },
    share: {
      kind: 'ratio',
      symbol: '2e/TIR',
      meaning: 'share of the runout that is eccentricity',
      unit: '%',
      places: 1,
    },
    verdict,
  },
  formula: 'TIR = r max − r min; e·(cos φ, sin φ) = 2/n·Σ r·(cos α, sin α)',
  assumptions: ['Supported on its end journals, which are round themselves.'],
  sources: ['derived-here'],
  example: {
    inputs: { readings: ['0.02 mm', '0 mm', '-0.02 mm', '0 mm'], limit: '0.03 mm' },
    outputs: { runout: '0.04 mm', eccentricity: '0.02 mm', highSide: '0 deg', form: '0.00 mm', verdict: 'out' },
    from: 'hand arithmetic',
  },
  compute: (v) => {
    const n = v.readings.length;
    if (n < 3) return conflict(['readings'], 'three readings round the shaft are needed');
    const angles = v.readings.map((_, at) => (2 * Math.PI * at) / n);
    const centre = mean(v.readings);
    const along = (wave: (angle: number) => number) =>
      (2 / n) * v.readings.reduce((sum, one, at) => sum + (one - centre) * wave(angles[at]!), 0);
    const [x, y] = [along(Math.cos), along(Math.sin)];
    const whole = spread(v.readings);
    const left = v.readings.map((one, at) => one - x * Math.cos(angles[at]!) - y * Math.sin(angles[at]!));
    const eccentricity = Math.hypot(x, y);
    const high = eccentricity < whole * BARELY ? 0 : Math.atan2(y, x);
    return answer({
      runout: asLength(whole),
      eccentricity: asLength(eccentricity),
      highSide: (high < -BARELY ? high + degrees(360) : Math.max(0, high)) as Angle,
      form: asLength(spread(left)),
      share: asRatio(whole === 0 ? 0 : (2 * eccentricity) / whole),
      verdict: judged(whole, v.limit),
    });
  },
});
/** Rounding of sines and cosines. */
const BARELY = 1e-12;
