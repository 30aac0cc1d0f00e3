import { megapascals, type Pressure } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import {
  type CompressionRule,
  HEARD_AT,
  LEAK_PATHS,
  leakage,
  leastAllowed,
  lowPlaces,
  neighbours,
  wetFinding,
} from '../cylinder-tests.js';
import { atMost } from '../decision.js';
import { asRatio, asRatios } from './inputs.js';

const pressure = { kind: 'pressure', unit: 'kPa', range: { from: 0, to: megapascals(10) } } as const;
const shown = { kind: 'pressure', unit: 'kPa', places: 1 } as const;

export const compressionSpread = defineCalculation({
  id: 'metrology.compression-spread',
  subject: 'metrology',
  title: 'Compression test: lowest against highest',
  summary: 'Which cylinders are low by the maker’s share of the highest, and what a wet test says of them.',
  inputs: {
    pressures: {
      ...pressure,
      symbol: 'p',
      meaning: 'pressure of each cylinder, in order along the bank, bank after bank',
      list: true,
    },
    share: {
      kind: 'ratio',
      symbol: 's',
      meaning: 'least share of the highest that the maker allows, such as 70 % or 75 %',
      unit: '%',
      range: { above: 0, to: 1 },
      optional: true,
    },
    floor: {
      ...pressure,
      symbol: 'p min',
      meaning: 'least pressure that the maker allows in any cylinder',
      optional: true,
    },
    difference: {
      ...pressure,
      symbol: 'Δp',
      meaning: 'largest difference from the highest that the maker allows',
      optional: true,
    },
    banks: {
      kind: 'count',
      symbol: 'banks',
      meaning: 'cylinders in each bank; left out: one bank',
      range: { from: 1, to: 64 },
      list: true,
      optional: true,
    },
    wet: {
      ...pressure,
      symbol: 'pw',
      meaning: 'pressure of each cylinder again after a little oil (about 15 mL)',
      list: true,
      optional: true,
    },
    clearRise: {
      kind: 'ratio',
      symbol: 'rise',
      meaning: 'rise with oil that counts as clear',
      unit: '%',
      range: { above: 0, to: 1 },
      default: 0.1,
    },
  },
  outputs: {
    highest: { ...shown, symbol: 'p max', meaning: 'highest' },
    lowest: { ...shown, symbol: 'p min', meaning: 'lowest' },
    allowed: {
      ...shown,
      symbol: 'p ≥',
      meaning: 'least allowed by all the rules given',
      optional: true,
    },
    ratio: { kind: 'ratio', symbol: 'q', meaning: 'lowest over highest', unit: '', places: 3 },
    difference: { ...shown, symbol: 'Δp', meaning: 'highest less lowest' },
    low: { kind: 'count', symbol: 'low', meaning: 'places of the low cylinders, from 1', list: true },
    verdict: { kind: 'text', symbol: 'verdict', meaning: 'in, out or no data (no rule given)' },
    rule: { kind: 'text', symbol: 'rule', meaning: 'rule by which it was judged' },
    lowNeighbours: {
      kind: 'text',
      symbol: 'pairs',
      meaning: 'low cylinders side by side in one bank: gasket or crack',
      list: true,
    },
    findings: {
      kind: 'text',
      symbol: 'finding',
      meaning: 'what the wet test says of each low cylinder',
      list: true,
      optional: true,
    },
  },
  formula: 'p ≥ max(s·p max, floor, p max − Δp) in every cylinder',
  assumptions: [
    'Same cranking speed for all, throttle open, battery strong, engine warm. Verdicts hold for the rule that is named.',
  ],
  sources: ['compression-rule', 'shop-practice'],
  example: {
    inputs: {
      pressures: [148, 152, 150, 109, 151, 147, 150, 149].map((p) => `${p} psi`),
      share: '70 %',
      floor: '100 psi',
      banks: [4, 4],
    },
    outputs: { ratio: '0.717', allowed: '106.4 psi', verdict: 'in' },
    from: 'reference row O-40',
  },
  compute: (v) => {
    const n = v.pressures.length;
    const banks = v.banks ?? [n];
    if (banks.reduce((sum, one) => sum + one, 0) !== n)
      return conflict(['pressures', 'banks'], 'the banks do not add up to the cylinders');
    if (v.wet && v.wet.length !== n) return conflict(['pressures', 'wet'], 'one wet pressure a cylinder is needed');
    const highest = Math.max(...v.pressures) as Pressure;
    if (highest === 0) return conflict(['pressures'], 'no cylinder makes any pressure: check the gauge and the test');
    const lowest = Math.min(...v.pressures) as Pressure;
    const allowed = leastAllowed(highest, v) as Pressure | undefined;
    const low = allowed === undefined ? [] : lowPlaces(v.pressures, allowed);
    const pairs = neighbours(banks).filter((pair) => pair.every((at) => low.includes(at)));
    const { wet } = v;
    return answer({
      highest,
      lowest,
      allowed,
      ratio: asRatio(lowest / highest),
      low: low.map((at) => at + 1),
      difference: (highest - lowest) as Pressure,
      verdict: allowed === undefined ? 'no data' : low.length === 0 ? 'in' : 'out',
      rule: ruleText(v),
      lowNeighbours: pairs.map(([one, other]) => `${one + 1} and ${other + 1}`),
      findings:
        wet &&
        low.map((at) => {
          const beside = pairs.some((pair) => pair.includes(at));
          return `${at + 1}: ${wetFinding(v.pressures[at]!, wet[at]!, v.clearRise, beside)}`;
        }),
    });
  },
});

