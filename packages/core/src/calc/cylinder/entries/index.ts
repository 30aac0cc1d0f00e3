import type { Calculation } from '../../catalogue/index.js';
import { airFlow } from './air-flow.js';
import { airPressure } from './air-pressure.js';
import { angleMill } from './angle-mill.js';
import { boreForRatio } from './bore-for-ratio.js';
import { boredSize } from './bored-size.js';
import { buretteCheck } from './burette-check.js';
import { buretteVolume } from './burette-volume.js';
import { chamberForRatio } from './chamber-for-ratio.js';
import { chooseParts } from './choose-parts.js';
import { cleanUp } from './clean-up.js';
import { clearanceBand } from './clearance-band.js';
import { clearanceRule } from './clearance-rule.js';
import { clearanceFromDisplacement } from './clearance-volume.js';
import { compressionRatio } from './compression-ratio.js';
import { crankingPressure } from './cranking-pressure.js';
import { crevice } from './crevice.js';
import { crownShape } from './crown-shape.js';
import { deckClearance } from './deck-clearance.js';
import { deckCut } from './deck-cut.js';
import { deckForRatio } from './deck-for-ratio.js';
import { deckReadings } from './deck-readings.js';
import { deckStack } from './deck-stack.js';
import { displacement } from './displacement.js';
import { downfill } from './downfill.js';
import { effectiveRatio } from './effective-ratio.js';
import { gasketForQuench } from './gasket-for-quench.js';
import { gasketForRatio } from './gasket-for-ratio.js';
import { gasketVolume } from './gasket-volume.js';
import { headAndDeckCut } from './head-and-deck-cut.js';
import { hotQuench } from './hot-quench.js';
import { impliedBand } from './implied-band.js';
import { intakeFace } from './intake-face.js';
import { meanGasSpeed } from './mean-gas-speed.js';
import { millForVolume } from './mill-for-volume.js';
import { oversize } from './oversize.js';
import { pistonClearance } from './piston-clearance.js';
import { pistonForRatio } from './piston-for-ratio.js';
import { quench } from './quench.js';
import { ratioFromPressure } from './ratio-from-pressure.js';
import { ratioSpread } from './ratio-spread.js';
import { ringAllocation } from './ring-allocation.js';
import { ringBackClearance } from './ring-back-clearance.js';
import { ringFiling } from './ring-filing.js';
import { ringGap } from './ring-gap.js';
import { ringGapBoreChange } from './ring-gap-bore-change.js';
import { ringGapHot } from './ring-gap-hot.js';
import { ringGapTable } from './ring-gap-table.js';
import { ringGapTapered } from './ring-gap-tapered.js';
import { ringSideClearance } from './ring-side-clearance.js';
import { roomForRatio } from './room-for-ratio.js';
import { sizeFromDisplacement } from './size-from-displacement.js';
import { sleeve } from './sleeve.js';
import { staticForEffective } from './static-for-effective.js';
import { strokeForRatio } from './stroke-for-ratio.js';
import { volumeAtAngle } from './volume-at-angle.js';
import { volumeFromMill } from './volume-from-mill.js';
import { volumeRepeats } from './volume-repeats.js';
import { wallLeft } from './wall-left.js';

/** One file an entry, one line here. */
export const cylinderCalculations: readonly Calculation[] = [
  displacement,
  sizeFromDisplacement,
  clearanceFromDisplacement,
  compressionRatio,
  ratioSpread,
  chamberForRatio,
  gasketForRatio,
  deckForRatio,
  pistonForRatio,
  roomForRatio,
  strokeForRatio,
  boreForRatio,
  chooseParts,
  volumeAtAngle,
  effectiveRatio,
  staticForEffective,
  crankingPressure,
  ratioFromPressure,
  airPressure,
  gasketVolume,
  crownShape,
  crevice,
  buretteVolume,
  volumeRepeats,
  buretteCheck,
  downfill,
  millForVolume,
  volumeFromMill,
  headAndDeckCut,
  intakeFace,
  angleMill,
  deckClearance,
  deckStack,
  deckReadings,
  deckCut,
  quench,
  gasketForQuench,
  hotQuench,
  oversize,
  cleanUp,
  boredSize,
  wallLeft,
  sleeve,
  pistonClearance,
  clearanceBand,
  impliedBand,
  clearanceRule,
  ringGap,
  ringGapTable,
  ringGapBoreChange,
  ringGapTapered,
  ringGapHot,
  ringSideClearance,
  ringBackClearance,
  ringFiling,
  ringAllocation,
  meanGasSpeed,
  airFlow,
];
