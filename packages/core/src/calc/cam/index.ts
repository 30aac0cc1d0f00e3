export {
  advanced,
  type CamEvents,
  type CamLobes,
  centrelineFromEqualLifts,
  eventsFromLobes,
  lobesFromEvents,
  type NoDuration,
} from './events.js';
export {
  baseCircleWindow,
  type CardBasis,
  marginOnBaseCircle,
  type OpenWindow,
  openWindows,
  type SeatWindows,
  seatWindows,
  type ValveWindows,
  type WindowBasis,
  type WindowFault,
} from './windows.js';
