import { type Angle, kilograms, type Length, megapascals } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { pistonAcceleration } from '../../crank/index.js';
import { rodStretch } from '../quench.js';
import { crankSpeed } from './crank-speed.js';
import { rodTooShort } from './faults.js';
import { height, lengthOut, rodLength, signedLength, stroke, surface } from './inputs.js';

export const hotQuench = defineCalculation({
  id: 'cylinder.hot-quench',
  subject: 'cylinder',
  title: 'Quench left at speed and hot',
  summary: 'Cold quench less rod stretch, bearing play, piston rock and the growth of the parts; an advisory figure.',
  inputs: {
    quench: signedLength('q', 'cold quench, see cylinder.quench'),
    stroke,
    rodLength,
    crankSpeed: { ...crankSpeed, meaning: 'highest crank speed' },
    mass: {
      kind: 'mass',
      symbol: 'm',
      meaning: 'piston, pin, rings and about half of the rod’s beam',
      unit: 'g',
      range: { above: 0, to: kilograms(500) },
    },
    rodSection: surface('A', 'mean section of the rod’s beam'),
    rodModulus: {
      kind: 'pressure',
      symbol: 'E',
      meaning: 'elastic modulus of the rod: steel about 207 GPa, aluminium about 71 GPa',
      unit: 'GPa',
      range: { above: megapascals(1000), to: megapascals(1e6) },
    },
    bearingPlay: {
      ...height('j', 'oil clearances of rod and main bearing and pin that open upward, together'),
      default: 0,
    },
    rock: { ...height('k', 'rise of the crown’s edge by piston rock'), default: 0 },
    growth: { ...signedLength('g', 'rod and piston grow more than block and gasket: positive'), default: 0 },
  },
  outputs: {
    hotQuench: lengthOut('qh', 'quench left; 0 or below: contact'),
    stretch: lengthOut('δ', 'rod stretch'),
  },
  formula: 'qh = q − δ − j − k − g, δ = m·a·l/(A·E), a = r·ω²·(1 + r/l)',
  assumptions: [
    'The rod as a plain bar; cap, ends and crank bend as well and add to it. Advisory: keep the maker’s minimum.',
  ],
  sources: ['derived-here'],
  example: {
    inputs: {
      quench: '1.00 mm',
      stroke: '88.392 mm',
      rodLength: '144.78 mm',
      crankSpeed: '6500 rpm',
      mass: '1000 g',
      rodSection: '200 mm2',
      rodModulus: '207 GPa',
      bearingPlay: '0.10 mm',
    },
    outputs: { stretch: '0.0935 mm', hotQuench: '0.807 mm' },
    from: 'hand arithmetic: 26 728 N (reference row MO-09) · 144.78 mm/(200 mm² · 207 000 N/mm²)',
  },
  compute: (v) => {
    const g = { crankRadius: (v.stroke / 2) as Length, rodLength: v.rodLength, pinOffset: 0 as Length };
    const pull = pistonAcceleration(g, TOP, v.crankSpeed);
    if (!pull.ok) return rodTooShort(pull.fault);
    const stretch = rodStretch(v.mass, pull.value, v.rodLength, v.rodSection, v.rodModulus);
    const hot = (v.quench - stretch - v.bearingPlay - v.rock - v.growth) as Length;
    const touch = { code: 'contact', text: 'the piston would touch the head' };
    return answer({ hotQuench: hot, stretch }, hot <= 0 ? [touch] : []);
  },
});

const TOP = 0 as Angle;
