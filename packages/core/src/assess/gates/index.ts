export type { GateQuestion, GaugeInHand, NumberGate, Sisters } from './model.js';
export { placesOfStep } from './places.js';
export { readingGate } from './reading-gate.js';
export { slipWords } from './slip-words.js';
