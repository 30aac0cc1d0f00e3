/** Of which oversize pistons must be, by what stands decided for the bores. */
import type { Assessment } from '../model.js';
import { cutBefore } from './cut-before.js';
import { makersPistons } from './piston-sets.js';

/** `several`: some bores are finished to another size than the rest, and no one set serves all. */
export type DecidedOversize =
  | { readonly kind: 'one'; readonly oversize: number; readonly decided: boolean }
  | { readonly kind: 'several' };

const MICROMETRES = 1e-6;

/**
 * Oversize of the pistons [m on diameter]: that to which all bores are decided to be cut; where nothing is cut, by which they were
 * bored before, and standard where they were not or nothing was measured.
 */
export function decidedOversize(assessment: Assessment): DecidedOversize {
  const chosen = assessment.readings.choices.findLast(({ decision }) => decision === 'bore-oversize')?.alternative;
  const cut = /^(bore|some)-(\d+)$/.exec(chosen ?? '');
  if (cut?.[1] === 'some') return { kind: 'several' };
  const sizes = makersPistons(assessment.engine).map(({ oversize }) => oversize);
  if (cut) {
    // The alternative names its size in whole micrometres; the one of the stock that is meant may be a part of an inch.
    const size = Number(cut[2]);
    const oversize = sizes.find((one) => Math.round(one / MICROMETRES) === size) ?? size * MICROMETRES;
    return { kind: 'one', oversize, decided: true };
  }
  const oversize = cutBefore(assessment, 'cylinder-bore', 'hole', sizes);
  return { kind: 'one', oversize, decided: chosen !== undefined };
}
