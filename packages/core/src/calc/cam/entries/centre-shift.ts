import { degrees, type Length, mm } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { backlashLost, chainShift } from '../centre-shift.js';
import { shownAngle, shownLift } from './lobe-inputs.js';

const radius = { kind: 'length', unit: 'mm', range: { above: 0, to: mm(1000) }, optional: true } as const;

export const centreShift = defineCalculation({
  id: 'cam.centre-shift',
  subject: 'cam',
  title: 'Line-bored crankshaft: chain slack, cam timing and gear backlash',
  summary: 'What moving the crankshaft toward the camshaft does to a timing chain or to timing gears.',
  inputs: {
    closer: {
      kind: 'length',
      symbol: 'δ',
      meaning: 'how far the crankshaft moved toward the camshaft, as by line boring; negative: away',
      unit: 'mm',
      range: { from: mm(-5), to: mm(5) },
    },
    drive: {
      kind: 'choice',
      symbol: 'drive',
      meaning: 'chain (or belt) on two sprockets, or two gears',
      choices: ['chain', 'gears'],
    },
    centres: { ...radius, symbol: 'C', meaning: 'chain: distance of the centres' },
    crankRadius: { ...radius, symbol: 'r₁', meaning: 'chain: pitch radius of the crank sprocket' },
    camRadius: {
      ...radius,
      symbol: 'r₂',
      meaning: 'chain: pitch radius of the cam sprocket; left out: twice that of the crank',
    },
    pressureAngle: {
      kind: 'angle',
      symbol: 'α',
      meaning: 'gears: pressure angle',
      unit: 'deg',
      range: { above: 0, to: degrees(45) },
      default: degrees(20),
    },
  },
  outputs: {
    slack: { ...shownLift, symbol: 's', meaning: 'chain: slack gained in all', optional: true },
    retard: { ...shownAngle, places: 3, symbol: 'β', meaning: 'chain: cam later by, crank degrees', optional: true },
    backlashLost: { ...shownLift, symbol: 'b', meaning: 'gears: backlash lost along the pitch circle', optional: true },
  },
  formula: 'chain: s = 2·δ·cos φ, β = 2·δ·cos φ/r₂, sin φ = (r₂ − r₁)/C; gears: b = 2·δ·tan α',
  assumptions: [
    'Small shift; the tight strand runs straight from sprocket to sprocket; no tensioner takes up the slack.',
  ],
  sources: ['derived-here'],
  example: {
    inputs: { closer: '0.10 mm', drive: 'chain', centres: '120 mm', crankRadius: '30 mm', camRadius: '60 mm' },
    outputs: { slack: '0.194 mm', retard: '0.185 deg' },
    from: 'hand arithmetic: sin φ = 1/4, cos φ = 0.96825; 0.193649/60 rad',
  },
  compute: (v) => {
    if (v.drive === 'gears')
      return answer({ slack: undefined, retard: undefined, backlashLost: backlashLost(v.closer, v.pressureAngle) });
    if (v.centres === undefined || v.crankRadius === undefined) {
      return conflict(['centres', 'crankRadius'], 'a chain needs the distance of the centres and the crank sprocket');
    }
    const camRadius = v.camRadius ?? ((2 * v.crankRadius) as Length);
    const apart = Math.abs(camRadius - v.crankRadius);
    if (v.centres <= apart) {
      return conflict(['centres', 'crankRadius', 'camRadius'], 'the sprockets lie inside each other', {
        input: 'centres',
        above: apart,
      });
    }
    return answer({ ...chainShift(v.closer, v.centres, v.crankRadius, camRadius), backlashLost: undefined });
  },
});
