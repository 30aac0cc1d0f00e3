import type { Length } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation, verdictOf } from '../../catalogue/index.js';
import { bestHalves } from '../halves.js';
import { clearance, clearanceOut, highest, housing, journal, lowest, size } from './inputs.js';

/** A step of 0.001 in of the pair, half of it in each half. */
const USUAL_MIX = 0.0000127;

const half = { kind: 'length', unit: 'mm', places: 4, list: true } as const;

export const shellSelection = defineCalculation({
  id: 'bearings.shell-selection',
  subject: 'bearings',
  title: 'Upper and lower shell half for every position',
  summary:
    'Tries every pair of halves that may be mixed and takes the one nearest to the clearance wanted, by position.',
  inputs: {
    housings: { ...housing, symbol: 'H', meaning: 'housing bore of each position, caps at their torque', list: true },
    journals: { ...journal, symbol: 'J', meaning: 'journal of each position, its largest diameter', list: true },
    walls: { ...size, symbol: 't', meaning: 'walls that can be had, for either half', list: true },
    widestMix: {
      kind: 'length',
      symbol: 'Δt',
      meaning: 'largest difference between the halves of one pair; 0: never mix',
      unit: 'mm',
      range: { from: 0, to: 0.001 },
      default: USUAL_MIX,
    },
    lowest: { ...clearance, symbol: lowest.symbol, meaning: lowest.meaning },
    highest: { ...clearance, symbol: highest.symbol, meaning: highest.meaning },
    target: {
      ...clearance,
      symbol: 'C*',
      meaning: 'clearance wanted; left out: the middle of lowest and highest',
      optional: true,
    },
  },
  outputs: {
    thicker: { ...half, symbol: 't1', meaning: 'one half of each position (the thicker where they differ)' },
    thinner: { ...half, symbol: 't2', meaning: 'the other half of each position' },
    clearances: { ...clearanceOut, symbol: 'C', meaning: 'clearance that they give', list: true },
    verdicts: { kind: 'text', symbol: 'verdict', meaning: 'in, below or above the window, by position', list: true },
    choices: { kind: 'count', symbol: 'pairs', meaning: 'pairs that would lie in the window, by position', list: true },
  },
  formula: 'for each position: the pair with t1 − t2 ≤ Δt whose C = H − t1 − t2 − J is nearest to C*',
  assumptions: [
    'Every size can be had as often as it is needed; positions are independent. The choice is exact: all pairs are tried.',
    'Which half goes up is the engine maker’s rule. Most makers allow halves of neighbouring sizes only.',
  ],
  sources: ['derived-here', 'shop-practice'],
  example: {
    inputs: {
      housings: ['2.6410 in', '2.6414 in'],
      journals: ['2.4490 in', '2.4489 in'],
      walls: ['0.0945 in', '0.0950 in', '0.0955 in'],
      widestMix: '0.0005 in',
      lowest: '0.0018 in',
      highest: '0.0024 in',
    },
    outputs: {
      thicker: ['0.0950 in', '0.0955 in'],
      thinner: ['0.0950 in', '0.0950 in'],
      clearances: ['0.0020 in', '0.0020 in'],
      verdicts: ['in', 'in'],
    },
    from: 'hand arithmetic: 0.1920 and 0.1925 in between housing and journal',
  },
  compute: (v) => {
    if (v.housings.length !== v.journals.length) {
      return conflict(['housings', 'journals'], 'each position needs its housing and its journal');
    }
    if (v.lowest > v.highest) {
      return conflict(['lowest', 'highest'], 'the low end is above the high end', { input: 'highest', from: v.lowest });
    }
    const target = v.target ?? (((v.lowest + v.highest) / 2) as Length);
    const window = { low: v.lowest, high: v.highest, target };
    const searches = v.housings.map((one, at) => bestHalves(one, v.journals[at]!, v.walls, v.widestMix, window));
    const best = searches.flatMap((search) => search.best ?? []);
    if (best.length < searches.length) {
      const place = searches.findIndex((search) => !search.best) + 1;
      return conflict(
        ['housings', 'journals', 'walls'],
        `no pair of these walls leaves a clearance at position ${place}`,
      );
    }
    return answer({
      thicker: best.map(({ upper }) => upper),
      thinner: best.map(({ lower }) => lower),
      clearances: best.map((one) => one.clearance),
      verdicts: best.map((one) => verdictOf(one.clearance, v.lowest, v.highest)),
      choices: searches.map(({ fitting }) => fitting),
    });
  },
});
