import { type Length, mm } from '../../../quantity/index.js';
import { answer, type Caution, conflict, defineCalculation } from '../../catalogue/index.js';
import { centredLength, narrowestLength } from '../pushrod.js';
import { shownLength } from './spring-inputs.js';

export const pushrodTrials = defineCalculation({
  id: 'valvetrain.pushrod-trials',
  subject: 'valvetrain',
  title: 'Pushrod length from trial lengths and their marks on the stem',
  summary: 'Length with the narrowest mark, and length with the mark in the middle of the stem.',
  inputs: {
    lengths: {
      kind: 'length',
      symbol: 'l',
      meaning: 'trial lengths, in any order',
      unit: 'mm',
      range: { above: 0, to: mm(2000) },
      list: true,
    },
    widths: {
      kind: 'length',
      symbol: 'b',
      meaning: 'width of the mark at each',
      unit: 'mm',
      range: { from: 0, to: mm(50) },
      list: true,
    },
    offsets: {
      kind: 'length',
      symbol: 'c',
      meaning: 'middle of the mark from the middle of the stem at each, away from the pivot positive',
      unit: 'mm',
      range: { from: mm(-25), to: mm(25) },
      list: true,
      optional: true,
    },
  },
  outputs: {
    narrowest: {
      ...shownLength,
      symbol: 'l*',
      meaning: 'length with the narrowest mark; left out: it lies beyond the trials',
      optional: true,
    },
    best: { ...shownLength, symbol: 'l best', meaning: 'trial with the narrowest mark' },
    centred: { ...shownLength, symbol: 'l₀', meaning: 'length with the mark in the middle', optional: true },
    apart: { ...shownLength, symbol: 'l₀ − l*', meaning: 'how far the two are apart', optional: true },
    advice: { kind: 'text', symbol: 'advice', meaning: 'what to do next' },
  },
  formula:
    'vertex of the parabola through the narrowest trial and its neighbours; zero of the straight line of least squares through the offsets',
  assumptions: [
    'A narrow mark counts before a centred one: where the two are far apart, pivot height or rocker is wrong, not the pushrod.',
    'The true curve of the width is made of two arcs: good to a part of the step between trials.',
  ],
  sources: ['shop-practice', 'derived-here'],
  example: {
    inputs: {
      lengths: ['7.40 in', '7.45 in', '7.50 in'],
      widths: ['0.060 in', '0.040 in', '0.060 in'],
      offsets: ['-0.030 in', '0.000 in', '0.030 in'],
    },
    outputs: { narrowest: '7.450 in', best: '7.450 in', centred: '7.450 in', apart: '0.000 in' },
    from: 'hand reasoning: like widths on both sides',
  },
  compute: (v) => {
    const count = v.lengths.length;
    if (v.widths.length !== count || (v.offsets ?? v.widths).length !== count) {
      return conflict(
        ['lengths', 'widths', 'offsets'],
        'each trial needs its width, and each its offset when offsets are given',
      );
    }
    if (new Set(v.lengths).size !== count) return conflict(['lengths'], 'each trial length may stand once');
    const order = v.lengths.map((_, at) => at).sort((a, b) => v.lengths[a]! - v.lengths[b]!);
    const sorted = <T>(list: readonly T[]) => order.map((at) => list[at]!);
    const [lengths, widths] = [sorted(v.lengths), sorted(v.widths)];
    const narrowest = narrowestLength(lengths, widths);
    const centred = v.offsets && centredLength(lengths, sorted(v.offsets));
    const best = widths.indexOf(Math.min(...widths) as Length);
    return answer(
      {
        narrowest,
        best: lengths[best]!,
        centred,
        apart: narrowest === undefined || centred === undefined ? undefined : ((centred - narrowest) as Length),
        advice: adviceOf(best, count, narrowest),
      },
      unlikely(centred, lengths),
    );
  },
});

function adviceOf(best: number, count: number, narrowest: Length | undefined): string {
  if (narrowest !== undefined) return 'use the length with the narrowest mark, and check it';
  if (count < 3) return 'at least three trials are needed to find the narrowest mark';
  return best === 0 ? 'try a shorter one: the mark still narrows' : 'try a longer one: the mark still narrows';
}

const unlikely = (centred: Length | undefined, lengths: readonly Length[]): readonly Caution[] =>
  centred !== undefined && (centred < lengths[0]! || centred > lengths.at(-1)!)
    ? [{ code: 'beyond-trials', text: 'the centred length lies beyond the trials' }]
    : [];
