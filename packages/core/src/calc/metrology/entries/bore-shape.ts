import { micrometres } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import {
  CYLINDER_RULES,
  type CylinderRule,
  cylindricity,
  type DiameterGrid,
  longShape,
  outOfRound,
  ROUND_RULES,
  roundByHeight,
  TAPER_RULES,
  type TaperRule,
  taper,
} from '../bore-shape.js';
import { atMost } from '../decision.js';
import { mean } from '../repeats.js';
import { asLength, asLengths, lengths } from './flavour.js';

const direction = (symbol: string, which: string) =>
  ({
    ...lengths.size,
    symbol,
    meaning: `diameters in ${which}, from the top (or front) end to the other`,
    list: true,
  }) as const;
const limit = (symbol: string, what: string) =>
  ({ ...lengths.size, symbol, meaning: `limit of ${what}, inclusive, by the same rule`, optional: true }) as const;
const found = (symbol: string, meaning: string) => ({ ...lengths.output, symbol, meaning }) as const;
const verdict = (symbol: string, what: string) =>
  ({ kind: 'text', symbol, meaning: `${what}: in, out or no data (no limit given, or too few heights)` }) as const;

const judge = (value: number | undefined, allowed: number | undefined): string =>
  value === undefined || allowed === undefined ? 'no data' : atMost(Math.abs(value), allowed) ? 'in' : 'out';

