/** End float measured, and end float from the sizes: judged alike. */
import { answer, defineCalculation, reversedEnds } from '../../catalogue/index.js';
import { endFloat as find, judgeFloat } from '../end-float.js';
import { clearance, clearanceOut, size } from './inputs.js';

const limit = { ...clearance, optional: true } as const;
const limits = {
  newLow: { ...limit, symbol: 'f min', meaning: 'lowest end float when new' },
  newHigh: { ...limit, symbol: 'f new', meaning: 'highest end float when new' },
  discard: { ...limit, symbol: 'f max', meaning: 'discard above this' },
} as const;
const ends = [
  ['newLow', 'newHigh'],
  ['newHigh', 'discard'],
  ['newLow', 'discard'],
] as const;
const verdict = {
  kind: 'text',
  symbol: 'verdict',
  meaning: 'too tight; as new; usable, note it; discard; no data where no limit decides',
} as const;

export const endFloat = defineCalculation({
  id: 'bearings.end-float',
  subject: 'bearings',
  title: 'End float of a shaft against its limits',
  summary: 'Measured end float against the range when new and the discard limit.',
  inputs: {
    measured: { ...clearance, symbol: 'f', meaning: 'end float measured: the full travel, levered each way' },
    ...limits,
  },
  outputs: { verdict },
  formula: 'f min ≤ f ≤ f new: as new; f ≤ f max: usable; f > f max: discard',
  assumptions: ['Full travel with the shaft levered each way before zeroing. Limits themselves count as inside.'],
  sources: ['end-float'],
  example: {
    inputs: { measured: '0.26 mm', newLow: '0.04 mm', newHigh: '0.24 mm', discard: '0.30 mm' },
    outputs: { verdict: 'usable, note it' },
    from: 'reference row O-45; limits printed in the source, reading ours',
  },
  compute: (v) => reversedEnds(v, ...ends) ?? answer({ verdict: judgeFloat(v.measured, v) }),
});

export const endFloatFromSizes = defineCalculation({
  id: 'bearings.end-float-from-sizes',
  subject: 'bearings',
  title: 'End float from the thrust faces and the washers',
  summary: 'Free length between the thrust faces less what is in it, against the range when new and the discard limit.',
  inputs: {
    gap: { ...size, symbol: 'g', meaning: 'length between the thrust faces of the shaft' },
    washers: {
      ...size,
      symbol: 't',
      meaning: 'thickness of everything in that length: each thrust washer, and the housing between them',
      list: true,
    },
    ...limits,
  },
  outputs: {
    float: { ...clearanceOut, symbol: 'f', meaning: 'end float; negative: it binds', places: 3 },
    verdict,
  },
  formula: 'f = g − Σt',
  assumptions: ['All sizes at one temperature; the washers lie flat.'],
  sources: ['end-float', 'derived-here'],
  example: {
    inputs: { gap: '30.20 mm', washers: ['2.46 mm', '2.46 mm', '25.10 mm'], newLow: '0.04 mm', newHigh: '0.24 mm' },
    outputs: { float: '0.18 mm', verdict: 'as new' },
    from: 'hand arithmetic',
  },
  compute: (v) => {
    const float = find(v.gap, v.washers);
    return reversedEnds(v, ...ends) ?? answer({ float, verdict: judgeFloat(float, v) });
  },
});
