/** Torque wrench with an adapter, both ways. */
import { degrees } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { type Adapter, drives, settingFor, torqueAtFastener } from '../adapter.js';
import { torque } from './inputs.js';
import { length, span } from './joint-inputs.js';

const sizes = {
  wrench: { ...length, symbol: 'L', meaning: 'wrench: drive centre to the middle of the hand grip' },
  adapter: { ...span, symbol: 'A', meaning: 'adapter: drive centre to the centre of the fastener' },
  angle: {
    kind: 'angle',
    symbol: 'a',
    meaning: 'adapter against the wrench: 0 straight ahead, 90° to the side, 180° folded back',
    unit: 'deg',
    range: { from: degrees(-360), to: degrees(360) },
    default: 0,
  },
} as const;
const assumptions = [
  'The hand stays on the grip mark. A straight socket extension needs no correction, and none is due at exactly 90°.',
] as const;
const backwards = conflict(
  ['wrench', 'adapter', 'angle'],
  'the fastener lies behind the hand: it would be turned back',
);
const out = { kind: 'torque', unit: 'N·m', places: 2 } as const;

export const adapterSetting = defineCalculation({
  id: 'fasteners.adapter-setting',
  subject: 'fasteners',
  title: 'Wrench setting with an adapter',
  summary: 'What to set so that the fastener gets the torque wanted, in line or at an angle.',
  inputs: { torque: { ...torque, meaning: 'torque wanted at the fastener' }, ...sizes },
  outputs: { setting: { ...out, symbol: 'Ts', meaning: 'set on the wrench' } },
  formula: 'Ts = T·L/(L + A·cos a)',
  assumptions,
  sources: ['torque-wrench-adapter', 'adapter-sums'],
  example: {
    inputs: { torque: '50 lbf·ft', wrench: '16 in', adapter: '2 in' },
    outputs: { setting: '44.44 lbf·ft' },
    from: 'reference row O-25, sum printed in the source',
  },
  compute: (v) => {
    const fitted: Adapter = { wrench: v.wrench, reach: v.adapter, angle: v.angle };
    return drives(fitted) ? answer({ setting: settingFor(v.torque, fitted) }) : backwards;
  },
});

export const adapterTorque = defineCalculation({
  id: 'fasteners.adapter-torque',
  subject: 'fasteners',
  title: 'Torque at the fastener through an adapter',
  summary: 'What the fastener gets when the wrench shows or clicks at a torque, in line or at an angle.',
  inputs: { setting: { ...torque, symbol: 'Ts', meaning: 'torque set on or shown by the wrench' }, ...sizes },
  outputs: { torque: { ...out, symbol: 'T', meaning: 'torque at the fastener' } },
  formula: 'T = Ts·(L + A·cos a)/L',
  assumptions,
  sources: ['torque-wrench-adapter', 'adapter-sums'],
  example: {
    inputs: { setting: '20 lbf·ft', wrench: '12 in', adapter: '6 in' },
    outputs: { torque: '30.00 lbf·ft' },
    from: 'reference row O-25 (b) the other way round',
  },
  compute: (v) => {
    const fitted: Adapter = { wrench: v.wrench, reach: v.adapter, angle: v.angle };
    return drives(fitted) ? answer({ torque: torqueAtFastener(v.setting, fitted) }) : backwards;
  },
});
