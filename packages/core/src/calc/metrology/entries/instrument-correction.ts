import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { atMost } from '../decision.js';
import { betweenStandards, gaugeError } from '../instrument.js';
import { asLength, lengths, maybeLength } from './flavour.js';
import { asRatio } from './inputs.js';

export const instrumentCorrection = defineCalculation({
  id: 'metrology.instrument-correction',
  subject: 'metrology',
  title: 'Reading corrected by a setting standard',
  summary: 'Takes off the error that the gauge shows on a standard, with the drift between start and end of a session.',
  inputs: {
    reading: { ...lengths.input, symbol: 'D', meaning: 'reading of the part (a size, or an indicator deviation)' },
    standard: {
      ...lengths.input,
      symbol: 'S',
      meaning: 'true size of the setting standard; 0 where the zero itself is checked',
    },
    atStart: { ...lengths.input, symbol: 'S1', meaning: 'reading of the standard at the start' },
    atEnd: {
      ...lengths.input,
      symbol: 'S2',
      meaning: 'reading of the standard at the end; left out: no drift is known',
      optional: true,
    },
    share: {
      kind: 'ratio',
      symbol: 'f',
      meaning: 'when the part was measured: 0 at the start of the session, 1 at its end',
      unit: '',
      range: { from: 0, to: 1 },
      default: 0.5,
    },
    allowedDrift: { ...lengths.size, symbol: 'd max', meaning: 'largest drift that may pass', optional: true },
  },
  outputs: {
    size: { ...lengths.output, symbol: 'D₀', meaning: 'corrected size' },
    correction: { ...lengths.output, symbol: 'Δ', meaning: 'added to the reading' },
    drift: { ...lengths.output, symbol: 'd', meaning: 'end less start', optional: true },
    driftUncertainty: {
      ...lengths.output,
      symbol: 'u',
      meaning: 'standard uncertainty if the drift came at an unknown time: |d|/√12',
      optional: true,
    },
    verdict: { kind: 'text', symbol: 'verdict', meaning: 'in, check again (drifted too far) or no data' },
  },
  formula: 'D₀ = D − (S1 − S + f·(S2 − S1))',
  assumptions: ['The error of the gauge is the same on the part as on the standard, and drifts evenly.'],
  sources: ['derived-here'],
  example: {
    inputs: { reading: '63.442 mm', standard: '63.500 mm', atStart: '63.502 mm', atEnd: '63.504 mm' },
    outputs: { size: '63.439 mm', correction: '-0.003 mm', drift: '0.002 mm' },
    from: 'hand arithmetic',
  },
  compute: (v) => {
    const error = gaugeError({ ...v, atEnd: v.atEnd ?? v.atStart });
    const drift = v.atEnd === undefined ? undefined : v.atEnd - v.atStart;
    const kept = drift !== undefined && v.allowedDrift !== undefined && atMost(Math.abs(drift), v.allowedDrift);
    const judged = drift !== undefined && v.allowedDrift !== undefined;
    return answer({
      size: asLength(v.reading - error),
      correction: asLength(-error),
      drift: maybeLength(drift),
      driftUncertainty: drift === undefined ? undefined : asLength(Math.abs(drift) / Math.sqrt(12)),
      verdict: !judged ? 'no data' : kept ? 'in' : 'check again',
    });
  },
});

export const twoStandards = defineCalculation({
  id: 'metrology.two-standards',
  subject: 'metrology',
  title: 'Reading corrected by two standards',
  summary: 'Zero error and scale error together, by a straight line through two standards.',
  inputs: {
    reading: { ...lengths.input, symbol: 'D', meaning: 'reading of the part' },
    lowSize: { ...lengths.input, symbol: 'S1', meaning: 'true size of the smaller standard' },
    lowReading: { ...lengths.input, symbol: 'R1', meaning: 'reading of the smaller standard' },
    highSize: { ...lengths.input, symbol: 'S2', meaning: 'true size of the larger standard' },
    highReading: { ...lengths.input, symbol: 'R2', meaning: 'reading of the larger standard' },
  },
  outputs: {
    size: { ...lengths.output, symbol: 'D₀', meaning: 'corrected size' },
    correction: { ...lengths.output, symbol: 'Δ', meaning: 'added to the reading' },
    scale: {
      kind: 'ratio',
      symbol: 'b',
      meaning: 'true change for one unit of reading',
      unit: '',
      places: 6,
    },
  },
  formula: 'D₀ = S1 + (D − R1)·(S2 − S1)/(R2 − R1)',
  assumptions: ['The gauge is straight between the standards; outside them the line is only an estimate.'],
  sources: ['derived-here'],
  example: {
    inputs: {
      reading: '60.003 mm',
      lowSize: '50.000 mm',
      lowReading: '50.002 mm',
      highSize: '75.000 mm',
      highReading: '75.006 mm',
    },
    outputs: { size: '59.9994 mm', correction: '-0.0036 mm' },
    from: 'hand arithmetic: 50 + 10.001·25/25.004',
  },
  compute: (v) => {
    if (!(v.highReading > v.lowReading && v.highSize > v.lowSize))
      return conflict(
        ['lowSize', 'highSize', 'lowReading', 'highReading'],
        'the larger standard must read and be more',
      );
    const low = { size: v.lowSize, read: v.lowReading };
    const high = { size: v.highSize, read: v.highReading };
    const size = betweenStandards(v.reading, low, high);
    const outside = v.reading < v.lowReading || v.reading > v.highReading;
    const caution = { code: 'beyond-standards', text: 'the reading lies outside the two standards' };
    return answer(
      {
        size,
        correction: asLength(size - v.reading),
        scale: asRatio((high.size - low.size) / (high.read - low.read)),
      },
      outside ? [caution] : [],
    );
  },
});
