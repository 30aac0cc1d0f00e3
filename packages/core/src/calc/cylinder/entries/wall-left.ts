import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { wallLeft as find } from '../oversize.js';
import { lengthOut, signedLength, size, verdictOut } from './inputs.js';
import { against } from './verdicts.js';

export const wallLeft = defineCalculation({
  id: 'cylinder.wall-left',
  subject: 'cylinder',
  title: 'Cylinder wall left after boring',
  summary: 'From a sonic reading at one place; a shifted axis takes more from the side it moves to.',
  inputs: {
    wall: size('t', 'wall now, at this place'),
    boreNow: size('D', 'bore now'),
    boreAfter: size('D′', 'bore afterwards'),
    shift: { ...signedLength('s', 'shift of the axis toward this wall, away from it negative'), default: 0 },
    leastWall: { ...size('tmin', 'smallest wall allowed'), optional: true },
  },
  outputs: {
    left: lengthOut('t′', 'wall left'),
    removed: lengthOut('Δt', 'taken from this wall'),
    verdict: verdictOut('against the smallest wall allowed'),
  },
  formula: 't′ = t − (D′ − D)/2 − s',
  assumptions: ['The sonic reading belongs to this place; core shift makes walls uneven round the bore.'],
  sources: ['derived-here'],
  example: {
    inputs: { wall: '0.200 in', boreNow: '4.000 in', boreAfter: '4.060 in', leastWall: '0.120 in' },
    outputs: { left: '0.170 in', verdict: 'within' },
    from: 'hand arithmetic; 0.120 in on the thrust side is common practice',
  },
  compute: (v) => {
    if (v.boreAfter < v.boreNow) {
      return conflict(['boreNow', 'boreAfter'], 'boring makes a bore larger', { input: 'boreAfter', from: v.boreNow });
    }
    const left = find(v.wall, v.boreNow, v.boreAfter, v.shift);
    const removed = (v.wall - left) as typeof left;
    return answer({
      left,
      removed,
      verdict: left <= 0 ? 'the wall is cut through' : against(left, v.leastWall, undefined),
    });
  },
});
