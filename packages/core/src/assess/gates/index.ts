export type { GateQuestion, GaugeInHand, NumberGate, Sisters } from './model.js';
export { readingGate } from './reading-gate.js';
