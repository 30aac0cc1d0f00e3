import { degrees, type Length } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { complianceOf, coneStiffness, fittedStiffness, MEMBER_FIT, type MemberMaterial } from '../clamped.js';
import { complianceOut, length, modulus, stiffnessOut } from './joint-inputs.js';

const USUAL_FACE = 1.5;
const out = {
  stiffness: { ...stiffnessOut, symbol: 'km', meaning: 'stiffness of the clamped parts' },
  compliance: { ...complianceOut, symbol: 'δP', meaning: 'compliance of the clamped parts' },
} as const;

export const memberStiffness = defineCalculation({
  id: 'fasteners.member-stiffness',
  subject: 'fasteners',
  title: 'Stiffness of clamped parts by pressure cones',
  summary: 'Layers of one or several materials between head and nut, by cones from both ends that meet in mid grip.',
  inputs: {
    diameter: { ...length, symbol: 'd', meaning: 'bolt diameter (the cones’ inside)' },
    thicknesses: { ...length, symbol: 't', meaning: 'thickness of each layer from the head to the nut', list: true },
    moduli: { ...modulus, symbol: 'E', meaning: 'Young’s modulus of each layer; one figure: of all', list: true },
    washerFace: {
      ...length,
      symbol: 'D',
      meaning: 'diameter of the bearing face under head and nut; left out: 1.5·d',
      optional: true,
    },
    halfAngle: {
      kind: 'angle',
      symbol: 'α',
      meaning: 'half angle of the cones',
      unit: 'deg',
      range: { above: 0, to: degrees(60) },
      default: degrees(30),
    },
  },
  outputs: out,
  formula:
    '1/km = Σ 1/k; k = π·E·d·tan α/ln[(2t·tan α + D − d)(D + d)/((2t·tan α + D + d)(D − d))], D growing by 2t·tan α',
  assumptions: [
    'Room to spread on all sides: a thin boss or a bore’s edge makes a sleeve. Both ends have the same face.',
    'For a screw in a tapped part the grip ends about half a diameter inside it.',
  ],
  sources: ['shigley-joint'],
  example: {
    inputs: { diameter: '1/2 in', thicknesses: ['1.095 in'], moduli: ['30000000 psi'] },
    outputs: { compliance: '0.0626 µin/lbf' },
    from: 'reference row O-23, textbook example: 15.97e6 lbf/in is 0.0626 µin/lbf',
  },
  compute: (v) => {
    const face = v.washerFace ?? ((USUAL_FACE * v.diameter) as Length);
    if (face <= v.diameter) {
      return conflict(['washerFace', 'diameter'], 'nothing is left to bear on', {
        input: 'washerFace',
        above: v.diameter,
      });
    }
    const only = v.moduli.length === 1 ? v.moduli[0] : undefined;
    if (only === undefined && v.moduli.length !== v.thicknesses.length) {
      return conflict(['thicknesses', 'moduli'], 'each layer needs its thickness and its modulus');
    }
    const layers = v.thicknesses.map((thickness, at) => ({ thickness, modulus: only ?? v.moduli[at]! }));
    const stiffness = coneStiffness(layers, v.diameter, face, v.halfAngle);
    return answer({ stiffness, compliance: complianceOf(stiffness) });
  },
});

export const memberFit = defineCalculation({
  id: 'fasteners.member-stiffness-fitted',
  subject: 'fasteners',
  title: 'Stiffness of clamped parts by the fitted exponential',
  summary: 'Member stiffness of one material from its modulus, the bolt diameter and the grip.',
  inputs: {
    material: {
      kind: 'choice',
      symbol: 'of',
      meaning: 'material of the clamped parts, all the same',
      choices: Object.keys(MEMBER_FIT) as readonly MemberMaterial[],
    },
    modulus: { ...modulus, symbol: 'E', meaning: 'its Young’s modulus' },
    diameter: { ...length, symbol: 'd', meaning: 'bolt diameter' },
    grip: { ...length, symbol: 'l', meaning: 'clamped length' },
  },
  outputs: out,
  formula: 'km = E·d·A·exp(B·d/l), A and B by material',
  assumptions: ['One material, standard faces, room to spread.'],
  sources: ['shigley-joint'],
  example: {
    inputs: { material: 'steel', modulus: '30000000 psi', diameter: '1/2 in', grip: '1.095 in' },
    outputs: { compliance: '0.06356 µin/lbf' },
    from: 'hand arithmetic: 11.807e6 × exp(0.28709) = 15.734e6 lbf/in, that is 0.06356 µin/lbf',
  },
  compute: (v) => {
    const stiffness = fittedStiffness(v.material, v.modulus, v.diameter, v.grip);
    return answer({ stiffness, compliance: complianceOf(stiffness) });
  },
});
