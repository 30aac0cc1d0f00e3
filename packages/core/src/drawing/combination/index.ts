export { degreeWheel, type WheelMark, type WheelShown } from './degree-wheel.js';
export { rockerSweep, type SweepShown, type SweepTrial } from './rocker-sweep.js';
export { type OpenArc, type TimingShown, timingDiagram } from './timing-diagram.js';
