export {
  type Adjuster,
  lashPerTurn,
  lifterFactor,
  plungerTravel,
  type ScrewPlace,
  screwAdvance,
  turnsForLash,
  turnsForTravel,
} from './adjuster.js';
export { type Buckling, buckling, type Column } from './buckling.js';
export { type CamWindow, camWindow, type ValveRoom } from './cam-window.js';
export { gapOfTravel, travelOfGap } from './collapsed-lifter.js';
export { type GapChanges, gapChange } from './gap-change.js';
export { type LashGrowth, lashChange, thermalGrowth } from './hot-lash.js';
export { type HotStack, type Nearer, nearerHot } from './hot-piston.js';
export { valveLift } from './lift.js';
export { firstToPartAt, followForce, type LobePlace, massAtValve, placesOn } from './moving-mass.js';
export { CROWNS, type Crown, gapCurve, roomPerTravel } from './piston-gap.js';
export {
  type AtRest,
  centredLength,
  type HalfLift,
  halfLiftPushrod,
  type LengthChanges,
  lengthChange,
  narrowestLength,
  neededLength,
} from './pushrod.js';
export { contactSweep, type RockerGeometry, type RockerPlace, rockerAt } from './rocker-motion.js';
export { activeMass, type Spring, springRate, surge } from './spring.js';
export { bindMargin, loadAtHeight, loadShares, openLoad, rateFromLoads } from './spring-loads.js';
export { type ArmTooShort, type RockerSweep, rockerSweep, type SquareAt } from './sweep.js';
