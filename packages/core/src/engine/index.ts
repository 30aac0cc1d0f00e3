export { apart, CYCLE, DEGREE, ONE_TURN, wrapped } from './angles.js';
export {
  axisPastFirst,
  bankAngleInRunningSense,
  type FiringOrderNotStated,
  firingDeadCentres,
  firingIntervals,
  throwAngles,
} from './dead-centres.js';
export {
  FIGURE_KINDS,
  type FigureGroup,
  type FigureKindOf,
  type FigurePlace,
  figureKey,
  figureKind,
  figureParts,
  placesOfFigure,
} from './figures/index.js';
export {
  fastenerOfHole,
  holeById,
  holesOfStage,
  jointById,
  jointsOfHead,
  type LayOutRow,
  layOut,
  stageTightens,
} from './joints.js';
export type * from './model.js';
export { headName, headOfCylinder, holeName, valveName } from './names.js';
export { fastenerReach, ownReach, type Reach } from './reach.js';
export { threadDiameter } from './thread-diameter.js';
export { sameValve, valveKey, valveOfKey, valvesOf } from './valves.js';
