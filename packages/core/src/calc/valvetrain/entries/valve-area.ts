import { type Area, degrees, type Length, mm, type Ratio } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { valveArea as areaOf } from '../curtain.js';
import { smallLength } from './inputs.js';

const diameter = { kind: 'length', unit: 'mm', range: { above: 0, to: mm(1000) } } as const;
const area = { kind: 'area', unit: 'mm2', places: 1 } as const;

export const valveArea = defineCalculation({
  id: 'valvetrain.valve-area',
  subject: 'valvetrain',
  title: 'Opening area of a valve by its lift',
  summary: 'Simple curtain area, area between seat and valve, and the throat that limits it.',
  inputs: {
    lifts: { ...smallLength, symbol: 'L', meaning: 'valve lifts', list: true },
    headDiameter: { ...diameter, symbol: 'Dv', meaning: 'valve head, outside of the seat' },
    seatWidth: { ...smallLength, symbol: 'w', meaning: 'seat width, radially', default: mm(1.5) },
    seatAngle: {
      kind: 'angle',
      symbol: 'β',
      meaning: 'seat angle from the plane of the head',
      unit: 'deg',
      range: { above: degrees(5), to: degrees(80) },
      default: degrees(45),
    },
    throat: { ...diameter, symbol: 'Dp', meaning: 'throat of the port; left out: inside of the seat', optional: true },
    stem: { ...smallLength, symbol: 'Ds', meaning: 'stem diameter', default: 0 },
  },
  outputs: {
    areas: { ...area, symbol: 'A', meaning: 'opening area at each lift', list: true },
    curtain: { ...area, symbol: 'π·Dv·L', meaning: 'simple curtain area at each lift', list: true },
    throatArea: { ...area, symbol: 'Ap', meaning: 'throat less stem: no lift gives more' },
    liftOverDiameter: {
      kind: 'ratio',
      symbol: 'L/Dv',
      meaning: 'lift over head diameter',
      unit: '',
      places: 3,
      list: true,
    },
  },
  formula:
    'A = π·L·cos β·(Di + L·sin β·cos β) while L < w/(sin β·cos β), then π·Dm·√((L − w·tan β)² + w²), at most Ap; Di = Dv − 2w, Dm = Dv − w',
  assumptions: ['Area by geometry alone: flow coefficients are measured, not computed.'],
  sources: ['heywood-valves'],
  example: {
    inputs: { lifts: ['8 mm'], headDiameter: '40 mm', seatWidth: '2 mm', throat: '34 mm', stem: '8 mm' },
    outputs: { areas: ['755.0 mm2'], curtain: ['1005.3 mm2'], throatArea: '857.7 mm2' },
    from: 'hand arithmetic: π·38·√(6² + 2²)',
  },
  compute: (v) => {
    const inner = v.headDiameter - 2 * v.seatWidth;
    if (inner <= v.stem)
      return conflict(['headDiameter', 'seatWidth', 'stem'], 'the seat leaves no opening', {
        input: 'headDiameter',
        above: 2 * v.seatWidth + v.stem,
      });
    const throat = v.throat ?? inner;
    if (throat <= v.stem)
      return conflict(['throat', 'stem'], 'the stem fills the throat', { input: 'throat', above: v.stem });
    const throatArea = ((Math.PI / 4) * (throat ** 2 - v.stem ** 2)) as Area;
    return answer({
      areas: v.lifts.map((lift) => areaOf(lift, inner as Length, v.seatWidth, v.seatAngle, throatArea)),
      curtain: v.lifts.map((lift) => (Math.PI * v.headDiameter * lift) as Area),
      throatArea,
      liftOverDiameter: v.lifts.map((lift) => (lift / v.headDiameter) as Ratio),
    });
  },
});
