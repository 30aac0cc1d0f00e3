/** Out-of-round, taper and size of a journal or of a housing: the same readings, judged alike. */
import { mm } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation, reversedEnds, verdictOf } from '../../catalogue/index.js';
import { journalForm } from '../journal-form.js';
import { clearanceOut, size, verdict } from './inputs.js';

const limit = { kind: 'length', unit: 'mm', range: { from: 0, to: mm(5) }, optional: true } as const;
const length = { kind: 'length', unit: 'mm', places: 4 } as const;

const formCalculation = (what: 'journal' | 'housing', words: { readonly title: string; readonly summary: string }) =>
  defineCalculation({
    id: `bearings.${what}-form`,
    subject: 'bearings',
    ...words,
    inputs: {
      x: { ...size, symbol: 'X', meaning: 'diameters in one direction, plane by plane along it', list: true },
      y: { ...size, symbol: 'Y', meaning: 'diameters at 90° to it, in the same planes', list: true },
      taperRule: {
        kind: 'choice',
        symbol: 'rule',
        meaning: 'taper as the limit means it: first plane against last, or largest less smallest along one direction',
        choices: ['ends', 'spread'],
        default: 'ends',
      },
      outOfRoundLimit: { ...limit, symbol: 'o max', meaning: 'limit of out-of-round' },
      taperLimit: { ...limit, symbol: 't max', meaning: 'limit of taper' },
      lowest: { ...size, symbol: 'D min', meaning: 'smallest size allowed', optional: true },
      highest: { ...size, symbol: 'D max', meaning: 'largest size allowed', optional: true },
    },
    outputs: {
      outOfRound: { ...clearanceOut, symbol: 'o', meaning: 'out-of-round, a difference of diameters' },
      taper: { ...clearanceOut, symbol: 't', meaning: 'taper' },
      largest: { ...length, symbol: 'max', meaning: 'largest diameter' },
      smallest: { ...length, symbol: 'min', meaning: 'smallest diameter' },
      outOfRoundVerdict: { ...verdict, symbol: 'o', meaning: 'in or above its limit; no data without one' },
      taperVerdict: { ...verdict, symbol: 't', meaning: 'in or above its limit; no data without one' },
      sizeVerdict: { ...verdict, symbol: 'D', meaning: 'whether all diameters are in; below, above or no data' },
    },
    formula: 'o = max |X − Y|; t = max over X and Y of |first − last|, or of max − min',
    assumptions: [
      'Two directions cannot see an odd number of lobes.',
      what === 'journal'
        ? 'The clearance is judged with the largest diameter. Makers’ limits differ by a factor ten.'
        : 'Cap at its torque, shells out. The clearance is judged with the smallest diameter.',
    ],
    sources: ['journal-form'],
    example: {
      inputs: {
        x: ['59.9640 mm', '59.9625 mm'],
        y: ['59.9632 mm', '59.9620 mm'],
        outOfRoundLimit: '0.002 mm',
        taperLimit: '0.002 mm',
      },
      outputs: {
        outOfRound: '0.0008 mm',
        taper: '0.0015 mm',
        largest: '59.9640 mm',
        outOfRoundVerdict: 'in',
        taperVerdict: 'in',
        sizeVerdict: 'no data',
      },
      from: 'reference row O-17; limits printed in the source, readings ours',
    },
    compute: (v) => {
      if (v.x.length !== v.y.length) return conflict(['x', 'y'], 'each plane needs both directions');
      const reversed = reversedEnds(v, ['lowest', 'highest']);
      if (reversed) return reversed;
      const planes = v.x.map((one, at) => ({ x: one, y: v.y[at]! }));
      const found = journalForm(planes, v.taperRule);
      const small = verdictOf(found.smallest, v.lowest, v.highest);
      return answer({
        ...found,
        outOfRoundVerdict: verdictOf(found.outOfRound, undefined, v.outOfRoundLimit),
        taperVerdict: verdictOf(found.taper, undefined, v.taperLimit),
        sizeVerdict: small === 'in' ? verdictOf(found.largest, v.lowest, v.highest) : small,
      });
    },
  });

export const journalFormCheck = formCalculation('journal', {
  title: 'Out-of-round and taper of a journal',
  summary: 'From diameters in two directions in two or more planes, against their limits, and the size to judge with.',
});
export const housingFormCheck = formCalculation('housing', {
  title: 'Out-of-round, taper and size of a bearing housing',
  summary: 'From bores in two directions in two or more planes: whether the housing can hold its shells.',
});
