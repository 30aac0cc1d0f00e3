import type { Stiffness } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { sleeveCompliance as find } from '../resilience.js';
import { complianceOut, length, modulus, span, stiffnessOut } from './joint-inputs.js';

export const sleeveCompliance = defineCalculation({
  id: 'fasteners.sleeve-compliance',
  subject: 'fasteners',
  title: 'Compliance of a clamped sleeve',
  summary: 'How much a sleeve, or a boss with no room to spread, gives for each unit of force.',
  inputs: {
    outside: { ...length, symbol: 'DA', meaning: 'outside diameter' },
    hole: { ...span, symbol: 'dh', meaning: 'hole; 0: solid' },
    length: { ...length, symbol: 'L', meaning: 'clamped length' },
    modulus: { ...modulus, symbol: 'EP', meaning: 'Young’s modulus of the clamped part' },
  },
  outputs: {
    compliance: { ...complianceOut, symbol: 'δP', meaning: 'compliance of the clamped part' },
    stiffness: { ...stiffnessOut, symbol: '1/δP', meaning: 'its stiffness' },
  },
  formula: 'δP = L/(E·π/4·(DA² − dh²))',
  assumptions: ['Even pressure over the whole section. Parts with room to spread are stiffer: see the cones.'],
  sources: ['derived-here'],
  example: {
    inputs: { outside: '22 mm', hole: '11 mm', length: '85 mm', modulus: '110 GPa' },
    outputs: { compliance: '2.710 µm/kN' },
    from: 'reference row O-22',
  },
  compute: (v) => {
    if (v.hole >= v.outside) {
      return conflict(['outside', 'hole'], 'the sleeve has no wall', { input: 'hole', below: v.outside });
    }
    const compliance = find(v.outside, v.hole, v.length, v.modulus);
    return answer({ compliance, stiffness: (1 / compliance) as Stiffness });
  },
});
