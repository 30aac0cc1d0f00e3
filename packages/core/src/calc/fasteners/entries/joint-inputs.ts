/** Inputs about stretch, clamped parts and joints that several entries share. */
import { mm, pascals } from '../../../quantity/index.js';

export const length = { kind: 'length', unit: 'mm', range: { above: 0, to: mm(5000) } } as const;
export const span = { kind: 'length', unit: 'mm', range: { from: 0, to: mm(5000) } } as const;
export const modulus = { kind: 'pressure', unit: 'GPa', range: { above: 0, to: pascals(1e12) } } as const;
export const boltModulus = { ...modulus, symbol: 'ES', meaning: 'Young’s modulus of the bolt' } as const;

/** No joint gives more than a millimetre for each newton. */
const compliance = { kind: 'compliance', unit: 'µm/kN', range: { above: 0, to: 0.001 } } as const;
export const boltCompliance = {
  ...compliance,
  symbol: 'δS',
  meaning: 'compliance of the bolt: see fasteners.bolt-resilience',
} as const;
export const partCompliance = {
  ...compliance,
  symbol: 'δP',
  meaning: 'compliance of the clamped parts: see fasteners.sleeve-compliance and the cones; a gasket adds to it',
} as const;
export const complianceOut = { kind: 'compliance', unit: 'µm/kN', places: 4 } as const;
export const stiffnessOut = { kind: 'stiffness', unit: 'N/mm', places: 0 } as const;
export const force = { kind: 'force', unit: 'kN', places: 3 } as const;
