import type { Ratio } from '../../quantity/index.js';

/**
 * Scatter of preload about its middle by method of tightening: least and most.
 * Source: VDI 2230, 1986 edition, bibliography key `vdi-2230-scatter`; later editions print other bands.
 */
export const METHODS = {
  'yield or angle controlled': [0.05, 0.12],
  'stretch measured or hydraulic': [0.09, 0.23],
  'torque wrench, torque from trials': [0.17, 0.23],
  'torque wrench, friction estimated': [0.23, 0.28],
  'power driver': [0.26, 0.43],
} as const satisfies Readonly<Record<string, readonly [number, number]>>;
export type Method = keyof typeof METHODS;
export const methods = Object.keys(METHODS) as readonly Method[];

/** Least and most scatter of a method, as shares of the middle preload. */
export function scatterOf(method: Method): { readonly low: Ratio; readonly high: Ratio } {
  const [low, high] = METHODS[method];
  return { low: low as Ratio, high: high as Ratio };
}
