import { answer, defineCalculation } from '../../catalogue/index.js';
import { budgetOf, expand, wholeDegrees } from '../budget.js';
import { COMPARISON_INPUTS, comparisonLength } from '../comparison.js';
import { modelDoubt } from '../model-doubt.js';
import { asLength, asLengths, lengths } from './flavour.js';
import { asRatio, countable, degreesOfFreedom, expansion, level } from './inputs.js';

const doubt = (symbol: string, what: string) =>
  ({ ...lengths.size, symbol: `u(${symbol})`, meaning: `standard uncertainty of ${what}` }) as const;
const warmth = { kind: 'temperature-difference', unit: 'K', range: { from: -100, to: 100 } } as const;
const warmthDoubt = (symbol: string, what: string) =>
  ({
    ...warmth,
    range: { from: 0, to: 100 },
    symbol: `u(${symbol})`,
    meaning: `standard uncertainty of ${what}`,
  }) as const;
const degrees = (symbol: string) =>
  ({
    ...degreesOfFreedom,
    symbol: `ν(${symbol})`,
    meaning: `degrees of freedom of u(${symbol}); left out: infinite`,
    optional: true,
  }) as const;
const noDoubt = { default: 0 } as const;

export const comparisonWithStandard = defineCalculation({
  id: 'metrology.comparison-with-standard',
  subject: 'metrology',
  title: 'Length of a part compared with a standard, with its whole uncertainty',
  summary:
    'A comparator shows the difference of two nearly equal lengths; temperatures and expansions enter by their doubt, to first and to second order.',
  inputs: {
    standard: { ...lengths.size, symbol: 'ls', meaning: 'length of the standard at the reference temperature' },
    uStandard: doubt('ls', 'the standard'),
    nuStandard: degrees('ls'),
    difference: { ...lengths.input, symbol: 'd', meaning: 'mean difference, part minus standard' },
    uDifference: doubt('d', 'the mean difference'),
    nuDifference: degrees('d'),
    uRandom: { ...doubt('dr', 'random effects of the comparator'), ...noDoubt },
    nuRandom: degrees('dr'),
    uSystematic: { ...doubt('ds', 'systematic effects of the comparator'), ...noDoubt },
    nuSystematic: degrees('ds'),
    expansion: { ...expansion, symbol: 'αs', meaning: 'thermal expansion of the standard' },
    uExpansion: {
      ...expansion,
      symbol: 'u(αs)',
      meaning: 'standard uncertainty of the expansion of the standard',
      ...noDoubt,
    },
    nuExpansion: degrees('αs'),
    expansionDifference: {
      ...expansion,
      range: { from: -100e-6, to: 100e-6 },
      symbol: 'δα',
      meaning: 'expansion of the part less that of the standard',
      default: 0,
    },
    uExpansionDifference: {
      ...expansion,
      symbol: 'u(δα)',
      meaning: 'standard uncertainty of that difference',
      ...noDoubt,
    },
    nuExpansionDifference: degrees('δα'),
    temperature: {
      ...warmth,
      symbol: 'θ',
      meaning: 'mean temperature of the part less the reference temperature',
      default: 0,
    },
    uTemperature: { ...warmthDoubt('θ', 'the mean temperature'), ...noDoubt },
    nuTemperature: degrees('θ'),
    uCyclic: { ...warmthDoubt('Δ', 'the cyclic variation of temperature'), ...noDoubt },
    nuCyclic: degrees('Δ'),
    temperatureDifference: {
      ...warmth,
      symbol: 'δθ',
      meaning: 'temperature of the standard less that of the part',
      default: 0,
    },
    uTemperatureDifference: { ...warmthDoubt('δθ', 'that temperature difference'), ...noDoubt },
    nuTemperatureDifference: degrees('δθ'),
    level: { ...level, default: 0.99 },
  },
  outputs: {
    length: { ...lengths.output, places: 6, symbol: 'l', meaning: 'length of the part at the reference temperature' },
    contributions: {
      ...lengths.output,
      places: 7,
      symbol: 'c·u',
      meaning: `first-order contributions: ${COMPARISON_INPUTS.join(', ')}`,
      list: true,
    },
    combined: { ...lengths.output, places: 7, symbol: 'u', meaning: 'combined standard uncertainty, first order' },
    combinedSecondOrder: { ...lengths.output, places: 7, symbol: 'u₂', meaning: 'with the terms of second order' },
    effectiveDegrees: {
      kind: 'ratio',
      symbol: 'ν eff',
      meaning: 'effective degrees of freedom; absent: infinite',
      unit: '',
      places: 2,
      optional: true,
    },
    wholeDegrees: { kind: 'count', symbol: 'ν', meaning: 'cut down to a whole number', optional: true },
    coverage: { kind: 'ratio', symbol: 'k', meaning: 'coverage factor', unit: '', places: 3 },
    expanded: { ...lengths.output, places: 6, symbol: 'U', meaning: 'expanded uncertainty, from the first order' },
  },
  formula: 'l = (ls·(1 + αs·(θ + Δ + δθ)) + d + dr + ds)/(1 + (αs + δα)·(θ + Δ))',
  assumptions: [
    'Inputs are independent. Comparator effects and the cyclic temperature are 0 with their uncertainty.',
    'Terms of second order matter where a first-order one vanishes (equal expansions, equal temperatures).',
  ],
  sources: ['gum-h1'],
  example: {
    inputs: {
      standard: '50.000623 mm',
      uStandard: '0.000025 mm',
      nuStandard: '18',
      difference: '0.000215 mm',
      uDifference: '0.0000058 mm',
      nuDifference: '24',
      uRandom: '0.0000039 mm',
      nuRandom: '5',
      uSystematic: '0.0000067 mm',
      nuSystematic: '8',
      expansion: '11.5 ppm/K',
      uExpansion: '1.2 ppm/K',
      uExpansionDifference: '0.58 ppm/K',
      nuExpansionDifference: '50',
      temperature: '-0.1 K',
      uTemperature: '0.2 K',
      uCyclic: '0.35 K',
      uTemperatureDifference: '0.029 K',
      nuTemperatureDifference: '2',
    },
    outputs: {
      length: '50.000838 mm',
      combined: '0.000032 mm',
      combinedSecondOrder: '0.000034 mm',
      wholeDegrees: 16,
      coverage: '2.92',
    },
    from: 'JCGM 100, H.1; reference row O-29',
  },
  compute: (v) => {
    const rows: readonly (readonly [number, number, number | undefined])[] = [
      [v.standard, v.uStandard, v.nuStandard],
      [v.difference, v.uDifference, v.nuDifference],
      [0, v.uRandom, v.nuRandom],
      [0, v.uSystematic, v.nuSystematic],
      [v.expansion, v.uExpansion, v.nuExpansion],
      [v.expansionDifference, v.uExpansionDifference, v.nuExpansionDifference],
      [v.temperature, v.uTemperature, v.nuTemperature],
      [0, v.uCyclic, v.nuCyclic],
      [v.temperatureDifference, v.uTemperatureDifference, v.nuTemperatureDifference],
    ];
    const doubts = modelDoubt(
      comparisonLength,
      rows.map(([value, standard]) => ({ value, standard })),
    );
    const lines = doubts.effects.map((standard, at) => ({
      standard,
      sensitivity: 1,
      degrees: rows[at]?.[2] ?? Number.POSITIVE_INFINITY,
    }));
    // Without correlations a budget always has an answer.
    const { effectiveDegrees } = budgetOf(lines)!;
    return answer({
      length: asLength(comparisonLength(rows.map(([value]) => value))),
      contributions: asLengths(doubts.effects),
      combined: asLength(doubts.first),
      combinedSecondOrder: asLength(doubts.second),
      effectiveDegrees: effectiveDegrees === Number.POSITIVE_INFINITY ? undefined : asRatio(effectiveDegrees),
      wholeDegrees: countable(wholeDegrees(effectiveDegrees)),
      ...expandedOf(doubts.first, effectiveDegrees, v.level),
    });
  },
});

function expandedOf(combined: number, degreesFound: number, at: number) {
  const { coverage, expanded } = expand(combined, degreesFound, at);
  return { coverage: asRatio(coverage), expanded: asLength(expanded) };
}
