import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { RULES } from '../decision.js';
import { acceptanceOf, guardOf, judge } from '../judge.js';
import { type Flavour, lengths, maybeLength, numbers } from './flavour.js';
import { limitInputs, upsideDown } from './limit-inputs.js';

const verdictEntry = (of: Flavour) =>
  defineCalculation({
    id: `metrology.verdict${of.tail}`,
    subject: 'metrology',
    title: `Verdict on a measured value${of.of} against its limits`,
    summary: 'In, near, out, no data or check again, with the distance to the limit that decides.',
    inputs: {
      rule: {
        kind: 'choice',
        symbol: 'rule',
        meaning:
          'simple: the limit itself decides; guarded: in only where the guard band is kept too; guarded-rejection: out only beyond the limit by more than the guard band',
        choices: RULES,
      },
      readings: {
        ...of.input,
        symbol: 'x',
        meaning: 'readings of the one size, whose mean is judged; left out: not measured',
        list: true,
        optional: true,
      },
      ...limitInputs(of),
      expanded: {
        ...of.size,
        symbol: 'U',
        meaning: 'expanded uncertainty of the value; left out: not known',
        optional: true,
      },
      guardFactor: {
        kind: 'ratio',
        symbol: 'r',
        meaning: 'guard band as a share of U: 1 in full, 0.83 for one-sided 95 %, 0 for none',
        unit: '',
        range: { from: 0, to: 10 },
        default: 1,
      },
      nearBand: {
        ...of.size,
        symbol: 'n',
        meaning:
          'distance to a limit within which "in" becomes "near"; left out: the guard band, or U by the simple rule',
        optional: true,
      },
      agreement: {
        ...of.size,
        symbol: 'a',
        meaning: 'largest difference that readings of one size may have; left out: √2·U where U is known',
        optional: true,
      },
    },
    outputs: {
      verdict: { kind: 'text', symbol: 'verdict', meaning: 'in, near, out, no data or check again' },
      accepted: {
        kind: 'text',
        symbol: 'accepted',
        meaning: 'whether the rule accepts: accepted, not accepted or not known',
      },
      zone: {
        kind: 'text',
        symbol: 'zone',
        meaning: 'conformity proven, not proven, nonconformity proven (full U), or not known',
      },
      value: { ...of.output, symbol: 'x̄', meaning: 'value judged', optional: true },
      distance: {
        ...of.output,
        symbol: 'd',
        meaning: 'distance to the limit that decides, positive inside, negative beyond it',
        optional: true,
      },
      limit: { ...of.output, symbol: 'L', meaning: 'limit that decides', optional: true },
      side: { kind: 'text', symbol: 'side', meaning: 'which limit decides: low or high', optional: true },
      guard: { ...of.output, symbol: 'w', meaning: 'guard band', optional: true },
      acceptFrom: { ...of.output, symbol: 'from', meaning: 'smallest value that the rule accepts', optional: true },
      acceptTo: { ...of.output, symbol: 'to', meaning: 'largest value that the rule accepts', optional: true },
    },
    formula:
      'w = r·U; guarded: low + w ≤ x ≤ high − w; guarded-rejection: low − w ≤ x ≤ high + w; simple: low ≤ x ≤ high',
    assumptions: [
      'Limits are inclusive, and a difference that is only rounding of the arithmetic counts as equal.',
      'No reading and no limit both give "no data"; it never counts as in.',
      'Readings that disagree are to be taken again before anything is decided.',
    ],
    sources: ['iso-14253-1', 'jcgm-106'],
    example: {
      inputs: {
        rule: 'guarded',
        readings: of.texts(['10.09']),
        low: of.text('9.9'),
        high: of.text('10.1'),
        expanded: of.text('0.02'),
      },
      outputs: { verdict: 'near', zone: 'not proven', distance: of.text('0.01'), acceptTo: of.text('10.08') },
      from: 'ISO 14253-1 zones (recalled); reference row O-32',
    },
    compute: (v) => {
      const wrong = upsideDown(v);
      if (wrong) return wrong;
      const found = judge(v);
      if (!found) return conflict(['rule'], NEEDS_DOUBT);
      const { nearest } = found;
      const { from, to } = acceptanceOf(v);
      return answer(
        {
          verdict: found.verdict,
          accepted: found.accepted,
          zone: found.zone,
          value: maybeLength(found.value),
          distance: maybeLength(nearest?.distance),
          limit: maybeLength(nearest?.limit),
          side: nearest?.side,
          guard: maybeLength(guardOf(v)),
          acceptFrom: maybeLength(from),
          acceptTo: maybeLength(to),
        },
        from !== undefined && to !== undefined && from > to ? [NOTHING_LEFT] : [],
      );
    },
  });

const NEEDS_DOUBT = 'a guard band needs the expanded uncertainty; without it only the simple rule can be used';
const NOTHING_LEFT = { code: 'nothing-acceptable', text: 'the guard bands leave no size that could be accepted' };

export const verdictLength = verdictEntry(lengths);
export const verdictNumber = verdictEntry(numbers);
