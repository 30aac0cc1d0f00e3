/** Outputs that the entries about the oil film share. */
const plain = { kind: 'ratio', unit: '', places: 4 } as const;
const film = { kind: 'length', unit: 'µm', places: 2 } as const;

export const number = { ...plain, symbol: 'S', meaning: 'Sommerfeld number' } as const;
export const unitLoad = {
  kind: 'pressure',
  symbol: 'P',
  meaning: 'load on the projected area',
  unit: 'MPa',
  places: 3,
} as const;
export const eccentricity = {
  ...plain,
  symbol: 'ε',
  meaning: 'eccentricity over radial clearance',
} as const;
export const filmRatio = { ...plain, symbol: 'h0/c', meaning: 'thinnest film over radial clearance' } as const;
export const thinnest = { ...film, symbol: 'h0', meaning: 'thinnest film, advisory' } as const;
export const attitude = {
  kind: 'angle',
  symbol: 'φ',
  meaning: 'attitude: from the load line to the thinnest film',
  unit: 'deg',
  places: 1,
} as const;
export const frictionVariable = { ...plain, symbol: '(R/c)·f', meaning: 'friction variable', places: 3 } as const;
export const petroffVariable = {
  ...plain,
  symbol: '2π²·S',
  meaning: 'friction variable of a centred shaft: a lower bound',
  places: 3,
} as const;
export const flowVariable = { ...plain, symbol: 'Q/(R·c·N·L)', meaning: 'flow variable', places: 2 } as const;
export const sideShare = {
  ...plain,
  symbol: 'Qs/Q',
  meaning: 'share of the flow that leaves at the ends',
  places: 3,
} as const;
export const pressureRatio = {
  ...plain,
  symbol: 'P/pmax',
  meaning: 'mean over largest film pressure',
  places: 3,
} as const;
export const friction = {
  frictionCoefficient: { ...plain, symbol: 'f', meaning: 'coefficient of friction', places: 5 },
  frictionTorque: { kind: 'torque', symbol: 'T', meaning: 'friction torque', unit: 'N·m', places: 3 },
  power: { kind: 'power', symbol: 'H', meaning: 'power lost to friction', unit: 'W', places: 1 },
} as const;
