import type { Area } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { meanGasSpeed as find } from '../gas.js';
import { discArea } from '../volumes.js';
import { crankSpeed } from './crank-speed.js';
import { bore, size, stroke, surface } from './inputs.js';

export const meanGasSpeed = defineCalculation({
  id: 'cylinder.mean-gas-speed',
  subject: 'cylinder',
  title: 'Mean gas speed through port or valve',
  summary: 'Mean piston speed times bore area over port area: a figure to compare engines by, advisory only.',
  inputs: {
    bore,
    stroke,
    crankSpeed,
    area: { ...surface('A', 'smallest area of the port of one cylinder; or give the valve'), optional: true },
    valveDiameter: { ...size('dv', 'valve head or port diameter, in place of the area'), optional: true },
    valves: {
      kind: 'count',
      symbol: 'n',
      meaning: 'valves of that kind in one cylinder',
      range: { from: 1, to: 8 },
      default: 1,
    },
  },
  outputs: {
    gasSpeed: { kind: 'speed', symbol: 'v', meaning: 'mean gas speed', unit: 'm/s', places: 1 },
    area: { kind: 'area', symbol: 'A', meaning: 'area used', unit: 'mm2', places: 0 },
  },
  formula: 'v = 2·S·n·(π/4·B²)/A',
  assumptions: ['As if the charge were incompressible and the port open all the time. Advisory.'],
  sources: ['mean-gas-speed'],
  example: {
    inputs: { bore: '100 mm', stroke: '90 mm', crankSpeed: '6000 rpm', area: '1400 mm2' },
    outputs: { gasSpeed: '101.0 m/s' },
    from: 'hand arithmetic: 18 m/s · 7853.98/1400',
  },
  compute: (v) => {
    if ((v.area === undefined) === (v.valveDiameter === undefined)) {
      return conflict(['area', 'valveDiameter'], 'exactly one of area and valveDiameter is needed');
    }
    const area = (v.valveDiameter === undefined ? v.area : v.valves * discArea(v.valveDiameter)) as Area;
    const advisory = { code: 'advisory', text: 'a figure to compare engines by, not a flow' };
    return answer({ gasSpeed: find(v.bore, v.stroke, v.crankSpeed, area), area }, [advisory]);
  },
});
