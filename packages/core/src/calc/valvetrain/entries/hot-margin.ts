import {
  kelvinDifference,
  kilograms,
  type Length,
  megapascals,
  mm,
  rpm,
  squareMetres,
  type ThermalExpansion,
} from '../../../quantity/index.js';
import { answer, type Caution, conflict, defineCalculation } from '../../catalogue/index.js';
import { nearerHot } from '../hot-piston.js';
import { roomPerTravel } from '../piston-gap.js';
import { crankInputs, crown, gap, valveAngle } from './gap-inputs.js';
import { shownForce, shownLength } from './spring-inputs.js';

const ppm = (n: number) => (n * 1e-6) as ThermalExpansion;
const expansion = { kind: 'thermal-expansion', unit: 'ppm/K', range: { from: 0, to: ppm(50) } } as const;
const rise = {
  kind: 'temperature-difference',
  unit: 'K',
  range: { from: kelvinDifference(-100), to: kelvinDifference(600) },
} as const;
const size = { kind: 'length', unit: 'mm', range: { from: 0, to: mm(2000) } } as const;
const { stroke, rodLength } = crankInputs;

export const hotMargin = defineCalculation({
  id: 'valvetrain.hot-margin',
  subject: 'valvetrain',
  title: 'Piston to head and to valve, hot and at speed (estimate)',
  summary:
    'How far the piston comes nearer by rod stretch, bearing play and growth, and what is left of deck and valve room.',
  inputs: {
    stroke,
    rodLength,
    compressionHeight: { ...size, symbol: 'c', meaning: 'piston pin centre to crown' },
    crankSpeed: {
      kind: 'angular-speed',
      symbol: 'n',
      meaning: 'crank speed',
      unit: 'rpm',
      range: { from: 0, to: rpm(30_000) },
    },
    pulledMass: {
      kind: 'mass',
      symbol: 'm',
      meaning: 'piston, pin, rings, locks, small end and about a third of the rod’s shank',
      unit: 'g',
      range: { from: 0, to: kilograms(100) },
    },
    rodSection: {
      kind: 'area',
      symbol: 'A',
      meaning: 'section of the rod’s shank',
      unit: 'mm2',
      range: { above: 0, to: squareMetres(0.1) },
    },
    rodModulus: {
      kind: 'pressure',
      symbol: 'E',
      meaning: 'modulus of the rod: steel about 205 GPa, aluminium 71, titanium 114',
      unit: 'GPa',
      range: { above: 0, to: megapascals(500_000) },
      default: megapascals(205_000),
    },
    play: {
      ...size,
      symbol: 'q',
      meaning: 'play that is taken up upward: half of the clearance of main, big end and pin together',
      default: 0,
    },
    rodRise: { ...rise, symbol: 'ΔTr', meaning: 'rod warmer than when measured', default: kelvinDifference(90) },
    pistonRise: {
      ...rise,
      symbol: 'ΔTp',
      meaning: 'piston between pin and crown warmer, mean',
      default: kelvinDifference(180),
    },
    blockRise: { ...rise, symbol: 'ΔTb', meaning: 'block warmer', default: kelvinDifference(70) },
    rodExpansion: { ...expansion, symbol: 'αr', meaning: 'expansion of rod and crank', default: ppm(11.5) },
    pistonExpansion: { ...expansion, symbol: 'αp', meaning: 'expansion of the piston', default: ppm(20.5) },
    blockExpansion: {
      ...expansion,
      symbol: 'αb',
      meaning: 'expansion of the block: iron about 11 ppm/K, aluminium 23',
      default: ppm(11),
    },
    deckRoom: {
      ...gap,
      symbol: 'd',
      meaning: 'cold: crown to head face along the bore, gasket counted in',
      optional: true,
    },
    valveRoom: { ...gap, symbol: 'g', meaning: 'cold: least valve-to-piston room along the stem', optional: true },
    valveAngle: { ...valveAngle, default: 0 },
    crown,
  },
  outputs: {
    nearer: { ...shownLength, symbol: 'Δ', meaning: 'piston nearer to the head in all' },
    stretch: { ...shownLength, symbol: 'Δs', meaning: 'of this: rod stretched at the top of the exhaust stroke' },
    pistonSide: { ...shownLength, symbol: 'Δp', meaning: 'of this: growth of crank throw, rod and piston' },
    blockSide: { ...shownLength, symbol: 'Δb', meaning: 'taken off: growth of the block over the same height' },
    pull: { ...shownForce, symbol: 'F', meaning: 'pull on the rod at the top of the exhaust stroke' },
    deckRoomHot: { ...shownLength, symbol: 'd₁', meaning: 'crown to head face hot', optional: true },
    valveRoomHot: { ...shownLength, symbol: 'g₁', meaning: 'valve-to-piston room along the stem hot', optional: true },
  },
  formula:
    'Δ = F·l/(E·A) + q + αr·ΔTr·(r + l) + αp·ΔTp·c − αb·ΔTb·(r + l + c); F = m·r·ω²·(1 + r/l); d₁ = d − Δ; g₁ = g − Δ·cos γ (flat crown: Δ/cos γ)',
  assumptions: [
    'An estimate: mean temperatures, one section of the rod, no bending of crown, crank, head or block, no gas pressure, valve still following its lobe.',
    'Height of the block over the same parts taken as throw + rod + compression height.',
  ],
  sources: ['derived-here', 'heywood-crank'],
  example: {
    inputs: {
      stroke: '80 mm',
      rodLength: '160 mm',
      compressionHeight: '40 mm',
      crankSpeed: '0 rpm',
      pulledMass: '600 g',
      rodSection: '200 mm2',
      play: '0.05 mm',
      rodRise: '100 K',
      pistonRise: '200 K',
      blockRise: '100 K',
      rodExpansion: '11 ppm/K',
      pistonExpansion: '20 ppm/K',
      blockExpansion: '11 ppm/K',
      deckRoom: '1.00 mm',
    },
    outputs: { nearer: '0.166 mm', pistonSide: '0.380 mm', blockSide: '0.264 mm', deckRoomHot: '0.834 mm' },
    from: 'hand arithmetic: 0.220 + 0.160 − 0.264 + 0.05',
  },
  compute: (v) => {
    const crank = { crankRadius: (v.stroke / 2) as Length, rodLength: v.rodLength, pinOffset: 0 as Length };
    if (crank.crankRadius >= crank.rodLength) {
      return conflict(['stroke', 'rodLength'], 'the crank could not turn', {
        input: 'rodLength',
        above: crank.crankRadius,
      });
    }
    const { nearer, pull, stretch, pistonSide, blockSide } = nearerHot({
      crank,
      compressionHeight: v.compressionHeight,
      pulledMass: v.pulledMass,
      speed: v.crankSpeed,
      rodSection: v.rodSection,
      rodModulus: v.rodModulus,
      play: v.play,
      rod: { expansion: v.rodExpansion, rise: v.rodRise },
      piston: { expansion: v.pistonExpansion, rise: v.pistonRise },
      block: { expansion: v.blockExpansion, rise: v.blockRise },
    });
    const deckRoomHot = v.deckRoom === undefined ? undefined : ((v.deckRoom - nearer) as Length);
    const valveRoomHot =
      v.valveRoom === undefined ? undefined : ((v.valveRoom - nearer * roomPerTravel(v.crown, v.valveAngle)) as Length);
    return answer(
      {
        nearer,
        stretch,
        pistonSide,
        blockSide,
        pull,
        deckRoomHot,
        valveRoomHot,
      },
      [
        { code: 'estimate', text: 'an estimate for judging margins, not a measured clearance' },
        ...touch(deckRoomHot, 'head'),
        ...touch(valveRoomHot, 'valve'),
      ],
    );
  },
});

const touch = (room: Length | undefined, what: string): readonly Caution[] =>
  room !== undefined && room <= 0 ? [{ code: 'touches', text: `by this estimate the piston meets the ${what}` }] : [];
