import { kelvinDifference, type Length } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { gapClosing } from '../rings.js';
import { bore, height, lengthOut, verdictOut } from './inputs.js';

const IRON = 10.7e-6;
const expansion = { kind: 'thermal-expansion', unit: 'ppm/K', range: { above: 0, to: 50e-6 }, default: IRON } as const;
const rise = {
  kind: 'temperature-difference',
  unit: 'K',
  range: { from: 0, to: kelvinDifference(800) },
} as const;

export const ringGapHot = defineCalculation({
  id: 'cylinder.ring-gap-hot',
  subject: 'cylinder',
  title: 'Ring end gap left when hot',
  summary: 'How far heat closes a ring gap, as two bounds: bore held cold by the block, and bore free to grow.',
  inputs: {
    bore,
    gap: { ...height('g', 'end gap cold'), optional: true },
    ringRise: { ...rise, symbol: 'ΔTr', meaning: 'ring hotter than when the gap was measured, by' },
    boreRise: { ...rise, symbol: 'ΔTb', meaning: 'bore wall hotter, by' },
    ringExpansion: { ...expansion, symbol: 'αr', meaning: 'thermal expansion of the ring; iron when left out' },
    boreExpansion: { ...expansion, symbol: 'αb', meaning: 'thermal expansion of the cylinder; iron when left out' },
  },
  outputs: {
    closingColdBore: lengthOut('Δ1', 'closing with the bore held cold: the worst case'),
    closingFreeBore: lengthOut('Δ2', 'closing with the bore free to grow; negative: the gap opens'),
    leftColdBore: { ...lengthOut('g − Δ1', 'gap left, worst case; negative: the ends meet'), optional: true },
    leftFreeBore: { ...lengthOut('g − Δ2', 'gap left with the bore free'), optional: true },
    verdict: verdictOut('whether the ends meet'),
  },
  formula: 'Δ1 = π·B·αr·ΔTr; Δ2 = π·B·(αr·ΔTr − αb·ΔTb)',
  assumptions: [
    'Ring even in temperature all round. The block may hold the bore back: the truth lies between the bounds.',
  ],
  sources: ['ring-expansion', 'derived-here'],
  example: {
    inputs: { bore: '101.6 mm', gap: '0.457 mm', ringRise: '180 K', boreRise: '80 K' },
    outputs: {
      closingColdBore: '0.615 mm',
      closingFreeBore: '0.342 mm',
      leftFreeBore: '0.115 mm',
      leftColdBore: '-0.158 mm',
      verdict: 'may meet: only the growth of the bore keeps them apart',
    },
    from: 'reference row O-09',
  },
  compute: (v) => {
    const closing = gapClosing(v.bore, v);
    const { gap } = v;
    const left = (by: Length) => (gap === undefined ? undefined : ((gap - by) as Length));
    const leftColdBore = left(closing.coldBore);
    const leftFreeBore = left(closing.freeBore);
    return answer({
      closingColdBore: closing.coldBore,
      closingFreeBore: closing.freeBore,
      leftColdBore,
      leftFreeBore,
      verdict: meeting(leftColdBore, leftFreeBore),
    });
  },
});

function meeting(cold: Length | undefined, free: Length | undefined): string {
  if (cold === undefined || free === undefined) return 'no gap given';
  if (Math.max(cold, free) <= 0) return 'meet in either case';
  if (Math.min(cold, free) > 0) return 'stay apart in either case';
  return 'may meet: only the growth of the bore keeps them apart';
}
