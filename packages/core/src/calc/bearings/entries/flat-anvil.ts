import type { Length } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { flatFaceError } from '../anvil.js';
import { clearanceOut, size } from './inputs.js';

export const flatAnvil = defineCalculation({
  id: 'bearings.flat-anvil-error',
  subject: 'bearings',
  title: 'Error of a flat anvil on the hollow side of a shell',
  summary: 'How much too thick a flat measuring face reads a shell wall, and how much too small the clearance seems.',
  inputs: {
    insideRadius: {
      ...size,
      symbol: 'R',
      meaning: 'inside radius of the shell: half of the journal is near enough',
    },
    faceWidth: { ...size, symbol: 'w', meaning: 'width of the flat face across the curve' },
  },
  outputs: {
    wallError: { ...clearanceOut, symbol: 'h', meaning: 'one wall reads too thick by', places: 5 },
    clearanceError: { ...clearanceOut, symbol: '2h', meaning: 'the clearance seems too small by', places: 5 },
  },
  formula: 'h = R − √(R² − w²/4)',
  assumptions: ['The face rests on two edges over its whole width. A ball anvil has no such error.'],
  sources: ['derived-here', 'ball-anvil'],
  example: {
    inputs: { insideRadius: '1.225 in', faceWidth: '0.123 in' },
    outputs: { wallError: '0.001545 in', clearanceError: '0.003089 in' },
    from: 'reference row O-15 (0.00155 in); further digits by hand arithmetic: w²/8R with its next term',
  },
  compute: (v) => {
    if (v.faceWidth >= 2 * v.insideRadius) {
      return conflict(['faceWidth', 'insideRadius'], 'the face is wider than the shell', {
        input: 'faceWidth',
        below: 2 * v.insideRadius,
      });
    }
    const wallError = flatFaceError(v.insideRadius, v.faceWidth);
    return answer({ wallError, clearanceError: (2 * wallError) as Length });
  },
});
