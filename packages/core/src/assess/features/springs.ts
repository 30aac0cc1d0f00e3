/** Valve springs (M43, M44). */
import type { FeatureKind } from '../model.js';
import { eachValve } from './each-valve.js';
import { always, CALIPER, type FeatureRule, whenAsked } from './rule.js';

const length = {
  area: 'springs',
  measured: 'length',
  instrument: 'caliper',
  resolution: CALIPER,
  figure: 'spring',
  sense: 'neither',
} as const;
const load = {
  area: 'springs',
  measured: 'force',
  instrument: 'spring-tester',
  resolution: 4.5,
  figure: 'spring',
  sense: 'shaft',
} as const;

/** The maker's height in the words of how it is read. */
const atHeight = (height: string | undefined): Partial<FeatureKind> =>
  height === undefined ? {} : { how: `Close the spring to ${height} and read the load.` };

export const springs: readonly FeatureRule[] = [
  eachValve(
    {
      ...length,
      id: 'spring-free-length',
      title: 'Free lengths of the springs',
      one: 'free length',
      condition: 'spring out, standing free',
      how: 'Over both ends. A short one has taken a set.',
      sense: 'shaft',
      size: 'length',
    },
    always,
  ),
  eachValve(
    {
      ...length,
      id: 'spring-squareness',
      title: 'Squareness of the springs',
      one: 'out of square',
      instrument: 'feeler-gauge',
      resolution: 5e-5,
      condition: 'spring standing on a plate against a square',
      how: 'Turn it for the widest gap at the top coil.',
      size: 'gap',
    },
    always,
  ),
  eachValve(
    {
      ...length,
      id: 'spring-lean',
      title: 'Lean of the springs',
      one: 'lean',
      measured: 'angle',
      instrument: 'protractor',
      resolution: Math.PI / 360,
      condition: 'spring standing on a plate',
      how: 'Largest angle from upright, turning the spring.',
      size: 'angle',
    },
    whenAsked,
  ),
  eachValve(
    {
      ...load,
      id: 'spring-load-closed',
      title: 'Spring loads, valve closed',
      one: 'load closed',
      condition: 'tester at zero; spring worked down once first',
      how: 'Load at the height of the closed valve, as the maker prints it.',
      size: 'load',
    },
    always,
    ({ loadHeights }) => atHeight(loadHeights.closed),
  ),
  eachValve(
    {
      ...load,
      id: 'spring-load-open',
      title: 'Spring loads, valve open',
      one: 'load open',
      condition: 'tester at zero; spring worked down once first',
      how: 'Load at the height of full lift.',
      size: 'load',
    },
    always,
    ({ loadHeights }) => atHeight(loadHeights.open),
  ),
  eachValve(
    {
      ...length,
      id: 'spring-bind-height',
      title: 'Heights at coil bind',
      one: 'bind height',
      condition: 'inner and outer spring together as fitted',
      how: 'Close the spring in a vice until the coils touch, and measure it.',
      size: 'height',
    },
    always,
  ),
  eachValve(
    {
      ...length,
      id: 'spring-pocket',
      title: 'Room round the springs',
      one: 'room round the spring',
      instrument: 'feeler-gauge',
      resolution: 1e-4,
      optional: true,
      condition: 'spring on its seat in the head',
      how: 'Feeler between the spring and the wall of its pocket or the locator inside.',
      size: 'room',
    },
    always,
  ),
];
