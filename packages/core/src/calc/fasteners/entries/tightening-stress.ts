import { megapascals, type Ratio, type Torque } from '../../../quantity/index.js';
import { answer, type Caution, defineCalculation } from '../../catalogue/index.js';
import { tighteningStress as find } from '../assembly.js';
import { threadPartArm } from '../torque.js';
import { form, preload, thread, threadFriction } from './inputs.js';

const stress = { kind: 'pressure', unit: 'MPa', places: 1 } as const;
const share = { kind: 'ratio', unit: '', places: 3 } as const;
const HALF = 0.5 as Ratio;

export const tighteningStress = defineCalculation({
  id: 'fasteners.tightening-stress',
  subject: 'fasteners',
  title: 'Stress in a bolt while tightening, and after',
  summary:
    'Tension and twist in the shank at a preload, the equivalent stress and how much of the yield strength it uses.',
  inputs: {
    thread,
    preload,
    threadFriction,
    yieldStrength: {
      kind: 'pressure',
      symbol: 'Re',
      meaning: 'minimum yield strength (0.2 %)',
      unit: 'MPa',
      range: { above: 0, to: megapascals(3000) },
    },
    form,
  },
  outputs: {
    threadTorque: { kind: 'torque', symbol: 'MG', meaning: 'torque that reaches the thread', unit: 'N·m', places: 2 },
    tension: { ...stress, symbol: 'σ', meaning: 'tension' },
    elasticTorsion: { ...stress, symbol: 'τel', meaning: 'twist at first yield of the outer fibre' },
    plasticTorsion: { ...stress, symbol: 'τpl', meaning: 'twist with the whole section yielding' },
    elasticEquivalent: { ...stress, symbol: 'σeq,el', meaning: 'equivalent stress, elastic torsion' },
    plasticEquivalent: { ...stress, symbol: 'σeq,pl', meaning: 'equivalent stress, plastic torsion' },
    elasticUtilisation: { ...share, symbol: 'νel', meaning: 'share of yield used, elastic torsion' },
    plasticUtilisation: { ...share, symbol: 'νpl', meaning: 'share of yield used, plastic torsion' },
    relaxedEquivalent: {
      ...stress,
      symbol: 'σred',
      meaning: 'equivalent stress after half of the elastic twist is gone',
    },
  },
  formula: 'σ = F/As; τ = MG/Wp, Wp = π·d0³/16 elastic or π·d0³/12 plastic; σeq = √(σ² + 3·τ²); afterwards with 0.5·τ',
  assumptions: ['Only the thread torque twists the shank; the part under the head never reaches it.'],
  sources: ['vdi-2230'],
  example: {
    inputs: {
      thread: 'M10 x 1.25',
      preload: '40 kN',
      threadFriction: '0.12',
      yieldStrength: '940 MPa',
      form: 'printed',
    },
    outputs: {
      threadTorque: '33.58 N·m',
      tension: '653.6 MPa',
      elasticTorsion: '248.6 MPa',
      elasticEquivalent: '782.7 MPa',
      plasticEquivalent: '729.1 MPa',
      relaxedEquivalent: '688.2 MPa',
    },
    from: 'reference row O-15',
  },
  compute: (v) => {
    const threadTorque = (threadPartArm(v.thread, v.threadFriction, v.form) * v.preload) as Torque;
    const elastic = find(v.thread, v.preload, threadTorque, 'elastic');
    const plastic = find(v.thread, v.preload, threadTorque, 'plastic');
    const relaxed = find(v.thread, v.preload, threadTorque, 'elastic', HALF);
    const plasticUtilisation = (plastic.equivalent / v.yieldStrength) as Ratio;
    return answer(
      {
        threadTorque,
        tension: elastic.tension,
        elasticTorsion: elastic.torsion,
        plasticTorsion: plastic.torsion,
        elasticEquivalent: elastic.equivalent,
        plasticEquivalent: plastic.equivalent,
        elasticUtilisation: (elastic.equivalent / v.yieldStrength) as Ratio,
        plasticUtilisation,
        relaxedEquivalent: relaxed.equivalent,
      },
      plasticUtilisation > 1 ? [pastYield] : [],
    );
  },
});

const pastYield: Caution = {
  code: 'past-yield',
  text: 'the bolt yields while it is tightened: this elastic figure no longer holds',
};
