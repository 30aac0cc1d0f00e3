import type { Pressure, Ratio, ThermalExpansion } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { MATERIALS, type Material, materialNames } from '../materials.js';

const PPM = 1e-6;
const GPA = 1e9;
const expansion = { kind: 'thermal-expansion', unit: 'ppm/K', places: 1, optional: true } as const;
const modulus = { kind: 'pressure', unit: 'GPa', places: 0 } as const;
const poisson = { kind: 'ratio', unit: '', places: 2, optional: true } as const;

export const material = defineCalculation({
  id: 'fits.material',
  subject: 'fits',
  title: 'Expansion and stiffness of a material',
  summary: 'Range of thermal expansion, modulus and Poisson’s ratio of an engine material, with where they come from.',
  inputs: {
    material: { kind: 'choice', symbol: 'of', meaning: 'material', choices: materialNames },
  },
  outputs: {
    name: { kind: 'text', symbol: 'name', meaning: 'what it is' },
    expansionLow: { ...expansion, symbol: 'α min', meaning: 'mean thermal expansion, about 20 to 100 °C, low end' },
    expansionHigh: { ...expansion, symbol: 'α max', meaning: 'the same, high end' },
    modulusLow: { ...modulus, symbol: 'E min', meaning: 'Young’s modulus, low end' },
    modulusHigh: { ...modulus, symbol: 'E max', meaning: 'Young’s modulus, high end' },
    poissonLow: { ...poisson, symbol: 'ν min', meaning: 'Poisson’s ratio, low end' },
    poissonHigh: { ...poisson, symbol: 'ν max', meaning: 'Poisson’s ratio, high end' },
    from: { kind: 'text', symbol: 'from', meaning: 'where each figure comes from' },
  },
  formula: 'table',
  assumptions: [
    'Expansion is a mean over a range and rises with temperature, in piston alloys by a tenth from 100 to 300 °C.',
    'Grey iron varies with its grade: 100 to 120 GPa is usual for a block.',
  ],
  sources: ['material-tables'],
  example: {
    inputs: { material: 'aluminium 356' },
    outputs: { expansionLow: '21.5 ppm/K', modulusLow: '70 GPa', poissonLow: '0.33' },
    from: 'materials table of the reference rows',
  },
  compute: ({ material: of }) => {
    const found: Material = MATERIALS[of];
    const [expansionLow, expansionHigh] = (found.expansion ?? []).map((one) => (one * PPM) as ThermalExpansion);
    const [modulusLow, modulusHigh] = found.modulus.map((one) => (one * GPA) as Pressure);
    const [poissonLow, poissonHigh] = (found.poisson ?? []) as readonly Ratio[];
    return answer({
      name: found.name,
      expansionLow,
      expansionHigh,
      modulusLow: modulusLow!,
      modulusHigh: modulusHigh!,
      poissonLow,
      poissonHigh,
      from: found.from,
    });
  },
});
