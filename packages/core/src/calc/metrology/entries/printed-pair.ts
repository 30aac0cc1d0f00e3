import { formatQuantity, lastPlace, parseQuantity, printedAlike, type Typed } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { asLengths, lengths } from './flavour.js';

const readPrinted = (text: string): Typed | undefined => {
  const read = parseQuantity('length', text);
  return read.ok ? read.value : undefined;
};
const printed = {
  kind: 'text',
  expected: 'a length with its unit as printed, such as "81.006 mm" or "3.1892 in"; its places count',
  read: readPrinted,
  list: true,
} as const;

export const printedPair = defineCalculation({
  id: 'metrology.printed-pair',
  subject: 'metrology',
  title: 'Do figures printed in two units agree?',
  summary: 'Finds misprints: a figure and its conversion that cannot both be right, and a band that is upside down.',
  inputs: {
    first: { ...printed, symbol: 'a', meaning: 'figures in one unit, such as the ends of a band' },
    second: { ...printed, symbol: 'b', meaning: 'the same figures in the other unit' },
    rising: {
      kind: 'choice',
      symbol: 'rising',
      meaning: 'whether the figures must rise, as the ends of a band do',
      choices: ['yes', 'no'],
      default: 'yes',
    },
  },
  outputs: {
    verdict: { kind: 'text', symbol: 'verdict', meaning: 'agree, or misprint: look it up again' },
    differences: { ...lengths.output, symbol: 'b − a', meaning: 'second less first, each', list: true },
    allowed: { ...lengths.output, symbol: '≤', meaning: '0.6 of the last digit of the coarser one, each', list: true },
    findings: { kind: 'text', symbol: 'finding', meaning: 'what disagrees', list: true },
    converted: {
      kind: 'text',
      symbol: 'a→b',
      meaning: 'first figures in the unit and places of the second',
      list: true,
    },
  },
  formula: '|b − a| ≤ 0.6 of the last digit of the coarser',
  assumptions: ['Rounding explains half of the last digit; a little more is left for figures that were cut.'],
  sources: ['shop-practice'],
  example: {
    inputs: { first: ['81.006 mm', '81.019 mm'], second: ['3.1892 in', '3.1897 in'] },
    outputs: { verdict: 'agree', converted: ['3.1892 in', '3.1897 in'] },
    from: 'reference row O-05',
  },
  compute: (v) => {
    const { first, second } = v;
    if (first.length !== second.length)
      return conflict(['first', 'second'], 'both must have the same number of figures');
    const pairs = first.map((one, at) => [one, second[at]!] as const);
    const apart = pairs.flatMap(([one, other]) =>
      printedAlike('length', one, other) ? [] : [`${one.text} is not ${other.text}`],
    );
    const falls = (figures: readonly Typed[]) =>
      figures.slice(1).flatMap((one, at) => {
        const before = figures[at]!;
        return v.rising === 'yes' && one.value < before.value ? [`${before.text} stands before ${one.text}`] : [];
      });
    const findings = [...apart, ...falls(first), ...falls(second)];
    return answer({
      verdict: findings.length === 0 ? 'agree' : 'misprint: look it up again',
      differences: asLengths(pairs.map(([one, other]) => other.value - one.value)),
      allowed: asLengths(
        pairs.map(([one, other]) => 0.6 * Math.max(lastPlace('length', one), lastPlace('length', other))),
      ),
      findings,
      converted: pairs.map(([one, other]) => formatQuantity('length', one.value, other.unit, other.places)),
    });
  },
});
