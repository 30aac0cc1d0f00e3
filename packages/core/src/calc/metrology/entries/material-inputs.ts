/** Expansion given as a figure or by naming the material. */
import type { ThermalExpansion } from '../../../quantity/index.js';
import { EXPANSION, MATERIALS, type Material } from '../materials.js';
import { expansion } from './inputs.js';

export const expansionInput = (symbol: string, whose: string) =>
  ({ ...expansion, symbol, meaning: `thermal expansion of ${whose}`, optional: true }) as const;
export const materialInput = (symbol: string, whose: string) =>
  ({
    kind: 'choice',
    symbol,
    meaning: `material of ${whose}, where its expansion is not given as a figure`,
    choices: MATERIALS,
    optional: true,
  }) as const;

/** The figure, else that of the material, else undefined. */
export const expansionOf = (figure: ThermalExpansion | undefined, material: Material | undefined): number | undefined =>
  figure ?? (material && EXPANSION[material]);
