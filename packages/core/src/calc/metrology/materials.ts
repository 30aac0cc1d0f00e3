/** Thermal expansion near 20 °C [1/K] of what engines and gauges are made of; any one part may differ by 10 %. */
export const MATERIALS = ['steel', 'grey-iron', 'aluminium', 'piston-4032', 'piston-2618', 'silicon'] as const;
export type Material = (typeof MATERIALS)[number];

/** Steel, aluminium and silicon: Swyt, J. Res. NIST 99(1), 1994 (read). Iron and piston alloys: recalled. */
export const EXPANSION: Readonly<Record<Material, number>> = {
  steel: 11.5e-6,
  'grey-iron': 11e-6,
  aluminium: 23.1e-6,
  'piston-4032': 19.4e-6,
  'piston-2618': 22.3e-6,
  silicon: 2.6e-6,
};
