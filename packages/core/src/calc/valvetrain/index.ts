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
export { gapOfTravel, travelOfGap } from './collapsed-lifter.js';
export { type LashGrowth, lashChange, thermalGrowth } from './hot-lash.js';
export { valveLift } from './lift.js';
export { firstToPartAt, followForce, type LiftAt, massAtValve, placesAlong } from './moving-mass.js';
export { activeMass, type Spring, springRate, surge } from './spring.js';
export { bindMargin, loadAtHeight, loadShares, openLoad, rateFromLoads } from './spring-loads.js';
export { type ArmTooShort, type RockerSweep, rockerSweep, type SquareAt } from './sweep.js';
