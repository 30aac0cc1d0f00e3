/** Valves, guides and seats (M39 to M42, M44). */
import { hasRockers } from './anatomy.js';
import { eachValve, RULE } from './each-valve.js';
import { guides } from './guides.js';
import { always, type FeatureRule, FIVE_TENTHS, HUNDREDTH, THOU } from './rule.js';
import { seats } from './seats.js';

const heights: readonly FeatureRule[] = [
  eachValve(
    {
      ...RULE,
      id: 'stem-height',
      title: 'Heights of the stem tips',
      one: 'stem height',
      resolution: HUNDREDTH,
      condition: 'valve on its seat, no spring',
      how: 'From the spring seat to the tip. A valve and seat ground deep raise it, and with it the rocker.',
      figure: 'valve-stem',
      size: 'height',
    },
    always,
  ),
  eachValve(
    {
      ...RULE,
      id: 'installed-height',
      title: 'Installed heights',
      one: 'installed height',
      instrument: 'height-gauge',
      resolution: 5 * THOU,
      condition: 'retainer and locks on without spring, pulled up hard',
      how: 'From the spring seat to the retainer where the outer spring will bear.',
      figure: 'spring',
      size: 'height',
    },
    always,
  ),
  eachValve(
    {
      ...RULE,
      id: 'retainer-to-guide',
      title: 'Room from retainer to guide',
      one: 'room to the guide',
      condition: 'valve on its seat, retainer and locks on, seal on the guide',
      how: 'From the underside of the retainer to the seal. Full lift must leave some of it.',
      figure: 'spring',
      size: 'room',
    },
    always,
  ),
  eachValve(
    {
      ...RULE,
      id: 'retainer-to-rocker',
      title: 'Room from retainer to rocker',
      one: 'room to the rocker',
      instrument: 'feeler-gauge',
      resolution: FIVE_TENTHS * 2,
      condition: 'trial assembly, rocker on its stud or shaft',
      how: 'Smallest gap while the valve goes through its whole lift.',
      figure: 'spring',
      optional: true,
      size: 'room',
    },
    hasRockers,
  ),
];

export const valves: readonly FeatureRule[] = [...guides, ...seats, ...heights];
