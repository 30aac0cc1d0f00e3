import { answer, defineCalculation } from '../../catalogue/index.js';
import { cutForVolume } from '../milling.js';
import { areaInputs, chamberArea } from './chamber-area.js';
import { lengthOut, ONE_CC, room } from './inputs.js';

export const millForVolume = defineCalculation({
  id: 'cylinder.mill-for-volume',
  subject: 'cylinder',
  title: 'Head cut that takes a volume away',
  summary:
    'How much to mill off for a smaller chamber, from the edge length, the traced area, or a measured trial cut.',
  inputs: { reduction: room('ΔV', 'volume to take away from each chamber'), ...areaInputs },
  outputs: {
    cut: lengthOut('c', 'to mill off'),
    cutPerCc: lengthOut('c/cc', 'cut for one cubic centimetre', 4),
    area: { kind: 'area', symbol: 'A', meaning: 'chamber area used', unit: 'mm2', places: 0 },
  },
  formula: 'c = ΔV/A; A = P²/(4·π), or as traced, or ΔV1/c1',
  assumptions: ['Chamber walls straight for the depth of the cut; sloping walls make it non-linear.'],
  sources: ['milling-perimeter', 'derived-here'],
  example: {
    inputs: { reduction: '1 cc', perimeter: '12.0 in' },
    outputs: { cut: '0.00533 in', cutPerCc: '0.00533 in' },
    from: 'published rule (reference row MO-16)',
  },
  compute: (v) => {
    const found = chamberArea(v);
    if (!found.ok) return found;
    const { area, cautions } = found.value;
    return answer({ cut: cutForVolume(v.reduction, area), cutPerCc: cutForVolume(ONE_CC, area), area }, cautions);
  },
});
