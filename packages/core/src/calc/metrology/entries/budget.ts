import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { type BudgetLine, budgetOf, type Correlation, expand, wholeDegrees } from '../budget.js';
import { asLength, asLengths, type Flavour, lengths, numbers } from './flavour.js';
import { asRatio, asRatios, countable, degreesOfFreedom, level } from './inputs.js';

const PAIR = /^\s*(\d{1,4})\s*[-,:]\s*(\d{1,4})\s*[:=]\s*([-+−]?(?:\d+\.?\d*|\.\d+))\s*$/;

/** "1-2: 0.8": inputs 1 and 2 of the list, correlation 0.8. */
function readCorrelation(text: string): Correlation | undefined {
  const found = PAIR.exec(text);
  if (!found) return undefined;
  const [one, other] = [Number(found[1]) - 1, Number(found[2]) - 1] as const;
  const coefficient = Number(found[3]!.replace('−', '-'));
  return one !== other && Math.min(one, other) >= 0 && Math.abs(coefficient) <= 1
    ? { one, other, coefficient }
    : undefined;
}

const budgetEntry = (of: Flavour) =>
  defineCalculation({
    id: `metrology.budget${of.tail}`,
    subject: 'metrology',
    title: `Uncertainty budget${of.of}`,
    summary: 'Combined and expanded uncertainty of a result from its contributions, and which of them matters most.',
    inputs: {
      standards: { ...of.size, symbol: 'u', meaning: 'standard uncertainty of each input', list: true },
      sensitivities: {
        kind: 'ratio',
        symbol: 'c',
        meaning:
          'sensitivity: change of the result for one unit of each input; left out: 1 each; 2 for a shell wall that counts twice',
        unit: '',
        range: { from: -1e12, to: 1e12 },
        list: true,
        optional: true,
      },
      degrees: {
        ...degreesOfFreedom,
        meaning:
          'degrees of freedom of each standard uncertainty (readings less one, or "inf"); left out: infinite each',
        list: true,
        optional: true,
      },
      correlations: {
        kind: 'text',
        symbol: 'r',
        meaning: 'pairs of inputs that move together, such as "1-2: 0.8"; pairs left out are independent',
        expected: 'two places of the list and a coefficient from -1 to 1, such as "1-2: 0.8"',
        read: readCorrelation,
        list: true,
        optional: true,
      },
      level,
    },
    outputs: {
      combined: { ...of.output, places: 6, symbol: 'u', meaning: 'combined standard uncertainty' },
      contributions: { ...of.output, places: 6, symbol: 'c·u', meaning: 'contribution of each input', list: true },
      shares: { kind: 'ratio', symbol: 'share', meaning: 'share of the variance', unit: '%', places: 1, list: true },
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
      expanded: { ...of.output, places: 6, symbol: 'U', meaning: 'expanded uncertainty' },
    },
    formula: 'u² = Σ(c·u)² + 2·Σ r·cᵢuᵢ·cⱼuⱼ; ν = u⁴/Σ((c·u)⁴/νᵢ); U = t(p, ν)·u',
    assumptions: [
      'The result is near enough linear over each uncertainty.',
      'The rule for ν holds for independent inputs; with correlations it is an estimate.',
    ],
    sources: ['gum-welch'],
    example: {
      inputs: { standards: of.texts(['0.0025', '0.0015', '0.0010', '0.0010']) },
      outputs: { combined: of.text('0.00324') },
      from: 'reference row O-30: housing, journal and two shells',
    },
    compute: (v) => {
      const n = v.standards.length;
      for (const name of ['sensitivities', 'degrees'] as const)
        if (v[name] && v[name].length !== n) return conflict(['standards', name], 'one value each is needed');
      if (v.correlations?.some(({ one, other }) => Math.max(one, other) >= n))
        return conflict(['correlations'], `there are only ${n} inputs to pair`);
      const lines = v.standards.map(
        (standard, at): BudgetLine => ({
          standard,
          sensitivity: v.sensitivities?.[at] ?? 1,
          degrees: v.degrees?.[at] ?? Number.POSITIVE_INFINITY,
        }),
      );
      const found = budgetOf(lines, v.correlations);
      if (!found)
        return conflict(['correlations'], 'no inputs can be correlated like this: the variance would be negative');
      const { effectiveDegrees, combined } = found;
      const expanded = expand(combined, effectiveDegrees, v.level);
      const mixed = v.correlations && countable(effectiveDegrees) !== undefined;
      const caution = {
        code: 'degrees-estimated',
        text: 'degrees of freedom are an estimate where inputs are correlated',
      };
      return answer(
        {
          combined: asLength(combined),
          contributions: asLengths(found.contributions),
          shares: asRatios(found.shares),
          effectiveDegrees: effectiveDegrees === Number.POSITIVE_INFINITY ? undefined : asRatio(effectiveDegrees),
          wholeDegrees: countable(wholeDegrees(effectiveDegrees)),
          coverage: asRatio(expanded.coverage),
          expanded: asLength(expanded.expanded),
        },
        mixed ? [caution] : [],
      );
    },
  });

export const budget = budgetEntry(lengths);
export const budgetOfNumbers = budgetEntry(numbers);
