import { type Length, mm, type Ratio } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { gapChange } from '../gap-change.js';
import { roomPerTravel } from '../piston-gap.js';
import { crown, gap, lashMore, shownGap, valveAngle } from './gap-inputs.js';

const change = { kind: 'length', unit: 'mm', range: { from: mm(-20), to: mm(20) }, default: 0 } as const;

export const gapCorrection = defineCalculation({
  id: 'valvetrain.gap-correction',
  subject: 'valvetrain',
  title: 'Valve-to-piston room with the final gasket, cuts and lash',
  summary: 'Corrects a measured room for another gasket, cuts of deck or head, crown height, valve recession and lash.',
  inputs: {
    measured: { ...gap, symbol: 'g', meaning: 'room along the stem as measured' },
    valveAngle,
    crown,
    gasketUsed: {
      ...gap,
      symbol: 't₀',
      meaning: 'thickness of the gasket at the measurement as it was clamped',
      default: 0,
    },
    gasketFinal: { ...gap, symbol: 't₁', meaning: 'thickness of the final gasket when tightened', default: 0 },
    faceCut: { ...change, symbol: 'm', meaning: 'cut off the deck and the head face afterwards, in all' },
    crownCut: {
      ...change,
      symbol: 'p',
      meaning: 'piston lower afterwards, along the bore: cut crown or shorter rod; negative: higher',
    },
    pocketCut: {
      ...change,
      symbol: 'k',
      meaning:
        'pocket deeper afterwards, measured square to its floor (parallel pocket) or along the bore (flat crown)',
    },
    valveSunk: {
      ...change,
      symbol: 'v',
      meaning: 'valve head farther from the piston afterwards along its stem: seat cut or sunk',
    },
    lashMore,
    liftMore: {
      ...change,
      symbol: 'Δl',
      meaning: 'net lift at the closest place larger afterwards; negative: smaller',
    },
  },
  outputs: {
    corrected: { ...shownGap, symbol: 'g₁', meaning: 'room along the stem afterwards' },
    change: { ...shownGap, symbol: 'g₁ − g', meaning: 'change' },
    perTravel: { kind: 'ratio', symbol: 'c', meaning: 'room for each unit along the bore', unit: '', places: 4 },
  },
  formula:
    'g₁ = g + c·(t₁ − t₀ − m + p) + k (flat crown: c·k) + v + Δg − Δl; c = cos γ (parallel pocket), 1/cos γ (flat crown)',
  assumptions: [
    'The closest place in the turn hardly moves with these changes.',
    'Lash counts where the valve is open.',
  ],
  sources: ['derived-here', 'shop-practice'],
  example: {
    inputs: {
      measured: '0.090 in',
      valveAngle: '23 deg',
      gasketUsed: '0.015 in',
      gasketFinal: '0.039 in',
      faceCut: '0.010 in',
    },
    outputs: { corrected: '0.1029 in', perTravel: '0.9205' },
    from: 'hand arithmetic: 0.090 + 0.014·cos 23°',
  },
  compute: (v) => {
    const perTravel = roomPerTravel(v.crown, v.valveAngle);
    const change = gapChange(v.crown, v.valveAngle, {
      alongBore: (v.gasketFinal - v.gasketUsed - v.faceCut + v.crownCut) as Length,
      pocketDeeper: v.pocketCut,
      valveSunk: v.valveSunk,
      liftMore: (v.liftMore - v.lashMore) as Length,
    });
    return answer({
      corrected: (v.measured + change) as Length,
      change,
      perTravel: perTravel as Ratio,
    });
  },
});
