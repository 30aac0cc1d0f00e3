export {
  judgePart,
  type PartFitted,
  type PartPlace,
  type PartRefusal,
  type PartRegister,
  type PartTagged,
  partsOf,
  registerOf,
} from './register.js';
export { type ValveRecord, type ValveStand, valveRecord } from './valve-record.js';
