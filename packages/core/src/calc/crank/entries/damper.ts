import { degrees, mm } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { rimChord, rimDistance } from '../damper.js';

export const damperMarks = defineCalculation({
  id: 'crank.damper-marks',
  subject: 'crank',
  title: 'Distance on the damper rim for a crank angle',
  summary: 'How far to mark off along the rim, and how much shorter a straight measurement would be.',
  inputs: {
    diameter: {
      kind: 'length',
      symbol: 'D',
      meaning: 'diameter of the rim',
      unit: 'mm',
      range: { above: 0, to: mm(2000) },
    },
    angle: { kind: 'angle', symbol: 'φ', meaning: 'crank angle', unit: 'deg', range: { from: 0, to: degrees(360) } },
  },
  outputs: {
    alongRim: { kind: 'length', symbol: 's', meaning: 'along the rim, with a tape', unit: 'mm', places: 2 },
    straight: { kind: 'length', symbol: 'c', meaning: 'straight across between the marks', unit: 'mm', places: 2 },
  },
  formula: 's = π·D·φ/360°; c = D·sin(φ/2)',
  assumptions: ['The rim is round and turns true.'],
  sources: ['derived-here'],
  example: {
    inputs: { diameter: '6.75 in', angle: '34 deg' },
    outputs: { alongRim: '2.003 in', straight: '1.974 in' },
    from: 'reference row MO-40',
  },
  compute: (v) => answer({ alongRim: rimDistance(v.diameter, v.angle), straight: rimChord(v.diameter, v.angle) }),
});