export const boreShape = defineCalculation({
  id: 'metrology.bore-shape',
  subject: 'metrology',
  title: 'Out-of-round, taper and cylindricity of a bore or journal',
  summary:
    'From diameters at one or more heights in two or more directions, by the definition that the limit belongs to.',
  inputs: {
    directionX: direction('X', 'the first direction, such as along the crank'),
    directionY: direction('Y', 'the second direction, across the first (thrust side)'),
    directionThree: { ...direction('V', 'a third direction'), optional: true },
    directionFour: { ...direction('W', 'a fourth direction'), optional: true },
    outOfRoundRule: {
      kind: 'choice',
      symbol: 'round',
      meaning:
        'same-height: difference of directions at one height; same-height-radial: half of that; across-heights: largest of one direction less smallest of another; worst-of-all: largest less smallest of all',
      choices: ROUND_RULES,
      default: 'same-height',
    },
    taperRule: {
      kind: 'choice',
      symbol: 'taper',
      meaning:
        'ends: largest |top − bottom| of a direction; ends-signed-mean: mean top less mean bottom; spread: largest max − min of a direction; top-pair-less-bottom-pair: largest at the top less largest at the bottom; spread-of-means: max − min of the mean of each height',
      choices: TAPER_RULES,
      default: 'ends',
    },
    cylindricityRule: {
      kind: 'choice',
      symbol: 'cyl',
      meaning:
        'spread-by-direction: worst max − min of a direction; spread-of-all: max − min of all; -radial: half of it',
      choices: CYLINDER_RULES,
      default: 'spread-by-direction',
    },
    outOfRoundLimit: limit('L round', 'out-of-round'),
    taperLimit: limit('L taper', 'taper'),
    cylindricityLimit: limit('L cyl', 'cylindricity'),
    low: { ...lengths.size, symbol: 'low', meaning: 'smallest diameter allowed, inclusive', optional: true },
    high: { ...lengths.size, symbol: 'high', meaning: 'largest diameter allowed, inclusive', optional: true },
  },
  outputs: {
    outOfRound: found('oor', 'out-of-round by the rule'),
    taper: { ...found('taper', 'taper by the rule; of one height no data'), optional: true },
    cylindricity: { ...found('cyl', 'cylindricity by the rule; of one height no data'), optional: true },
    outOfRoundVerdict: verdict('V round', 'out-of-round'),
    taperVerdict: verdict('V taper', 'taper'),
    cylindricityVerdict: verdict('V cyl', 'cylindricity'),
    sizeVerdict: verdict('V size', 'every diameter within low and high'),
    largest: found('D max', 'largest diameter: decides the clearance of a journal, the wear of a bore'),
    smallest: found('D min', 'smallest diameter'),
    mean: found('D̄', 'mean diameter'),
    roundByHeight: {
      ...lengths.output,
      symbol: 'oor',
      meaning: 'difference of the directions at each height',
      list: true,
    },
    tapers: {
      ...lengths.output,
      symbol: 'tapers',
      meaning: `taper by every rule: ${TAPER_RULES.join(', ')}`,
      list: true,
      optional: true,
    },
    shape: {
      kind: 'text',
      symbol: 'shape',
      meaning: 'along the axis: straight, wider at the first or last end, barrel or waist (beyond 1 µm)',
      optional: true,
    },
  },
  formula: 'same-height: max|X − Y|; ends: max|top − bottom|; spread-by-direction: max(Dmax − Dmin)',
  assumptions: [
    'One height shows out-of-round alone: taper and cylindricity are no data.',
    'Two directions cannot see odd lobes; a micrometer reads three lobes as round.',
    'A barrel or a waist passes the rule of the ends and fails the rule of the spread.',
    'Main caps torqued, torque plate on where the maker asks for one, all at one temperature.',
  ],
  sources: ['bore-rules', 'bore-grid', 'bore-cylindricity', 'bore-taper-spread', 'bore-taper-pairs'],
  example: {
    inputs: {
      directionX: ['95.512 mm', '95.514 mm', '95.509 mm'],
      directionY: ['95.524 mm', '95.520 mm', '95.512 mm'],
      outOfRoundLimit: '0.015 mm',
      taperLimit: '0.010 mm',
    },
    outputs: {
      outOfRound: '0.012 mm',
      taper: '0.012 mm',
      cylindricity: '0.012 mm',
      outOfRoundVerdict: 'in',
      taperVerdict: 'out',
    },
    from: 'reference row O-01',
  },
  compute: (v) => {
    const grid: DiameterGrid = [v.directionX, v.directionY, v.directionThree, v.directionFour].flatMap((one) =>
      one ? [one] : [],
    );
    const heights = v.directionX.length;
    const names = ['directionX', 'directionY', 'directionThree', 'directionFour'] as const;
    if (grid.some((one) => one.length !== heights))
      return conflict(names, 'every direction needs a diameter at every height');
    const all = grid.flat();
    const [largest, smallest] = [Math.max(...all), Math.min(...all)];
    const round = outOfRound(grid, v.outOfRoundRule);
    const long = heights < 2 ? undefined : alongTheAxis(grid, v.taperRule, v.cylindricityRule);
    const sized = v.low !== undefined || v.high !== undefined;
    const fits = atMost(v.low ?? smallest, smallest) && atMost(largest, v.high ?? largest);
    return answer({
      outOfRound: asLength(round),
      taper: long?.taper,
      cylindricity: long?.cylindricity,
      tapers: long?.tapers,
      shape: long?.shape,
      outOfRoundVerdict: judge(round, v.outOfRoundLimit),
      taperVerdict: judge(long?.taper, v.taperLimit),
      cylindricityVerdict: judge(long?.cylindricity, v.cylindricityLimit),
      sizeVerdict: !sized ? 'no data' : fits ? 'in' : 'out',
      largest: asLength(largest),
      smallest: asLength(smallest),
      mean: asLength(mean(all)),
      roundByHeight: asLengths(roundByHeight(grid)),
    });
  },
});

/** What needs two heights to be seen. */
const alongTheAxis = (grid: DiameterGrid, taperRule: TaperRule, cylinderRule: CylinderRule) => ({
  taper: asLength(taper(grid, taperRule)),
  cylindricity: asLength(cylindricity(grid, cylinderRule)),
  tapers: asLengths(TAPER_RULES.map((rule) => taper(grid, rule))),
  shape: longShape(grid, SMALL),
});

/** A difference of means that a bore gauge can just tell; rounding of a unit does not change it. */
const SMALL = micrometres(1.0001);
