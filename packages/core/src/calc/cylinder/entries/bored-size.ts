import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { boredSize as find } from '../oversize.js';
import { height, lengthOut, signedLength, size } from './inputs.js';

export const boredSize = defineCalculation({
  id: 'cylinder.bored-size',
  subject: 'cylinder',
  title: 'Size to bore to before honing, and size to hone to',
  summary:
    'From the piston as measured, the clearance wanted and what is left for honing; one piston or each of a set.',
  inputs: {
    pistons: { ...size('A', 'piston diameter at the maker’s measuring point, one or each of a set'), list: true },
    clearance: signedLength('B', 'piston clearance wanted, on diameter; a coated skirt may have it negative'),
    honeAllowance: height('Ch', 'left for honing, on diameter'),
  },
  outputs: {
    bored: { ...lengthOut('D', 'bored diameter of each'), list: true },
    honed: { ...lengthOut('D + Ch', 'honed diameter of each'), list: true },
  },
  formula: 'D = A + B − Ch; honed A + B',
  assumptions: ['The allowance is subtracted. Piston and bore at one temperature; bore cooled after boring.'],
  sources: ['bored-size'],
  example: {
    inputs: { pistons: ['80.480 mm'], clearance: '0.035 mm', honeAllowance: '0.02 mm' },
    outputs: { bored: '80.495 mm', honed: '80.515 mm' },
    from: 'published relation and bands (reference row O-04)',
  },
  compute: (v) => {
    const found = v.pistons.map((piston) => find(piston, v.clearance, v.honeAllowance));
    if (found.some(({ bored }) => bored <= 0)) {
      return conflict(['pistons', 'clearance', 'honeAllowance'], 'no bore is left');
    }
    return answer({ bored: found.map((one) => one.bored), honed: found.map((one) => one.honed) });
  },
});
