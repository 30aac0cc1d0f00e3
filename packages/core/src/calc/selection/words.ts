import type { Length } from '../../quantity/index.js';
import type { ShimFault } from './types.js';

const inMm = (length: Length) => Math.round(length * 1e6) / 1e3;

/** One clear line: what is wrong with valves, shims or sizes, and what is valid. */
export function describeShimFault(fault: ShimFault): string {
  switch (fault.code) {
    case 'length-out-of-range':
      return `${fault.what}: ${inMm(fault.given as Length)} mm; ${inMm(fault.low)} to ${inMm(fault.high)} mm is valid`;
    case 'sizes-unusable':
      return {
        none: 'there are no sizes to choose from',
        step: 'the step must be above 0',
        ends: 'the thinnest must not be thicker than the thickest',
        'too-many': 'that makes more than 1000 sizes',
      }[fault.reason];
    case 'window-empty':
      return `${fault.what}: its lower end is above its upper end`;
    case 'beyond-sizes':
      return `${inMm(fault.ideal)} mm would be needed; sizes run from ${inMm(fault.thinnest)} to ${inMm(fault.thickest)} mm`;
    case 'place-repeated':
      return `${fault.place} is named twice`;
    case 'too-many-places':
      return `${fault.given} valves; up to ${fault.most} is valid`;
  }
}
