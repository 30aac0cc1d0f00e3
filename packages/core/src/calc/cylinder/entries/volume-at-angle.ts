import type { Length, Ratio } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { clearanceForRatio } from '../ratio.js';
import { volumeAt } from '../trapped.js';
import { discVolume } from '../volumes.js';
import { rodTooShort } from './faults.js';
import { bore, crankAngle, lengthOut, ratioOut, roomOut, staticRatio } from './inputs.js';
import { closingInputs } from './trapped-inputs.js';

const { stroke, rodLength, pinOffset } = closingInputs;

export const volumeAtAngle = defineCalculation({
  id: 'cylinder.volume-at-angle',
  subject: 'cylinder',
  title: 'Cylinder volume at a crank angle',
  summary: 'Volume above the piston at any crank angle; exact slider-crank.',
  inputs: {
    bore,
    stroke,
    rodLength,
    pinOffset,
    staticRatio,
    crankAngle: crankAngle('θ', 'crank angle, 0 with the crankpin straight up the cylinder axis'),
  },
  outputs: {
    volume: roomOut('V', 'volume above the piston'),
    clearance: roomOut('Vc', 'clearance volume'),
    drop: lengthOut('x', 'piston below its highest point'),
    share: ratioOut('V/Vmax', 'volume over that at bottom dead centre', 4),
  },
  formula: 'V = Vc + π/4·B²·x(θ), Vc = π/4·B²·S/(CR − 1)',
  assumptions: ['Rigid parts; the clearance volume follows from the static ratio.'],
  sources: ['heywood-crank', 'pulkrabek-crank'],
  example: {
    inputs: {
      bore: '86.0 mm',
      stroke: '86.0 mm',
      rodLength: '166 mm',
      staticRatio: '9.5',
      crankAngle: '20 deg',
    },
    outputs: { drop: '3.246 mm', volume: '77.6 cm3' },
    from: 'hand arithmetic on the engine of reference row MO-06: 58.77 + 58.09 cm² · 3.246 mm',
  },
  compute: (v) => {
    const g = { crankRadius: (v.stroke / 2) as Length, rodLength: v.rodLength, pinOffset: v.pinOffset };
    const swept = discVolume(v.bore, v.stroke);
    const clearance = clearanceForRatio(swept, v.staticRatio);
    const found = volumeAt(g, v.bore, clearance, v.crankAngle);
    if (!found.ok) return rodTooShort(found.fault);
    const { volume, drop } = found.value;
    return answer({ volume, clearance, drop, share: (volume / (clearance + swept)) as Ratio });
  },
});
