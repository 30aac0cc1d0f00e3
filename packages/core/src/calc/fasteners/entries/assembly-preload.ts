import { megapascals, type Torque } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { assemblyPreload as find } from '../assembly.js';
import { tighteningArm } from '../torque.js';
import { noRing } from './faults.js';
import { form, headFriction, ring, thread, threadFriction, torsion } from './inputs.js';

export const assemblyPreload = defineCalculation({
  id: 'fasteners.assembly-preload',
  subject: 'fasteners',
  title: 'Largest assembly preload at a share of the yield strength',
  summary: 'Preload, and with the bearing ring the torque, at which tension and twist together reach a share of yield.',
  inputs: {
    thread,
    yieldStrength: {
      kind: 'pressure',
      symbol: 'Re',
      meaning: 'minimum yield strength (0.2 %)',
      unit: 'MPa',
      range: { above: 0, to: megapascals(3000) },
    },
    utilisation: {
      kind: 'ratio',
      symbol: 'ν',
      meaning: 'share of the yield strength to use',
      unit: '%',
      range: { above: 0, to: 1 },
      default: 0.9,
    },
    threadFriction,
    headFriction: { ...headFriction, optional: true },
    bearingOutside: { ...ring.bearingOutside, optional: true },
    bearingHole: { ...ring.bearingHole, optional: true },
    torsion,
    form,
  },
  outputs: {
    preload: { kind: 'force', symbol: 'F', meaning: 'largest assembly preload', unit: 'kN', places: 2 },
    torque: { kind: 'torque', symbol: 'T', meaning: 'torque that makes it', unit: 'N·m', places: 1, optional: true },
  },
  formula: 'F = As·ν·Re/√(1 + 3·(c·d2/d0·tan(φ + ρ))²), c = 1.5 plastic or 2.0 elastic torsion; T by the long form',
  assumptions: [
    'A maximum, not a target with margin. The maker’s own torque outranks it.',
    'Tables of older editions count elastic torsion and lie 8 to 10 % lower: store the edition beside the number.',
  ],
  sources: ['vdi-2230', 'vdi-2230-table'],
  example: {
    inputs: {
      thread: 'M10 x 1.25',
      yieldStrength: '940 MPa',
      utilisation: '90 %',
      threadFriction: '0.12',
      headFriction: '0.12',
      bearingOutside: '14.6 mm',
      bearingHole: '11.0 mm',
    },
    outputs: { preload: '46.40 kN', torque: '74.6 N·m' },
    from: 'reference row O-12, reprinted table (46.4 kN, 75 N·m)',
  },
  compute: (v) => {
    const preload = find(v.thread, v.yieldStrength, v.utilisation, v.threadFriction, v.torsion);
    const { headFriction: head, bearingOutside: outside, bearingHole: hole } = v;
    const given = [head, outside, hole].filter((one) => one !== undefined).length;
    if (given === 0) return answer({ preload, torque: undefined });
    if (head === undefined || outside === undefined || hole === undefined) {
      return conflict(
        ['headFriction', 'bearingOutside', 'bearingHole'],
        'the torque needs headFriction, bearingOutside and bearingHole together',
      );
    }
    if (outside <= hole) return noRing(hole);
    const arm = tighteningArm(v.thread, { thread: v.threadFriction, head }, { outside, hole }, v.form);
    return answer({ preload, torque: (arm * preload) as Torque });
  },
});
