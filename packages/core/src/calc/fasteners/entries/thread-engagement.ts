import type { Ratio } from '../../../quantity/index.js';
import { answer, defineCalculation, verdictOf } from '../../catalogue/index.js';
import { leastEngagement, tappedMaterials } from '../engagement.js';
import { thread } from './inputs.js';
import { span } from './joint-inputs.js';

export const threadEngagement = defineCalculation({
  id: 'fasteners.thread-engagement',
  subject: 'fasteners',
  title: 'Least thread engagement',
  summary: 'Engaged thread that a tapped part needs, and whether what is there reaches it.',
  inputs: {
    thread,
    tapped: { kind: 'choice', symbol: 'into', meaning: 'material of the tapped part', choices: tappedMaterials },
    engaged: { ...span, symbol: 'Le', meaning: 'engaged thread as measured or worked out', optional: true },
  },
  outputs: {
    least: { kind: 'length', symbol: 'L min', meaning: 'least engagement', unit: 'mm', places: 1 },
    diameters: { kind: 'ratio', symbol: 'L min/d', meaning: 'in nominal diameters', unit: '', places: 2 },
    verdict: { kind: 'text', symbol: 'verdict', meaning: 'in or below; no data without an engagement' },
  },
  formula: 'L min = 2·d in aluminium, 1.25·d in steel or cast iron',
  assumptions: [
    'Rule for bolts up to about class 8.8 at 75 % of proof. A bolt that bottoms reads torque without clamping.',
  ],
  sources: ['thread-engagement'],
  example: {
    inputs: { thread: 'M10 x 1.5', tapped: 'aluminium' },
    outputs: { least: '20 mm', diameters: '2' },
    from: 'reference row O-32',
  },
  compute: (v) => {
    const least = leastEngagement(v.thread, v.tapped);
    return answer({
      least,
      diameters: (least / v.thread.diameter) as Ratio,
      verdict: v.engaged === undefined ? 'no data' : verdictOf(v.engaged, least, undefined),
    });
  },
});
