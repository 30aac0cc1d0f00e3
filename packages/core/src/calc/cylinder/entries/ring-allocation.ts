import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { allocateRings } from '../ring-allocation.js';
import { height, lengthOut, size } from './inputs.js';

export const ringAllocation = defineCalculation({
  id: 'cylinder.ring-allocation',
  subject: 'cylinder',
  title: 'Which ring goes into which cylinder, so that the least is filed',
  summary:
    'Rings can be filed, so a tight gap costs work and a wide one is lost: least filing in all, no gap over the largest allowed. Parts that fit as they are: selection.parts-to-places.',
  inputs: {
    gaps: { ...height('g', 'end gap of each ring, all measured in one bore'), list: true },
    measuredIn: size('Bm', 'that bore'),
    bores: { ...size('B', 'bore of each cylinder'), list: true },
    target: height('gt', 'end gap wanted'),
    most: height('gmax', 'largest end gap allowed'),
  },
  outputs: {
    rings: {
      kind: 'count',
      symbol: 'ring',
      meaning: 'ring, by its place in the list, for cylinder 1, 2, 3 ...',
      list: true,
    },
    toFile: { ...lengthOut('Δ', 'to file there', 4), list: true },
    gapsAfter: { ...lengthOut('g′', 'gap there afterwards', 4), list: true },
    total: lengthOut('ΣΔ', 'to file in all: no other allocation needs less', 4),
  },
  formula: 'least Σ max(0, gt − gi − π·(Bj − Bm)) with every gap ≤ gmax, each ring used at most once',
  assumptions: ['The total is a proven least: sorted both ways, an exchange of two rings never saves filing.'],
  sources: ['derived-here', 'ring-gap-pi'],
  example: {
    inputs: {
      gaps: ['0.016 in', '0.012 in'],
      measuredIn: '4.030 in',
      bores: ['4.030 in', '4.031 in'],
      target: '0.018 in',
      most: '0.025 in',
    },
    outputs: { rings: [1, 2], toFile: ['0.0020 in', '0.0029 in'], total: '0.0049 in' },
    from: 'hand arithmetic: the larger bore opens the tighter ring by 0.0031; the other way is 0.0060 + 0 = 0.0060',
  },
  compute: (v) => {
    if (v.most < v.target) {
      return conflict(['target', 'most'], 'the largest gap lies below the gap wanted', {
        input: 'most',
        from: v.target,
      });
    }
    const plan = allocateRings(v.gaps, v.measuredIn, v.bores, v.target, v.most);
    if (plan.ok) {
      const { rings, filing, gaps, total } = plan.value;
      return answer({ rings: rings.map((place) => place + 1), toFile: filing, gapsAfter: gaps, total });
    }
    return plan.fault.code === 'too-few-rings'
      ? conflict(['gaps', 'bores'], 'there are fewer rings than cylinders')
      : conflict(['gaps', 'bores', 'most'], 'some gap is over the largest allowed in every allocation');
  },
});
