/**
 * Materials of engine parts: mean thermal expansion (about 20 to 100 °C), Young's modulus, Poisson's ratio.
 * Each row names where it comes from; a maker's sheet outranks it. Expansion in ppm/K, modulus in GPa.
 */
export interface Material {
  readonly name: string;
  readonly expansion?: readonly [low: number, high: number];
  readonly modulus: readonly [low: number, high: number];
  readonly poisson?: readonly [low: number, high: number];
  readonly from: string;
}

export const MATERIALS = {
  'aluminium 356': {
    name: 'Aluminium 356.0, cast head',
    expansion: [21.5, 21.5],
    modulus: [70, 70],
    poisson: [0.33, 0.33],
    from: 'expansion read in a materials textbook, table B.6 (issuhub 5550 p. 844); the rest read at makeitfrom.com',
  },
  'aluminium 319': {
    name: 'Aluminium 319.0, cast head',
    expansion: [21.5, 22],
    modulus: [72, 72],
    poisson: [0.33, 0.33],
    from: 'read at makeitfrom.com (22, rounded); 21.5 from memory',
  },
  'aluminium 2618': {
    name: 'Aluminium 2618 and 2618A, forged piston',
    expansion: [22, 23],
    modulus: [71, 72],
    poisson: [0.33, 0.33],
    from: 'read at makeitfrom.com; 22.3 from memory',
  },
  'aluminium 4032': {
    name: 'Aluminium 4032, forged piston',
    expansion: [19.4, 19.4],
    modulus: [79, 79],
    poisson: [0.33, 0.33],
    from: 'from memory: alloy handbooks, 20 to 100 °C',
  },
  'piston alloy Si12': {
    name: 'Piston alloy AlSi12CuMgNi, cast',
    expansion: [19.5, 20.5],
    modulus: [75, 75],
    from: 'read at meteorpiston.com/materials, 20 to 100 °C; 20.5 to 21.5 to 200 °C, 21.5 to 22.5 to 300 °C',
  },
  'piston alloy Si18': {
    name: 'Piston alloys AlSi18 and AlSi21, cast',
    modulus: [83, 83],
    from: 'read at meteorpiston.com/materials, which gives no expansion for them',
  },
  'grey iron': {
    name: 'Grey cast iron, block',
    expansion: [10.5, 14],
    modulus: [70, 140],
    poisson: [0.26, 0.29],
    from: 'expansion 11 and "automotive" 12 to 14 read at makeitfrom.com, 10.5 from memory; modulus by grade from memory (ASTM A48 data): 100 to 120 for ordinary block iron',
  },
  'ductile iron': {
    name: 'Ductile cast iron',
    expansion: [10.6, 11.2],
    modulus: [170, 180],
    poisson: [0.28, 0.31],
    from: 'expansion read in a materials textbook, table B.6 (80-55-06 and 60-40-18); the rest read at makeitfrom.com',
  },
  steel: {
    name: 'Carbon and low-alloy steel',
    expansion: [11.5, 12],
    modulus: [190, 205],
    poisson: [0.29, 0.29],
    from: '12 and 190 read at makeitfrom.com (1025), 11.5 read in J. Res. NIST 99(1); 11.7 and 205 from memory',
  },
  'bearing bronze': {
    name: 'Bearing bronze C93200',
    expansion: [18, 18],
    modulus: [100, 110],
    poisson: [0.34, 0.34],
    from: 'expansion read in a materials textbook, table B.6; modulus from memory',
  },
} as const satisfies Readonly<Record<string, Material>>;
export type MaterialName = keyof typeof MATERIALS;
export const materialNames = Object.keys(MATERIALS) as readonly MaterialName[];
