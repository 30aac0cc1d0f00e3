import { answer, type Caution, conflict, defineCalculation } from '../../catalogue/index.js';
import { boltDepth as find, leastEngagement, tappedMaterials } from '../engagement.js';
import { thread } from './inputs.js';
import { length, span } from './joint-inputs.js';

const out = { kind: 'length', unit: 'mm', places: 2 } as const;
const bottoms: Caution = {
  code: 'bottoms',
  text: 'the bolt meets the end of the hole before it clamps: the torque is read, the joint is loose',
};

export const boltDepth = defineCalculation({
  id: 'fasteners.bolt-depth',
  subject: 'fasteners',
  title: 'Engagement of a bolt in a blind hole, and whether it bottoms',
  summary: 'From the bolt’s length, what lies under its head and the depth of the thread.',
  inputs: {
    thread,
    tapped: { kind: 'choice', symbol: 'into', meaning: 'material of the tapped part', choices: tappedMaterials },
    length: { ...length, symbol: 'l', meaning: 'bolt length under the head' },
    stack: {
      ...span,
      symbol: 't',
      meaning: 'thickness of all that lies under the head: washer, parts, gasket compressed',
      list: true,
    },
    depth: { ...length, symbol: 'h', meaning: 'usable thread from the face of the tapped part down' },
    start: { ...span, symbol: 's', meaning: 'countersink or counterbore without thread at the face', default: 0 },
  },
  outputs: {
    reach: { ...out, symbol: 'r', meaning: 'bolt below the face' },
    engaged: { ...out, symbol: 'Le', meaning: 'thread engaged' },
    least: { ...out, symbol: 'L min', meaning: 'engagement needed by the rule' },
    spare: { ...out, symbol: 'h − r', meaning: 'left to the end of the thread; negative: it bottoms' },
    verdict: { kind: 'text', symbol: 'verdict', meaning: 'bottoms, too short, or holds' },
  },
  formula: 'r = l − Σt; Le = min(r, h) − s; spare = h − r; L min as fasteners.thread-engagement',
  assumptions: ['Gasket at its compressed thickness; the bolt’s point without thread counts as engaged.'],
  sources: ['thread-engagement', 'derived-here'],
  example: {
    inputs: {
      thread: '7/16-14',
      tapped: 'steel or cast iron',
      length: '3.00 in',
      stack: ['0.12 in', '2.10 in', '0.04 in'],
      depth: '0.90 in',
      start: '0.06 in',
    },
    outputs: { reach: '0.74 in', engaged: '0.68 in', least: '0.55 in', spare: '0.16 in', verdict: 'holds' },
    from: 'hand arithmetic',
  },
  compute: (v) => {
    const found = find(v.length, v.stack, v.depth, v.start as typeof v.length);
    if (found.reach <= 0) return conflict(['length', 'stack'], 'the bolt does not reach the tapped part');
    const least = leastEngagement(v.thread, v.tapped);
    const down = found.spare < 0;
    const verdict = down ? 'bottoms' : found.engaged < least * (1 - 1e-9) ? 'too short' : 'holds';
    return answer({ ...found, least, verdict }, down ? [bottoms] : []);
  },
});
