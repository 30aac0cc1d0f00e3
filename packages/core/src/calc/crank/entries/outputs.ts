/** Outputs that several entries of this subject share. */
export const topHeight = {
  kind: 'length',
  symbol: 'ht',
  meaning: 'pin above the crankshaft centre at the top',
  unit: 'mm',
  places: 3,
} as const;
