import { type Area, type Force, squareMillimetres } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { loadAt, strengthClasses, strengthOf } from '../strength.js';
import { stressArea } from '../thread.js';
import { thread } from './inputs.js';

const stress = { kind: 'pressure', unit: 'MPa', places: 1 } as const;
const load = { kind: 'force', unit: 'kN', places: 2 } as const;

export const proofLoad = defineCalculation({
  id: 'fasteners.proof-load',
  subject: 'fasteners',
  title: 'Strength, proof load and preload of a bolt by its class',
  summary: 'Minimum proof, yield and tensile strength of a marked class, and the loads that follow for a thread.',
  inputs: {
    thread,
    strengthClass: { kind: 'choice', symbol: 'class', meaning: 'marking on the head', choices: strengthClasses },
    share: {
      kind: 'ratio',
      symbol: 's',
      meaning: 'share of the proof load to use as preload',
      unit: '%',
      range: { above: 0, to: 1 },
      default: 0.75,
    },
    printedArea: {
      kind: 'area',
      symbol: 'As',
      meaning: 'tensile stress area as a table prints it; left out, it is computed',
      unit: 'mm2',
      range: { above: 0, to: squareMillimetres(100_000) },
      optional: true,
    },
  },
  outputs: {
    proofStress: { ...stress, symbol: 'Sp', meaning: 'proof stress' },
    yieldStrength: { ...stress, symbol: 'Re', meaning: 'minimum yield strength (0.2 %)' },
    tensileStrength: { ...stress, symbol: 'Rm', meaning: 'minimum tensile strength' },
    proofLoad: { ...load, symbol: 'Fp', meaning: 'proof load' },
    ultimateLoad: { ...load, symbol: 'Fm', meaning: 'minimum ultimate load' },
    preload: { ...load, symbol: 's·Fp', meaning: 'preload at the chosen share of proof' },
  },
  formula: 'Fp = As·Sp; Fm = As·Rm; F = s·Fp',
  assumptions: [
    'Table minimum, not the arithmetic of the marking. The standard multiplies the printed, rounded area.',
    'Hot-dip coated threads carry less. Studs of higher strength are outside the table: ask their maker.',
  ],
  sources: ['iso-898-1', 'iso-898-1-loads', 'sae-j429'],
  example: {
    inputs: { thread: 'M12 x 1.75', strengthClass: '10.9', printedArea: '84.3 mm2' },
    outputs: { proofStress: '830 MPa', proofLoad: '70.0 kN', ultimateLoad: '87.7 kN' },
    from: 'reference row O-07, printed load table',
  },
  compute: (v) => {
    const found = strengthOf(v.strengthClass, v.thread.diameter);
    if (!found.ok) {
      return conflict(['thread', 'strengthClass'], 'the table does not have this class at this diameter');
    }
    const { proof, yield: yieldStrength, tensile } = found.value;
    const area: Area = v.printedArea ?? stressArea(v.thread);
    return answer({
      proofStress: proof,
      yieldStrength,
      tensileStrength: tensile,
      proofLoad: loadAt(area, proof),
      ultimateLoad: loadAt(area, tensile),
      preload: (loadAt(area, proof) * v.share) as Force,
    });
  },
});
