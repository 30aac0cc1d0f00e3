export { type CardDuration, type CardFault, lobeFromCard } from './card-lobe.js';
export { curveThrough, type LiftCurve } from './crossings.js';
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
export { type Exponents, lobeAt, type PolynomialLobe } from './polynomial-lobe.js';
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
