import { celsius, type Length, mm, type Temperature, type TemperatureDifference } from '../../../quantity/index.js';
import { answer, type Caution, conflict, defineCalculation } from '../../catalogue/index.js';
import { assemblyChange, grown } from '../thermal-fit.js';
import { expansion, interference, size, temperature } from './inputs.js';

const difference = { kind: 'temperature-difference', unit: 'K', places: 1 } as const;
const tooCold: Caution = {
  code: 'colder-than-possible',
  text: 'chilling alone would have to go below absolute zero: the hub must be heated as well',
};
const constants: Caution = {
  code: 'expansion-falls-in-the-cold',
  text: 'the expansion falls in the cold: a constant one overstates the shrink, by about a fifth down to −196 °C',
};

export const assemblyTemperatures = defineCalculation({
  id: 'fits.assembly-temperatures',
  subject: 'fits',
  title: 'Temperatures at which a shrink fit goes together',
  summary: 'Heating of the hub alone, chilling of the inner part alone, or the rest of the heating with it chilled.',
  inputs: {
    diameter: { ...size, symbol: 'd', meaning: 'diameter where they meet' },
    interference,
    gap: {
      kind: 'length',
      symbol: 'g',
      meaning: 'free gap wanted on the diameter while they go together',
      unit: 'mm',
      range: { from: 0, to: mm(20) },
      default: 0,
    },
    hubExpansion: {
      ...expansion,
      range: { above: 0, to: 1e-4 },
      symbol: 'αh',
      meaning: 'thermal expansion of the hub',
    },
    shaftExpansion: {
      ...expansion,
      range: { above: 0, to: 1e-4 },
      symbol: 'αs',
      meaning: 'thermal expansion of the inner part; without it only heating is worked out',
      optional: true,
    },
    startTemperature: { ...temperature, symbol: 'T0', meaning: 'temperature of both before', default: celsius(20) },
    chilledTo: {
      ...temperature,
      symbol: 'Tc',
      meaning: 'temperature to which the inner part is chilled, such as -196 °C in liquid nitrogen',
      optional: true,
    },
  },
  outputs: {
    hubRise: { ...difference, symbol: 'ΔTh', meaning: 'heat the hub alone by' },
    hubTemperature: { kind: 'temperature', symbol: 'Th', meaning: 'that is, to', unit: '°C', places: 1 },
    shaftDrop: { ...difference, symbol: 'ΔTs', meaning: 'or chill the inner part alone by', optional: true },
    shrink: {
      kind: 'length',
      symbol: 's',
      meaning: 'the chilled inner part shrinks by this, on the diameter',
      unit: 'mm',
      places: 4,
      optional: true,
    },
    hubRiseWithChill: {
      ...difference,
      symbol: "ΔTh'",
      meaning: 'heating of the hub that is left with the inner part chilled; negative: none is needed',
      optional: true,
    },
  },
  formula: "ΔT = (δ + g)/(α·d); s = αs·d·(T0 − Tc); ΔTh' = (δ + g − s)/(αh·d)",
  assumptions: [
    'Even temperature and constant expansion. Alloy heads stay below their ageing temperature, hardened rings below temper.',
    'The part warms while it is carried: allow a gap.',
  ],
  sources: ['derived-here'],
  example: {
    inputs: { diameter: '320 mm', interference: '0.45 mm', gap: '0.20 mm', hubExpansion: '11.7 ppm/K' },
    outputs: { hubRise: '173.6 K', hubTemperature: '193.6 °C' },
    from: 'reference row O-39 (b)',
  },
  compute: (v) => {
    const { diameter, startTemperature: start, shaftExpansion, chilledTo } = v;
    const gap = v.gap as Length;
    if (chilledTo !== undefined && shaftExpansion === undefined) {
      return conflict(['chilledTo', 'shaftExpansion'], 'the shrink of a chilled part needs its expansion');
    }
    if (chilledTo !== undefined && chilledTo > start) {
      return conflict(['chilledTo', 'startTemperature'], 'chilled means colder than before', {
        input: 'chilledTo',
        to: start,
      });
    }
    const hubRise = assemblyChange(diameter, v.interference, gap, v.hubExpansion);
    const drop = shaftExpansion && assemblyChange(diameter, v.interference, gap, shaftExpansion);
    const change = ((chilledTo ?? start) - start) as TemperatureDifference;
    const shrink =
      shaftExpansion && chilledTo ? ((diameter - grown(diameter, shaftExpansion, change)) as Length) : undefined;
    const rest = shrink && assemblyChange(diameter, (v.interference - shrink) as Length, gap, v.hubExpansion);
    return answer(
      {
        hubRise,
        hubTemperature: (start + hubRise) as Temperature,
        shaftDrop: drop,
        shrink,
        hubRiseWithChill: rest,
      },
      [...(drop !== undefined && drop > start ? [tooCold] : []), ...(chilledTo === undefined ? [] : [constants])],
    );
  },
});
