import { kelvinDifference, type Length } from '../../../quantity/index.js';
import { answer, type Caution, defineCalculation } from '../../catalogue/index.js';
import { gripGoneAt, warmInterference } from '../thermal-fit.js';
import { fitPressure, fitStresses } from '../thick-cylinder.js';
import { expansion, interference, rings, rise, stress } from './inputs.js';
import { noWall, pairOf } from './pair.js';

const change = { kind: 'length', unit: 'mm', places: 4 } as const;
const loose: Caution = { code: 'no-grip', text: 'no interference is left at this temperature: the part is loose' };
const HUNDRED = kelvinDifference(100);

export const hotGrip = defineCalculation({
  id: 'fits.grip-at-temperature',
  subject: 'fits',
  title: 'Grip of a press fit hot or cold',
  summary:
    'Interference and pressure left when hub and shaft of different materials change temperature, and when it ends.',
  inputs: {
    ...rings,
    interference,
    hubExpansion: { ...expansion, symbol: 'αh', meaning: 'thermal expansion of the hub' },
    shaftExpansion: { ...expansion, symbol: 'αs', meaning: 'thermal expansion of the shaft, ring or guide' },
    hubRise: { ...rise, symbol: 'ΔTh', meaning: 'rise of the hub’s temperature from where the interference holds' },
    shaftRise: { ...rise, symbol: 'ΔTs', meaning: 'rise of the shaft’s; left out: as the hub', optional: true },
  },
  outputs: {
    coldPressure: { ...stress, symbol: 'p0', meaning: 'pressure before', places: 2 },
    interference: { ...change, symbol: 'δ(T)', meaning: 'interference left; negative: a gap' },
    loss: { ...change, symbol: 'Δδ', meaning: 'interference lost; negative: gained' },
    lossPerHundred: { ...change, symbol: 'Δδ/100 K', meaning: 'lost for each 100 K that both rise together' },
    pressure: { ...stress, symbol: 'p(T)', meaning: 'pressure left', places: 2 },
    hubBoreHoop: { ...stress, symbol: 'σh', meaning: 'hoop stress at the hub bore then, tension' },
    gripGoneRise: {
      kind: 'temperature-difference',
      symbol: 'ΔT0',
      meaning: 'common rise at which no grip is left',
      unit: 'K',
      places: 1,
      optional: true,
    },
  },
  formula: 'δ(T) = δ − d·(αh·ΔTh − αs·ΔTs), then p as in fits.press-fit; ΔT0 = δ/(d·(αh − αs))',
  assumptions: [
    'Each part at one temperature. In service the ring is hotter than the head, which helps: a common rise is a bound.',
    'Elastic: no yield and no creep. Moduli as at room temperature.',
  ],
  sources: ['thick-cylinders', 'derived-here'],
  example: {
    inputs: {
      diameter: '40 mm',
      shaftBore: '33 mm',
      hubOutside: '60 mm',
      interference: '0.10 mm',
      hubModulus: '70 GPa',
      hubPoisson: '0.33',
      shaftModulus: '175 GPa',
      shaftPoisson: '0.29',
      hubExpansion: '21.5 ppm/K',
      shaftExpansion: '11.2 ppm/K',
      hubRise: '150 K',
    },
    outputs: { coldPressure: '35.6 MPa', pressure: '13.6 MPa', lossPerHundred: '0.0412 mm', gripGoneRise: '242.7 K' },
    from: 'reference row O-38',
  },
  compute: (v) => {
    const wrong = noWall(v);
    if (wrong) return wrong;
    const pair = pairOf(v);
    const { hubExpansion, shaftExpansion, hubRise, shaftRise = hubRise } = v;
    const left = (hub: typeof hubRise, shaft: typeof hubRise): Length =>
      warmInterference(v.diameter, v.interference, { hubExpansion, shaftExpansion, hubRise: hub, shaftRise: shaft });
    const now = left(hubRise, shaftRise);
    const pressure = fitPressure(pair, now);
    return answer(
      {
        coldPressure: fitPressure(pair, v.interference),
        interference: now,
        loss: (v.interference - now) as Length,
        lossPerHundred: (v.interference - left(HUNDRED, HUNDRED)) as Length,
        pressure,
        hubBoreHoop: fitStresses(pair, pressure).hubBore,
        gripGoneRise: gripGoneAt(v.diameter, v.interference, hubExpansion, shaftExpansion),
      },
      now <= 0 ? [loose] : [],
    );
  },
});