function ruleText({ share, floor, difference }: CompressionRule): string {
  const parts = [
    ...(share === undefined ? [] : [`at least ${Number((share * 100).toPrecision(6))} % of the highest`]),
    ...(floor === undefined ? [] : ['no less than the floor']),
    ...(difference === undefined ? [] : ['within the difference from the highest']),
  ];
  return parts.join(', ') || 'no rule given';
}

export const leakDown = defineCalculation({
  id: 'metrology.leakage',
  subject: 'metrology',
  title: 'Leakage of each cylinder',
  summary: 'Share of the supply that leaks, against a limit and against an earlier test, and where it goes.',
  inputs: {
    supply: {
      ...pressure,
      range: { above: 0, to: megapascals(10) },
      symbol: 'ps',
      meaning: 'supply pressure on the gauge',
    },
    held: { ...pressure, symbol: 'pc', meaning: 'pressure that each cylinder holds', list: true },
    limit: {
      kind: 'ratio',
      symbol: 'L',
      meaning: 'largest leakage, inclusive',
      unit: '%',
      range: { from: 0, to: 1 },
      optional: true,
    },
    baseline: {
      kind: 'ratio',
      symbol: 'L₀',
      meaning: 'leakage of each cylinder in an earlier test with the same tester',
      unit: '%',
      range: { from: 0, to: 1 },
      list: true,
      optional: true,
    },
    heardAt: {
      kind: 'choice',
      symbol: 'heard',
      meaning: 'where the air of each cylinder is heard',
      choices: HEARD_AT,
      list: true,
      optional: true,
    },
  },
  outputs: {
    leakages: { kind: 'ratio', symbol: 'L', meaning: 'leakage of each cylinder', unit: '%', places: 1, list: true },
    worst: { kind: 'ratio', symbol: 'L max', meaning: 'largest', unit: '%', places: 1 },
    worstPlace: { kind: 'count', symbol: 'place', meaning: 'cylinder of the largest, from 1' },
    changes: {
      kind: 'ratio',
      symbol: 'ΔL',
      meaning: 'change since the earlier test',
      unit: '%',
      places: 1,
      list: true,
      optional: true,
    },
    over: { kind: 'count', symbol: 'over', meaning: 'cylinders over the limit, from 1', list: true, optional: true },
    causes: {
      kind: 'text',
      symbol: 'cause',
      meaning: 'what the path of each cylinder points to',
      list: true,
      optional: true,
    },
    verdict: { kind: 'text', symbol: 'verdict', meaning: 'in, out or no data (no limit)' },
  },
  formula: 'L = (ps − pc)/ps',
  assumptions: [
    'Gauge pressures; piston at firing top. Testers have different orifices: two testers cannot be compared.',
  ],
  sources: ['leak-down', 'shop-practice'],
  example: {
    inputs: { supply: '80 psi', held: ['60 psi', '68 psi'], limit: '25 %' },
    outputs: { leakages: ['25 %', '15 %'], verdict: 'in', worstPlace: 1 },
    from: 'reference row O-41',
  },
  compute: (v) => {
    const n = v.held.length;
    if (v.held.some((one) => one > v.supply))
      return conflict(['supply', 'held'], 'a cylinder cannot hold more than the supply');
    if (v.baseline && v.baseline.length !== n)
      return conflict(['held', 'baseline'], 'one earlier figure a cylinder is needed');
    if (v.heardAt && v.heardAt.length !== n) return conflict(['held', 'heardAt'], 'one place a cylinder is needed');
    const leakages = v.held.map((held) => leakage(v.supply, held));
    const worst = Math.max(...leakages);
    const { limit, baseline } = v;
    return answer({
      leakages: asRatios(leakages),
      worst: asRatio(worst),
      worstPlace: leakages.indexOf(worst) + 1,
      changes: baseline && asRatios(leakages.map((one, at) => one - baseline[at]!)),
      over: limit === undefined ? undefined : leakages.flatMap((one, at) => (atMost(one, limit) ? [] : [at + 1])),
      causes: v.heardAt?.map((where) => LEAK_PATHS[where]),
      verdict: limit === undefined ? 'no data' : atMost(worst, limit) ? 'in' : 'out',
    });
  },
});
