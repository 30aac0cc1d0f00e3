import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { boreShape } from '../bore-grid.js';
import { height, lengthOut, size, verdictOut } from './inputs.js';
import { against } from './verdicts.js';

const reading = (symbol: string, meaning: string) => ({ ...size(symbol, meaning), list: true }) as const;

export const boreGrid = defineCalculation({
  id: 'cylinder.bore-grid',
  subject: 'cylinder',
  title: 'Out of round, taper and size of a bore from a grid of readings',
  summary: 'By each rule in print, since a limit belongs to the rule of its maker; with a verdict by the rule named.',
  inputs: {
    across: reading('Y', 'diameters across the crank (thrust direction), top to bottom'),
    along: reading('X', 'diameters along the crank at the same heights, top to bottom'),
    roundLimit: { ...height('Lr', 'out of round allowed, on diameter'), optional: true },
    roundRule: {
      kind: 'choice',
      symbol: 'rule r',
      meaning:
        'out of round: both directions at one height, or largest of one less smallest of the other at any height',
      choices: ['same-height', 'any-height'],
      default: 'same-height',
    },
    taperLimit: { ...height('Lt', 'taper allowed, on diameter'), optional: true },
    taperRule: {
      kind: 'choice',
      symbol: 'rule t',
      meaning:
        'taper: top against bottom, spread of all heights, or largest of the top pair less smallest of the bottom pair',
      choices: ['ends', 'spread', 'pairs'],
      default: 'ends',
    },
    smallestAllowed: { ...size('Dmin', 'smallest diameter allowed'), optional: true },
    largestAllowed: { ...size('Dmax', 'largest diameter allowed (standard or wear limit)'), optional: true },
  },
  outputs: {
    outOfRound: lengthOut('oor', 'largest |X − Y| at one height'),
    outOfRoundAnyHeight: lengthOut('oor*', 'largest of one direction less smallest of the other, across heights'),
    taperEnds: lengthOut('taper', '|top − bottom|, the worse direction'),
    taperSpread: lengthOut(
      'cyl',
      'largest − smallest of one direction, the worse direction (cylindricity by two points)',
    ),
    taperPairs: lengthOut('taper*', 'largest of the top pair less smallest of the bottom pair'),
    largest: lengthOut('Dmax', 'largest diameter'),
    smallest: lengthOut('Dmin', 'smallest diameter'),
    roundVerdict: verdictOut('out of round by the rule named'),
    taperVerdict: verdictOut('taper by the rule named'),
    sizeVerdict: verdictOut('all diameters against the window'),
  },
  formula: 'oor = max |X − Y|; taper = max |top − bottom|; cyl = max (largest − smallest), over directions',
  assumptions: [
    'All on diameter: a radial value is half of it. Two directions cannot see an odd number of lobes.',
    'Caps torqued, plate on where the maker asks for it, part and gauge at one temperature.',
  ],
  sources: ['bore-grid', 'bore-cylindricity', 'bore-taper-spread', 'bore-taper-pairs'],
  example: {
    inputs: {
      across: ['95.524 mm', '95.520 mm', '95.512 mm'],
      along: ['95.512 mm', '95.514 mm', '95.509 mm'],
      roundLimit: '0.015 mm',
      taperLimit: '0.010 mm',
    },
    outputs: { outOfRound: '0.012 mm', taperEnds: '0.012 mm', roundVerdict: 'within', taperVerdict: 'too large' },
    from: 'limits of an engine manual (reference row O-01), readings ours',
  },
  compute: (v) => {
    if (v.across.length !== v.along.length) {
      return conflict(['across', 'along'], 'each height needs one reading in both directions');
    }
    const shape = boreShape(v);
    const round = v.roundRule === 'same-height' ? shape.outOfRound : shape.outOfRoundAnyHeight;
    const taper = { ends: shape.taperEnds, spread: shape.taperSpread, pairs: shape.taperPairs }[v.taperRule];
    const low = against(shape.smallest, v.smallestAllowed, v.largestAllowed);
    return answer({
      ...shape,
      roundVerdict: against(round, undefined, v.roundLimit),
      taperVerdict: against(taper, undefined, v.taperLimit),
      sizeVerdict: low === 'within' ? against(shape.largest, v.smallestAllowed, v.largestAllowed) : low,
    });
  },
});
