import type { Force } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { tighteningArm } from '../torque.js';
import { noRing } from './faults.js';
import { form, headFriction, ring, thread, threadFriction, torque } from './inputs.js';

export const preloadFromTorque = defineCalculation({
  id: 'fasteners.preload-from-torque',
  subject: 'fasteners',
  title: 'Preload of a torque, long form',
  summary: 'Preload that a torque makes at stated friction in the thread and under the head.',
  inputs: { thread, torque, threadFriction, headFriction, ...ring, form },
  outputs: { preload: { kind: 'force', symbol: 'F', meaning: 'preload', unit: 'kN', places: 2 } },
  formula: 'F = T/[d2/2·tan(φ + ρ) + μK·(dw + dh)/4]; tan φ = P/(π·d2), tan ρ = μG/cos 30°',
  assumptions: ['One friction gives one number; real friction scatters: see fasteners.preload-band.'],
  sources: ['vdi-2230'],
  example: {
    inputs: {
      thread: 'M10 x 1.25',
      torque: '60 N·m',
      threadFriction: '0.10',
      headFriction: '0.10',
      bearingOutside: '14.6 mm',
      bearingHole: '11.0 mm',
      form: 'printed',
    },
    outputs: { preload: '43.7 kN' },
    from: 'reference row O-16',
  },
  compute: (v) => {
    if (v.bearingOutside <= v.bearingHole) return noRing(v.bearingHole);
    const friction = { thread: v.threadFriction, head: v.headFriction };
    const arm = tighteningArm(v.thread, friction, { outside: v.bearingOutside, hole: v.bearingHole }, v.form);
    return answer({ preload: (v.torque / arm) as Force });
  },
});
