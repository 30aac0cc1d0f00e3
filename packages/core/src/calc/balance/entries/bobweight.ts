import type { Mass } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { bobweight as find } from '../bobweight.js';
import { factor, mass, massOrNone, massOut } from './inputs.js';

export const bobweight = defineCalculation({
  id: 'balance.bobweight',
  subject: 'balance',
  title: 'Bobweight of a crankpin',
  summary: 'Weight to bolt on each crankpin for balancing: all of what rotates and a share of what reciprocates.',
  inputs: {
    bigEnd: mass('mb', 'big end of one rod, as weighed, with cap and bolts'),
    bearing: { ...massOrNone('ms', 'bearing shells of one rod, both halves'), default: 0 },
    oil: { ...massOrNone('mo', 'oil allowance of the whole crankpin'), default: 0 },
    piston: mass('mp', 'one piston'),
    pin: { ...massOrNone('mg', 'one piston pin'), default: 0 },
    locks: { ...massOrNone('ml', 'pin locks of one piston together'), default: 0 },
    rings: { ...massOrNone('mr', 'ring set of one piston'), default: 0 },
    smallEnd: massOrNone('mk', 'small end of one rod, as weighed'),
    rodsPerPin: { kind: 'count', symbol: 'n', meaning: 'rods on one crankpin', range: { from: 1, to: 6 }, default: 2 },
    factor,
  },
  outputs: {
    bobweight: massOut('Mb', 'bobweight'),
    rotating: massOut('Mrot', 'all that rotates on the pin, oil included'),
    reciprocating: massOut('Mrec', 'all that reciprocates on the pin'),
    perRodReciprocating: massOut('mrec', 'reciprocating mass of one cylinder'),
  },
  formula: 'Mb = n·(mb + ms) + mo + f·n·(mp + mg + ml + mr + mk)',
  assumptions: [
    'Each printed weight must be known to be for one rod or for the pair: everything here is for one, but for the oil.',
    '50 % for a 90° vee with common pins; splayed pins and other vees have their maker’s factor.',
  ],
  sources: ['bobweight-parts', 'shop-practice'],
  example: {
    inputs: {
      bigEnd: '229.8 g',
      bearing: '23.7 g',
      oil: '4 g',
      piston: '583.9 g',
      pin: '173.6 g',
      locks: '4.8 g',
      rings: '69.5 g',
      smallEnd: '162.4 g',
      factor: '50 %',
    },
    outputs: { bobweight: '1505.2 g' },
    from: 'published weights of one engine (reference row MO-38), sum by hand',
  },
  compute: (v) => {
    const reciprocating = (v.piston + v.pin + v.locks + v.rings + v.smallEnd) as Mass;
    const rod = { rotating: (v.bigEnd + v.bearing) as Mass, reciprocating };
    const rods = Array.from({ length: v.rodsPerPin }, () => rod);
    return answer({
      bobweight: find(rods, v.oil as Mass, v.factor),
      rotating: (v.rodsPerPin * rod.rotating + v.oil) as Mass,
      reciprocating: (v.rodsPerPin * reciprocating) as Mass,
      perRodReciprocating: reciprocating,
    });
  },
});
