import type { Length } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { wallLeft } from '../oversize.js';
import { height, lengthOut, size, verdictOut } from './inputs.js';
import { against } from './verdicts.js';

export const sleeve = defineCalculation({
  id: 'cylinder.sleeve',
  subject: 'cylinder',
  title: 'Bore in the block for a repair sleeve',
  summary: 'Block bore from the sleeve’s outside and the press fit, sleeve wall after finishing, block wall left.',
  inputs: {
    outside: size('Da', 'outside diameter of the sleeve as measured'),
    interference: height('I', 'press fit wanted, on diameter'),
    finishedBore: size('B', 'finished bore of the sleeve'),
    boreNow: { ...size('D', 'bore of the block now'), optional: true },
    wall: { ...size('t', 'block wall now at its thinnest'), optional: true },
    leastWall: { ...size('tmin', 'smallest block wall allowed behind the sleeve'), optional: true },
  },
  outputs: {
    blockBore: lengthOut('Db', 'bore in the block'),
    sleeveWall: lengthOut('w', 'wall of the sleeve when finished'),
    blockWallLeft: { ...lengthOut('t′', 'wall of the block left'), optional: true },
    verdict: verdictOut('block wall against the smallest allowed'),
  },
  formula: 'Db = Da − I; w = (Da − B)/2; t′ = t − (Db − D)/2',
  assumptions: [
    'The squeeze of the press fit is small against the wall. The pressure of the fit: see the fits subject.',
  ],
  sources: ['derived-here'],
  example: {
    inputs: {
      outside: '106.00 mm',
      interference: '0.05 mm',
      finishedBore: '100.00 mm',
      boreNow: '100.00 mm',
      wall: '6.0 mm',
    },
    outputs: { blockBore: '105.95 mm', sleeveWall: '3.00 mm', blockWallLeft: '3.025 mm' },
    from: 'hand arithmetic',
  },
  compute: (v) => {
    if (v.finishedBore >= v.outside) {
      return conflict(['finishedBore', 'outside'], 'the sleeve would have no wall', {
        input: 'finishedBore',
        below: v.outside,
      });
    }
    if ((v.boreNow === undefined) !== (v.wall === undefined)) {
      return conflict(['boreNow', 'wall'], 'the wall left needs bore and wall of the block together');
    }
    const blockBore = (v.outside - v.interference) as Length;
    const known = v.wall !== undefined && v.boreNow !== undefined;
    const left = known ? wallLeft(v.wall, v.boreNow, blockBore, 0 as Length) : undefined;
    const verdict = left === undefined ? 'no wall given' : against(left, v.leastWall, undefined);
    return answer({
      blockBore,
      sleeveWall: ((v.outside - v.finishedBore) / 2) as Length,
      blockWallLeft: left,
      verdict,
    });
  },
});
