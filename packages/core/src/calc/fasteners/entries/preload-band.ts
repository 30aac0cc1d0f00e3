import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { preloadBand as find } from '../scatter.js';
import { noRing } from './faults.js';
import { form, friction, ring, thread, torque } from './inputs.js';

const load = { kind: 'force', unit: 'kN', places: 1 } as const;

export const preloadBand = defineCalculation({
  id: 'fasteners.preload-band',
  subject: 'fasteners',
  title: 'Band of preloads that one torque makes',
  summary: 'Preload at both ends of the friction and of the wrench’s own tolerance.',
  inputs: {
    thread,
    torque,
    wrench: {
      kind: 'ratio',
      symbol: 'w',
      meaning: 'tolerance of the wrench, such as "4 %" for ±4 %',
      unit: '%',
      range: { from: 0, below: 1 },
    },
    lowFriction: { ...friction, symbol: 'μ low', meaning: 'friction in thread and under head, low end' },
    highFriction: { ...friction, symbol: 'μ high', meaning: 'friction in thread and under head, high end' },
    ...ring,
    form,
  },
  outputs: {
    atLowFriction: { ...load, symbol: 'F(μ low)', meaning: 'preload at the low friction, torque exact' },
    atHighFriction: { ...load, symbol: 'F(μ high)', meaning: 'preload at the high friction, torque exact' },
    most: { ...load, symbol: 'F max', meaning: 'most' },
    least: { ...load, symbol: 'F min', meaning: 'least' },
    ratio: { kind: 'ratio', symbol: 'F max/F min', meaning: 'most over least', unit: '', places: 2 },
    middle: { ...load, symbol: 'F mid', meaning: 'middle of the band' },
    halfWidth: { kind: 'ratio', symbol: '±', meaning: 'half of the band over its middle', unit: '%', places: 1 },
  },
  formula: 'F = T·(1 ± w)/arm(μ), arm by the long form, at the corners',
  assumptions: ['The same friction in the thread and under the head. The wrench is the smaller part of the scatter.'],
  sources: ['vdi-2230', 'iso-6789'],
  example: {
    inputs: {
      thread: 'M10 x 1.25',
      torque: '60 N·m',
      wrench: '4 %',
      lowFriction: '0.10',
      highFriction: '0.14',
      bearingOutside: '14.6 mm',
      bearingHole: '11.0 mm',
      form: 'printed',
    },
    outputs: { most: '45.5 kN', least: '31.3 kN', ratio: '1.45', middle: '38.4 kN', halfWidth: '18.5 %' },
    from: 'reference row O-16',
  },
  compute: (v) => {
    if (v.bearingOutside <= v.bearingHole) return noRing(v.bearingHole);
    if (v.lowFriction > v.highFriction) {
      return conflict(['lowFriction', 'highFriction'], 'the low end is above the high end', {
        input: 'highFriction',
        from: v.lowFriction,
      });
    }
    const faces = { outside: v.bearingOutside, hole: v.bearingHole };
    const band = find(v.thread, faces, v.torque, v.wrench, { low: v.lowFriction, high: v.highFriction }, v.form);
    return answer({ ...band, ratio: (band.most / band.least) as typeof band.halfWidth });
  },
});
