import { type Length, toUnit } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { cleanUpDiameter, smallestOversize, wallLeft } from '../oversize.js';
import { height, lengthOut, size } from './inputs.js';
import { atLeast } from './verdicts.js';

export const oversize = defineCalculation({
  id: 'cylinder.oversize',
  subject: 'cylinder',
  title: 'Smallest oversize at which all bores clean up',
  summary: 'The worst cylinder decides for the engine: least size that exists, with hone allowance, axis and wall.',
  inputs: {
    standardBore: size('D0', 'standard (unworn) bore'),
    largest: { ...size('Dmax', 'largest diameter of each cylinder, depth of pits and scores counted in'), list: true },
    axis: {
      kind: 'choice',
      symbol: 'axis',
      meaning: 'bar centred on the worn bore (wear symmetric), or held on the original axis (all wear on one wall)',
      choices: ['worn-bore', 'original'],
      default: 'worn-bore',
    },
    shift: { ...height('s', 'with the original axis: how far it may move toward the worn wall'), default: 0 },
    honeAllowance: { ...height('a', 'left for honing, on diameter'), default: 0 },
    oversizes: { ...height('os', 'oversizes that exist as piston sets, on diameter'), list: true },
    wall: { ...size('t', 'thinnest wall now, at the standard bore'), optional: true },
    leastWall: { ...size('tmin', 'smallest wall allowed after boring'), optional: true },
  },
  outputs: {
    oversize: lengthOut('os', 'oversize chosen', 4),
    needed: { ...lengthOut('D', 'diameter that each cylinder needs, honing included', 4), list: true },
    largestNeeded: lengthOut('Dneed', 'largest of them', 4),
    worstCylinder: { kind: 'count', symbol: 'i', meaning: 'place of the cylinder that decides, from 1' },
    spare: lengthOut('spare', 'oversize bore less what is needed', 4),
    wallLeft: { ...lengthOut('t′', 'wall left'), optional: true },
  },
  formula:
    'worn bore: D = Dmax + a; original axis: D = max(Dmax, D0 + 2·(Dmax − D0) − 2·s) + a; least os with D0 + os ≥ D',
  assumptions: [
    'All cylinders get one oversize. Oversize and allowance are on diameter.',
    'The finished bore is the measured piston plus clearance, see cylinder.bored-size.',
    'A hone allowance of 0.002 to 0.005 in counts all honing (common practice); makers’ 0.01 to 0.02 mm the last pass.',
  ],
  sources: ['smallest-oversize', 'derived-here', 'shop-practice'],
  example: {
    inputs: {
      standardBore: '4.0000 in',
      largest: ['4.0065 in'],
      axis: 'original',
      honeAllowance: '0.0030 in',
      oversizes: ['0.010 in', '0.020 in', '0.030 in', '0.040 in', '0.060 in'],
    },
    outputs: { oversize: '0.020 in', largestNeeded: '4.0160 in', spare: '0.0040 in' },
    from: 'reference row O-03',
  },
  compute: (v) => {
    if (v.axis === 'worn-bore' && v.shift > 0) {
      return conflict(['axis', 'shift'], 'a bar centred on the worn bore needs no shift: give it with axis "original"');
    }
    if (v.leastWall !== undefined && v.wall === undefined) {
      return conflict(['leastWall'], 'a smallest wall says nothing without the wall now');
    }
    const axisShift = v.axis === 'worn-bore' ? 'free' : v.shift;
    const needed = v.largest.map(
      (one) => (cleanUpDiameter(v.standardBore, one, axisShift) + v.honeAllowance) as Length,
    );
    const largestNeeded = Math.max(...needed) as Length;
    const worst = needed.indexOf(largestNeeded);
    const chosen = smallestOversize(v.standardBore, largestNeeded, v.oversizes);
    if (!chosen.ok) {
      const mm = toUnit('length', chosen.fault.needed, 'mm').toFixed(4);
      return conflict(['largest', 'oversizes', 'honeAllowance'], `no oversize reaches the +${mm} mm that is needed`);
    }
    const bored = (v.standardBore + chosen.value.oversize) as Length;
    const moved = v.axis === 'worn-bore' ? wornShift(v.standardBore, v.largest[worst] as Length) : v.shift;
    const left = v.wall === undefined ? undefined : wallLeft(v.wall, v.standardBore, bored, moved);
    const thin = { code: 'wall-too-thin', text: 'the wall left would be thinner than the smallest allowed' };
    return answer(
      { ...chosen.value, needed, largestNeeded, worstCylinder: worst + 1, wallLeft: left },
      atLeast(left, v.leastWall) ? [] : [thin],
    );
  },
});

/** Centred on wear that sits on one wall, the bar comes nearer to that wall by half of the wear: the worst for the wall. */
const wornShift = (standard: Length, largest: Length): Length => Math.max(0, (largest - standard) / 2) as Length;
