import type { Length, Stiffness } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { boltResilience as find, type Partner, wholeResilience } from '../resilience.js';
import { preload, thread } from './inputs.js';
import { boltModulus, complianceOut, length, modulus, span, stiffnessOut } from './joint-inputs.js';

const stretch = { kind: 'length', unit: 'mm', places: 4, optional: true } as const;

export const boltResilience = defineCalculation({
  id: 'fasteners.bolt-resilience',
  subject: 'fasteners',
  title: 'Resilience of a bolt with head and engaged thread',
  summary: 'How much a bolt gives for each unit of force, with what gives inside the head, the thread and the nut.',
  inputs: {
    thread,
    modulus: boltModulus,
    shankLengths: { ...length, symbol: 'L', meaning: 'length of each shank segment', list: true, optional: true },
    shankDiameters: { ...length, symbol: 'D', meaning: 'diameter of each shank segment', list: true, optional: true },
    freeThread: { ...span, symbol: 'LG', meaning: 'thread between the shank and where it is screwed in', default: 0 },
    threadArea: {
      kind: 'choice',
      symbol: 'A',
      meaning: 'section that counts for thread; left out: root d3 for metric, stress area for unified threads',
      choices: ['root', 'stress'],
      optional: true,
    },
    head: {
      kind: 'choice',
      symbol: 'head',
      meaning: 'allowance for the head: hexagon 0.5·d, socket 0.4·d, none for a stud',
      choices: ['hexagon', 'socket', 'none'],
      default: 'hexagon',
    },
    into: {
      kind: 'choice',
      symbol: 'into',
      meaning: 'what it is screwed into: tapped part or nut, with the engaged thread; none leaves both out',
      choices: ['tapped', 'nut', 'none'],
      default: 'tapped',
    },
    tappedModulus: { ...modulus, symbol: 'EM', meaning: 'Young’s modulus of the tapped part', optional: true },
    preload: { ...preload, optional: true },
  },
  outputs: {
    headCompliance: { ...complianceOut, symbol: 'δK', meaning: 'head' },
    shankCompliance: { ...complianceOut, symbol: 'δ1', meaning: 'shank' },
    freeThreadCompliance: { ...complianceOut, symbol: 'δG', meaning: 'free thread' },
    engagedThreadCompliance: { ...complianceOut, symbol: 'δGe', meaning: 'engaged thread' },
    partnerCompliance: { ...complianceOut, symbol: 'δM', meaning: 'tapped part or nut' },
    compliance: { ...complianceOut, symbol: 'δS', meaning: 'the whole bolt' },
    stiffness: { ...stiffnessOut, symbol: '1/δS', meaning: 'stiffness of the bolt' },
    stretch: { ...stretch, symbol: 'x', meaning: 'stretch at the preload, allowances included' },
    plainStretch: { ...stretch, symbol: 'x0', meaning: 'stretch of shank and free thread alone' },
  },
  formula:
    'δS = Σ L/(E·A): head 0.5·d or 0.4·d on π·d²/4, free thread on A, engaged 0.5·d on A, tapped 0.33·d/EM or nut 0.4·d/ES on π·d²/4',
  assumptions: [
    'Elastic. The allowances are a sixth of a long bolt and more of a short one: without them a turn is predicted too small.',
  ],
  sources: ['vdi-2230'],
  example: {
    inputs: {
      thread: 'M10 x 1.5',
      modulus: '205 GPa',
      shankLengths: ['60 mm'],
      shankDiameters: ['10 mm'],
      freeThread: '25 mm',
      tappedModulus: '110 GPa',
      preload: '30 kN',
    },
    outputs: { compliance: '7.218 µm/kN', stretch: '0.2165 mm', plainStretch: '0.1818 mm' },
    from: 'reference row O-21',
  },
  compute: (v) => {
    const [lengths, diameters] = [v.shankLengths ?? [], v.shankDiameters ?? []];
    if (lengths.length !== diameters.length) {
      return conflict(['shankLengths', 'shankDiameters'], 'each shank segment needs its length and its diameter');
    }
    if (v.threadArea === 'root' && v.thread.form === 'unified') {
      return conflict(['thread', 'threadArea'], 'the root d3 belongs to metric threads: take the stress area');
    }
    const partner = partnerOf(v.into, v.tappedModulus);
    if (!partner) return conflict(['into', 'tappedModulus'], 'a tapped part, and nothing else, has a tappedModulus');
    const parts = find({
      thread: v.thread,
      modulus: v.modulus,
      shank: lengths.map((one, at) => ({ length: one, diameter: diameters[at]! })),
      freeThread: v.freeThread as Length,
      threadArea: v.threadArea ?? (v.thread.form === 'metric' ? 'root' : 'stress'),
      head: v.head,
      partner,
    });
    const compliance = wholeResilience(parts);
    if (!(compliance > 0)) return conflict(['freeThread', 'head', 'into'], 'nothing of the bolt is left to stretch');
    const at = (given: number) => (v.preload === undefined ? undefined : ((v.preload * given) as Length));
    return answer({
      headCompliance: parts.head,
      shankCompliance: parts.shank,
      freeThreadCompliance: parts.freeThread,
      engagedThreadCompliance: parts.engagedThread,
      partnerCompliance: parts.partner,
      compliance,
      stiffness: (1 / compliance) as Stiffness,
      stretch: at(compliance),
      plainStretch: at(parts.shank + parts.freeThread),
    });
  },
});

function partnerOf(
  into: 'tapped' | 'nut' | 'none',
  tapped: Extract<Partner, { kind: 'tapped' }>['modulus'] | undefined,
) {
  if (into === 'tapped') return tapped === undefined ? undefined : ({ kind: into, modulus: tapped } as const);
  return tapped === undefined ? ({ kind: into } as const) : undefined;
}
