import type { Length } from '../../quantity/index.js';

/**
 * Shims are compared in whole nanometres: every thickness that is printed in 0.001 mm or in 0.0001 in is a whole number
 * of them (0.0001 in = 2540 nm), so "inside the window, ends included" is decided without rounding trouble.
 */
export const toNm = (length: number): number => Math.round(length * 1e9);
export const fromNm = (nanometres: number): Length => (nanometres / 1e9) as Length;
