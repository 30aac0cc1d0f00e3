import { metres } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { airPressure as find } from '../trapped.js';

export const airPressure = defineCalculation({
  id: 'cylinder.air-pressure',
  subject: 'cylinder',
  title: 'Air pressure at a height above the sea',
  summary: 'Standard atmosphere, for cranking pressure and trapped ratio at altitude.',
  inputs: {
    altitude: {
      kind: 'length',
      symbol: 'h',
      meaning: 'height above the sea',
      unit: 'm',
      range: { from: metres(-500), to: metres(11_000) },
    },
  },
  outputs: { pressure: { kind: 'pressure', symbol: 'p', meaning: 'air pressure, absolute', unit: 'kPa', places: 2 } },
  formula: 'p = 101.325 kPa·(1 − 0.0065·h/288.15)^5.25588, h in metres',
  assumptions: ['Standard atmosphere; the weather moves it by a few per cent.'],
  sources: ['standard-atmosphere'],
  example: {
    inputs: { altitude: '1500 m' },
    outputs: { pressure: '84.56 kPa' },
    from: 'table of the standard atmosphere (from memory: 84.556 kPa)',
  },
  compute: (v) => answer({ pressure: find(v.altitude) }),
});
