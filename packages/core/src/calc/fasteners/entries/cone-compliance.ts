import type { Stiffness } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { type ConeJoint, coneSlope, coneCompliance as find } from '../clamped.js';
import { noRing } from './faults.js';
import { ring } from './inputs.js';
import { complianceOut, length, modulus, stiffnessOut } from './joint-inputs.js';

export const coneCompliance = defineCalculation({
  id: 'fasteners.cone-compliance',
  subject: 'fasteners',
  title: 'Compliance of clamped parts by the deformation cone',
  summary: 'Clamped parts of one material as a cone, cone and sleeve, or sleeve, by the room that they leave.',
  inputs: {
    joint: {
      kind: 'choice',
      symbol: 'joint',
      meaning: 'a through bolt with a nut, or a screw in a tapped part',
      choices: ['through', 'tapped'],
    },
    ...ring,
    grip: { ...length, symbol: 'lK', meaning: 'clamped length' },
    outside: { ...length, symbol: 'DA', meaning: 'outside diameter of the parts, or the largest circle that fits' },
    modulus: { ...modulus, symbol: 'EP', meaning: 'Young’s modulus of the clamped parts' },
  },
  outputs: {
    compliance: { ...complianceOut, symbol: 'δP', meaning: 'compliance of the clamped parts' },
    stiffness: { ...stiffnessOut, symbol: '1/δP', meaning: 'their stiffness' },
  },
  formula:
    'δP = [2·ln(…)/(w·dh·tan φ) + 4·rest/(DA² − dh²)]/(E·π); tan φ = 0.362 + 0.032·ln(β/2) + 0.153·ln y, or 0.348 + 0.013·ln β + 0.193·ln y tapped',
  assumptions: ['One material; bolt in the middle of the parts. DA up to dw is a plain sleeve.'],
  sources: ['vdi-2230'],
  example: {
    inputs: {
      joint: 'through',
      bearingOutside: '16 mm',
      bearingHole: '11 mm',
      grip: '40 mm',
      outside: '16 mm',
      modulus: '205 GPa',
    },
    outputs: { compliance: '1.8403 µm/kN' },
    from: 'hand arithmetic for the slim part, a sleeve: 40/(205 000 × 106.029) mm/N',
  },
  compute: (v) => {
    const { joint: kind, bearingOutside, bearingHole: hole, grip, outside, modulus: of } = v;
    if (bearingOutside <= hole) return noRing(hole);
    if (outside <= hole) {
      return conflict(['outside', 'bearingHole'], 'the parts have no wall', { input: 'outside', above: hole });
    }
    const clamped: ConeJoint = { kind, bearingOutside, hole, grip, outside, modulus: of };
    if (outside > bearingOutside && coneSlope(clamped) <= 0) {
      return conflict(['grip', 'bearingOutside'], 'so short a grip is outside of the cone’s formula');
    }
    const compliance = find(clamped);
    return answer({ compliance, stiffness: (1 / compliance) as Stiffness });
  },
});
