/** What the measured length of a bolt says: its preload, and whether it may be used again. */
import { type Force, type Length, mm } from '../../../quantity/index.js';
import { answer, type Caution, conflict, defineCalculation, reversedEnds, verdictOf } from '../../catalogue/index.js';
import { preload } from './inputs.js';
import { boltCompliance, force, length } from './joint-inputs.js';

const out = { kind: 'length', unit: 'mm', places: 4 } as const;
const apart: Caution = {
  code: 'stretch-and-torque-apart',
  text: 'stretch and torque contradict each other: trust the stretch (it knows no friction), and find out why',
};

export const preloadFromStretch = defineCalculation({
  id: 'fasteners.preload-from-stretch',
  subject: 'fasteners',
  title: 'Preload from measured stretch',
  summary: 'Preload from the lengths of a bolt free and tightened, beside what the torque should have made.',
  inputs: {
    freeLength: { ...length, symbol: 'l0', meaning: 'length of this bolt, free' },
    loadedLength: { ...length, symbol: 'l1', meaning: 'length tightened, between the same marks' },
    boltCompliance: { ...boltCompliance, meaning: 'compliance between the measuring marks' },
    torqueLow: { ...preload, symbol: 'FT min', meaning: 'least preload that the torque makes', optional: true },
    torqueHigh: { ...preload, symbol: 'FT max', meaning: 'most preload that the torque makes', optional: true },
  },
  outputs: {
    stretch: { ...out, symbol: 'x', meaning: 'stretch' },
    preload: { ...force, symbol: 'F', meaning: 'preload that it means' },
    verdict: {
      kind: 'text',
      symbol: 'verdict',
      meaning: 'in, below or above what the torque should have made; no data without it',
    },
  },
  formula: 'x = l1 − l0; F = x/δS',
  assumptions: ['Elastic. Both lengths at one temperature, with the gauge zeroed on this bolt, relaxed.'],
  sources: ['derived-here'],
  example: {
    inputs: {
      freeLength: '2.9500 in',
      loadedLength: '2.9545 in',
      boltCompliance: '0.6457 µin/lbf',
      torqueLow: '5500 lbf',
      torqueHigh: '9000 lbf',
    },
    outputs: { stretch: '0.0045 in', preload: '6969 lbf', verdict: 'in' },
    from: 'hand arithmetic with the bolt of reference row O-20: 0.0045/0.6457e-6 = 6969 lbf',
  },
  compute: (v) => {
    const reversed = reversedEnds(v, ['torqueLow', 'torqueHigh']);
    if (reversed) return reversed;
    const stretch = (v.loadedLength - v.freeLength) as Length;
    if (stretch < 0) {
      return conflict(['freeLength', 'loadedLength'], 'a tightened bolt is not shorter than a free one', {
        input: 'loadedLength',
        from: v.freeLength,
      });
    }
    const found = (stretch / v.boltCompliance) as Force;
    const verdict = verdictOf(found, v.torqueLow, v.torqueHigh);
    return answer({ stretch, preload: found, verdict }, verdict === 'below' || verdict === 'above' ? [apart] : []);
  },
});

export const permanentSet = defineCalculation({
  id: 'fasteners.permanent-set',
  subject: 'fasteners',
  title: 'Whether a bolt may be used again',
  summary: 'How much longer a bolt stayed after loosening, and how often it was tightened, against the maker’s limits.',
  inputs: {
    before: { ...length, symbol: 'l0', meaning: 'length free, when new or before it was tightened' },
    now: { ...length, symbol: 'l2', meaning: 'length free now' },
    limit: {
      kind: 'length',
      symbol: 'x max',
      meaning: 'most that it may have stayed longer',
      unit: 'mm',
      range: { from: 0, to: mm(10) },
      optional: true,
    },
    tightened: {
      kind: 'count',
      symbol: 'n',
      meaning: 'times it was tightened',
      range: { from: 0, to: 1000 },
      optional: true,
    },
    allowed: {
      kind: 'count',
      symbol: 'n max',
      meaning: 'times it may be tightened',
      range: { from: 1, to: 1000 },
      optional: true,
    },
  },
  outputs: {
    set: { ...out, symbol: 'x', meaning: 'stayed longer by' },
    verdict: { kind: 'text', symbol: 'verdict', meaning: 'use again, discard, or no data where no limit is given' },
  },
  formula: 'x = l2 − l0; discard when x > x max or n ≥ n max',
  assumptions: ['About 0.0005 in is a usual limit for rod bolts: common practice, no source. The maker’s figure wins.'],
  sources: ['shop-practice'],
  example: {
    inputs: { before: '2.9500 in', now: '2.9507 in', limit: '0.0005 in' },
    outputs: { set: '0.0007 in', verdict: 'discard' },
    from: 'hand arithmetic',
  },
  compute: (v) => {
    if ((v.tightened === undefined) !== (v.allowed === undefined)) {
      return conflict(['tightened', 'allowed'], 'tightened and allowed belong together');
    }
    const set = (v.now - v.before) as Length;
    const long = v.limit === undefined ? 'no data' : verdictOf(set, undefined, v.limit);
    const worn = v.tightened !== undefined && v.allowed !== undefined && v.tightened >= v.allowed;
    const known = v.limit !== undefined || v.allowed !== undefined;
    const verdict = long === 'above' || worn ? 'discard' : known ? 'use again' : 'no data';
    return answer({ set, verdict });
  },
});
