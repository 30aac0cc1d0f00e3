import { inch, type Length } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { bore, lengthOut } from './inputs.js';

/** Clearance in inches of a 4 in bore by piston alloy: common practice, no source. */
const RULES = {
  'cast, hypereutectic': [0.0015, 0.0025],
  'forged 4032': [0.0025, 0.0035],
  'forged 2618': [0.0035, 0.005],
} as const;
const AT_BORE = inch(4);

export const clearanceRule = defineCalculation({
  id: 'cylinder.clearance-rule',
  subject: 'cylinder',
  title: 'Piston clearance by alloy, rule of thumb',
  summary: 'A first figure by piston alloy where no sheet is at hand; the piston maker’s sheet always wins.',
  inputs: {
    bore,
    alloy: {
      kind: 'choice',
      symbol: 'alloy',
      meaning: 'piston alloy',
      choices: ['cast, hypereutectic', 'forged 4032', 'forged 2618'],
    },
  },
  outputs: {
    least: lengthOut('cmin', 'lower end of the rule, on diameter', 4),
    most: lengthOut('cmax', 'upper end of the rule, on diameter', 4),
  },
  formula: 'c = c(4 in)·B/4 in',
  assumptions: ['Naturally aspirated, water cooled; more with boost. Rule of thumb in proportion to the bore.'],
  sources: ['shop-practice'],
  example: {
    inputs: { bore: '4.000 in', alloy: 'forged 2618' },
    outputs: { least: '0.0035 in', most: '0.0050 in' },
    from: 'common practice for a 4 in bore, no source',
  },
  compute: (v) => {
    const [least, most] = RULES[v.alloy];
    const scaled = (inches: number) => ((inch(inches) * v.bore) / AT_BORE) as Length;
    const advisory = { code: 'advisory', text: 'a rule of thumb: the piston maker’s sheet outranks it' };
    return answer({ least: scaled(least), most: scaled(most) }, [advisory]);
  },
});
