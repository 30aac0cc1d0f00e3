import type { Ratio, Torque } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { armsOf, tighteningArm, wholeArm } from '../torque.js';
import { noRing } from './faults.js';
import { form, headFriction, preload, ring, thread, threadFriction } from './inputs.js';

const share = { kind: 'ratio', unit: '%', places: 1 } as const;
const arm = { kind: 'length', unit: 'mm', places: 3 } as const;

export const torqueFromPreload = defineCalculation({
  id: 'fasteners.torque-from-preload',
  subject: 'fasteners',
  title: 'Torque of a preload, long form',
  summary: 'Tightening torque from pitch, thread friction and under-head friction, and where each part of it goes.',
  inputs: { thread, preload, threadFriction, headFriction, ...ring, form },
  outputs: {
    torque: { kind: 'torque', symbol: 'T', meaning: 'tightening torque', unit: 'N·m', places: 2 },
    pitchArm: { ...arm, symbol: 'P/2π', meaning: 'pitch term: the part that stretches the bolt' },
    threadArm: { ...arm, symbol: 'd2·μG/(2·cos 30°)', meaning: 'thread friction term' },
    headArm: { ...arm, symbol: 'μK·(dw + dh)/4', meaning: 'under-head friction term' },
    pitchShare: { ...share, symbol: 'pitch', meaning: 'share of the torque that becomes stretch' },
    threadShare: { ...share, symbol: 'thread', meaning: 'share spent in the thread' },
    headShare: { ...share, symbol: 'head', meaning: 'share spent under the head' },
    nutFactor: { kind: 'ratio', symbol: 'K', meaning: 'equivalent nut factor', unit: '', places: 4 },
  },
  formula:
    'T = F·[d2/2·tan(φ + ρ) + μK·(dw + dh)/4]; tan φ = P/(π·d2), tan ρ = μG/cos 30°; printed: F·[0.16·P + 0.58·d2·μG + …]',
  assumptions: [
    'The split is that of the printed form where it is chosen, else of the linear one. The three forms differ by up to 0.4 %.',
    'Head and nut faces are flat rings; half of the thread angle is 30°.',
  ],
  sources: ['vdi-2230'],
  example: {
    inputs: {
      thread: 'M12 x 1.75',
      preload: '40 kN',
      threadFriction: '0.12',
      headFriction: '0.12',
      bearingOutside: '16.6 mm',
      bearingHole: '13.5 mm',
      form: 'printed',
    },
    outputs: { torque: '77.56 N·m', headArm: '0.903 mm', nutFactor: '0.1616' },
    from: 'reference row O-11',
  },
  compute: (v) => {
    if (v.bearingOutside <= v.bearingHole) return noRing(v.bearingHole);
    const friction = { thread: v.threadFriction, head: v.headFriction };
    const faces = { outside: v.bearingOutside, hole: v.bearingHole };
    const arms = armsOf(v.form, v.thread, friction, faces);
    const whole = wholeArm(arms);
    const torque = (tighteningArm(v.thread, friction, faces, v.form) * v.preload) as Torque;
    return answer({
      torque,
      pitchArm: arms.pitch,
      threadArm: arms.thread,
      headArm: arms.head,
      pitchShare: (arms.pitch / whole) as Ratio,
      threadShare: (arms.thread / whole) as Ratio,
      headShare: (arms.head / whole) as Ratio,
      nutFactor: (torque / (v.preload * v.thread.diameter)) as Ratio,
    });
  },
});
