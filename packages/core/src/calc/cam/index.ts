export { type CardDuration, type CardFault, lobeFromCard } from './card-lobe.js';
export { type Crossing, crossingAt, curveThrough, type LiftCurve, type NotReached } from './crossings.js';
export { type EqualLifts, equalLifts } from './equal-lifts.js';
export {
  advanced,
  type CamEvents,
  type CamLobes,
  centrelineFromEqualLifts,
  eventsFromLobes,
  type LobePlaces,
  lobesFromEvents,
  type NoDuration,
  VALVE_SIDES,
  type ValveSide,
} from './events.js';
export { inOrder, type LiftTable, liftTable, type TableFault } from './lift-table.js';
export { lobeLift } from './lobe-lift.js';
export { usualLobeOptions } from './lobe-options.js';
export {
  bestOffset,
  betterOffset,
  OFFSET_PLACES,
  type OffsetChoice,
  type OffsetPlace,
  offsetChoices,
  timingOfOffset,
} from './offset.js';
export { type Exponents, lobeAt, lobeCurve, type PolynomialLobe } from './polynomial-lobe.js';
export { seatAllowance, USUAL_CHECKING_LIFT } from './seat-allowance.js';
export {
  type CardBasis,
  roomFaults,
  type SeatWindows,
  seatWindows,
  type WindowBasis,
  type WindowFault,
} from './seat-windows.js';
export { describeTableFault } from './table-words.js';
export { fitLobe, type LobeFault, type LobeFit, type LobeOptions, type LobeShape } from './whole-lobe.js';
export { describeWindowFault } from './window-words.js';
export {
  baseCircleWindow,
  distanceFromWindow,
  marginOnBaseCircle,
  type OpenWindow,
  openFor,
  openWindows,
  type Span,
  type ValveWindows,
  type WindowDistance,
  widened,
} from './windows.js';
