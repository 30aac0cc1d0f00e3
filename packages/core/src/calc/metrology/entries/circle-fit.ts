import { type Angle, degrees } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { leastSquaresCircle, minimumZoneCircle, type PlanePoints } from '../circle.js';
import { asLength, lengths } from './flavour.js';

const outputs = {
  radius: { ...lengths.output, symbol: 'R', meaning: 'radius of the least-squares circle' },
  diameter: { ...lengths.output, symbol: 'D', meaning: 'its diameter' },
  centreX: { ...lengths.output, symbol: 'x₀', meaning: 'its centre, x' },
  centreY: { ...lengths.output, symbol: 'y₀', meaning: 'its centre, y' },
  eccentricity: { ...lengths.output, symbol: 'e', meaning: 'distance of that centre from the origin' },
  outOfRound: {
    ...lengths.output,
    symbol: 'RONt LS',
    meaning: 'radial out-of-round about that centre: largest less smallest radius',
  },
  minimumZone: { ...lengths.output, symbol: 'RONt MZ', meaning: 'radial out-of-round by the minimum zone' },
  zoneX: { ...lengths.output, symbol: 'x MZ', meaning: 'centre of the minimum zone, x' },
  zoneY: { ...lengths.output, symbol: 'y MZ', meaning: 'centre of the minimum zone, y' },
} as const;
const assumptions = [
  'Radial out-of-round: half of what a difference of diameters says of an oval.',
  'Points all round the part; a short arc says little about centre and radius.',
];
const formula = 'least squares: Σ(|P − C| − R)² smallest; minimum zone: largest less smallest |P − C| smallest';

function fitted(points: PlanePoints, inputs: readonly string[]) {
  const circle = leastSquaresCircle(points);
  if (!circle)
    return conflict(inputs, 'no circle goes through these points: three are needed that are not on one line');
  const zone = minimumZoneCircle(points, circle);
  return answer({
    radius: asLength(circle.radius),
    diameter: asLength(2 * circle.radius),
    centreX: asLength(circle.x),
    centreY: asLength(circle.y),
    eccentricity: asLength(Math.hypot(circle.x, circle.y)),
    outOfRound: asLength(circle.outOfRound),
    minimumZone: asLength(zone.outOfRound),
    zoneX: asLength(zone.x),
    zoneY: asLength(zone.y),
  });
}

export const circleFit = defineCalculation({
  id: 'metrology.circle-fit',
  subject: 'metrology',
  title: 'Circle through points',
  summary: 'Centre, radius and out-of-round of measured points, by least squares and by the minimum zone.',
  inputs: {
    x: { ...lengths.input, symbol: 'x', meaning: 'x of each point', list: true },
    y: { ...lengths.input, symbol: 'y', meaning: 'y of each point', list: true },
  },
  outputs,
  formula,
  assumptions,
  sources: ['circle-fit', 'derived-here'],
  example: {
    inputs: { x: ['12 mm', '2 mm', '-8 mm', '2 mm'], y: ['3 mm', '13 mm', '3 mm', '-7 mm'] },
    outputs: { radius: '10.000 mm', centreX: '2.000 mm', centreY: '3.000 mm', outOfRound: '0.000 mm' },
    from: 'four points of a circle',
  },
  compute: (v) =>
    v.x.length === v.y.length ? fitted(v, ['x', 'y']) : conflict(['x', 'y'], 'one x and one y a point are needed'),
});

export const roundTrace = defineCalculation({
  id: 'metrology.round-trace',
  subject: 'metrology',
  title: 'Circle through readings taken round a part',
  summary: 'Readings of an indicator at angles round a part on a turntable or between centres: centre, out-of-round.',
  inputs: {
    readings: {
      ...lengths.input,
      symbol: 'r',
      meaning: 'radius at each angle, or indicator reading (outward positive) if a nominal radius is given',
      list: true,
    },
    nominal: {
      ...lengths.size,
      symbol: 'r₀',
      meaning: 'nominal radius that the readings are added to; left out: readings are radii',
      default: 0,
    },
    angles: {
      kind: 'angle',
      symbol: 'φ',
      meaning: 'angle of each reading; left out: equal steps round the part, the first at 0 on the x axis',
      unit: 'deg',
      range: { from: degrees(-3600), to: degrees(3600) },
      list: true,
      optional: true,
    },
  },
  outputs,
  formula,
  assumptions,
  sources: ['circle-fit', 'derived-here'],
  example: {
    inputs: { readings: ['0.010 mm', '0 mm', '-0.010 mm', '0 mm'], nominal: '50 mm' },
    outputs: { radius: '50.0000 mm', centreX: '0.0100 mm', centreY: '0.0000 mm' },
    from: 'a round part 0.010 mm off centre',
  },
  compute: (v) => {
    const n = v.readings.length;
    if (v.angles && v.angles.length !== n) return conflict(['readings', 'angles'], 'one angle a reading is needed');
    if (v.readings.some((one) => one + v.nominal <= 0))
      return conflict(['readings', 'nominal'], 'a radius must be above 0: give the nominal radius');
    const angles = v.angles ?? v.readings.map((_, at) => ((2 * Math.PI * at) / n) as Angle);
    const points = {
      x: v.readings.map((one, at) => (one + v.nominal) * Math.cos(angles[at]!)),
      y: v.readings.map((one, at) => (one + v.nominal) * Math.sin(angles[at]!)),
    };
    return fitted(points, ['readings', 'angles']);
  },
});
