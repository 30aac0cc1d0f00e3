/** Inputs and outputs that many entries of this subject share. */
import { cubicCentimetres, degrees, litres, mm } from '../../../quantity/index.js';

const LARGEST = mm(3000);

export const size = (symbol: string, meaning: string) =>
  ({ kind: 'length', symbol, meaning, unit: 'mm', range: { above: 0, to: LARGEST } }) as const;
export const height = (symbol: string, meaning: string) =>
  ({ kind: 'length', symbol, meaning, unit: 'mm', range: { from: 0, to: LARGEST } }) as const;
export const signedLength = (symbol: string, meaning: string) =>
  ({ kind: 'length', symbol, meaning, unit: 'mm', range: { from: -LARGEST, to: LARGEST } }) as const;
export const room = (symbol: string, meaning: string) =>
  ({ kind: 'volume', symbol, meaning, unit: 'cm3', range: { above: 0, to: litres(1000) } }) as const;
export const roomOrNone = (symbol: string, meaning: string) =>
  ({ kind: 'volume', symbol, meaning, unit: 'cm3', range: { from: 0, to: litres(1000) } }) as const;
export const signedRoom = (symbol: string, meaning: string) =>
  ({ kind: 'volume', symbol, meaning, unit: 'cm3', range: { from: -litres(1000), to: litres(1000) } }) as const;
export const surface = (symbol: string, meaning: string) =>
  ({ kind: 'area', symbol, meaning, unit: 'mm2', range: { above: 0, to: 10 } }) as const;

export const bore = size('B', 'cylinder bore, diameter');
export const stroke = size('S', 'stroke: twice the crank throw');
export const rodLength = size('l', 'connecting rod, centre to centre');
export const ratioWanted = {
  kind: 'ratio',
  symbol: 'CR',
  meaning: 'static compression ratio wanted, such as 10.0 for 10 to 1',
  unit: '',
  range: { above: 1, to: 100 },
} as const;
export const staticRatio = { ...ratioWanted, meaning: 'static compression ratio, such as 10.0 for 10 to 1' } as const;
export const cylinders = {
  kind: 'count',
  symbol: 'N',
  meaning: 'number of cylinders',
  range: { from: 1, to: 64 },
} as const;
export const crankAngle = (symbol: string, meaning: string) =>
  ({ kind: 'angle', symbol, meaning, unit: 'deg', range: { from: degrees(-720), to: degrees(720) } }) as const;
/** An angle of a face or bank, short of lying flat. */
export const slope = (symbol: string, meaning: string) =>
  ({ kind: 'angle', symbol, meaning, unit: 'deg', range: { from: 0, below: degrees(90) } }) as const;

export const lengthOut = (symbol: string, meaning: string, places = 3) =>
  ({ kind: 'length', symbol, meaning, unit: 'mm', places }) as const;
export const roomOut = (symbol: string, meaning: string, places = 2) =>
  ({ kind: 'volume', symbol, meaning, unit: 'cm3', places }) as const;
export const ratioOut = (symbol: string, meaning: string, places = 2) =>
  ({ kind: 'ratio', symbol, meaning, unit: '', places }) as const;
export const verdictOut = (meaning: string) => ({ kind: 'text', symbol: 'verdict', meaning }) as const;

export const ONE_CC = cubicCentimetres(1);
