import {
  celsius,
  fromUnit,
  type Length,
  type Temperature,
  type TemperatureDifference,
} from '../../../quantity/index.js';
import { answer, type Caution, defineCalculation } from '../../catalogue/index.js';
import { oilClearance } from '../clearance.js';
import { warmClearance as find } from '../thermal.js';
import { noClearance } from './faults.js';
import { clearanceOut, housing, journal, lowerWall, upperWall } from './inputs.js';

const expansion = { kind: 'thermal-expansion', unit: 'ppm/K', range: { from: 0, to: 1e-4 } } as const;
const STEEL = fromUnit('thermal-expansion', 11.7, 'ppm/K');
const temperature = { kind: 'temperature', unit: '°C', range: { from: celsius(-200), to: celsius(600) } } as const;
const seized: Caution = { code: 'no-clearance-hot', text: 'no clearance is left at these temperatures' };

export const warmClearance = defineCalculation({
  id: 'bearings.clearance-at-temperature',
  subject: 'bearings',
  title: 'Oil clearance hot or cold',
  summary: 'Oil clearance with housing, shells and journal each at its own temperature and of its own material.',
  inputs: {
    housing,
    upperWall,
    lowerWall,
    journal,
    housingExpansion: { ...expansion, symbol: 'αH', meaning: 'thermal expansion of the housing' },
    journalExpansion: { ...expansion, symbol: 'αJ', meaning: 'thermal expansion of the journal', default: STEEL },
    shellExpansion: { ...expansion, symbol: 'αt', meaning: 'thermal expansion of the shell backs', default: STEEL },
    housingTemperature: { ...temperature, symbol: 'TH', meaning: 'temperature of the housing' },
    journalTemperature: {
      ...temperature,
      symbol: 'TJ',
      meaning: 'temperature of the journal; left out: as the housing',
      optional: true,
    },
    measuredAt: {
      ...temperature,
      symbol: 'T0',
      meaning: 'temperature at which the sizes hold',
      default: celsius(20),
    },
  },
  outputs: {
    cold: { ...clearanceOut, symbol: 'C0', meaning: 'oil clearance at the measuring temperature' },
    clearance: { ...clearanceOut, symbol: 'C', meaning: 'oil clearance at the given temperatures' },
    change: { ...clearanceOut, symbol: 'ΔC', meaning: 'change; positive: the clearance opens' },
  },
  formula: 'C = H·(1 + αH·(TH − T0)) − (tu + tl)·(1 + αt·(TH − T0)) − J·(1 + αJ·(TJ − T0))',
  assumptions: [
    'Each part is free and at one temperature; the shells are as warm as the housing and follow its bore.',
    'Mean expansion over the range. No load, no deflection of the cap.',
  ],
  sources: ['derived-here'],
  example: {
    inputs: {
      housing: '60.000 mm',
      upperWall: '2.000 mm',
      journal: '55.950 mm',
      housingExpansion: '22 ppm/K',
      housingTemperature: '100 °C',
    },
    outputs: { cold: '0.0500 mm', clearance: '0.0995 mm', change: '0.0495 mm' },
    from: 'hand arithmetic: 0.1056 − 0.0524 − 0.0037 mm of growth',
  },
  compute: (v) => {
    const walls = { upper: v.upperWall, lower: v.lowerWall ?? v.upperWall };
    const cold = oilClearance(v.housing, walls, v.journal);
    if (cold <= 0) return noClearance(['housing', 'upperWall', 'lowerWall', 'journal']);
    const rise = (to: Temperature) => (to - v.measuredAt) as TemperatureDifference;
    const around = rise(v.housingTemperature);
    const clearance = find(
      { housing: v.housing, walls, journal: v.journal },
      {
        housing: { expansion: v.housingExpansion, rise: around },
        shell: { expansion: v.shellExpansion, rise: around },
        journal: { expansion: v.journalExpansion, rise: rise(v.journalTemperature ?? v.housingTemperature) },
      },
    );
    return answer({ cold, clearance, change: (clearance - cold) as Length }, clearance <= 0 ? [seized] : []);
  },
});
