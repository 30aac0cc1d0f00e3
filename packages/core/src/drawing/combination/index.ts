export { degreeWheel, type WheelMark, type WheelShown } from './degree-wheel.js';
export { rockerSweep, type SweepShown, type SweepTrial } from './rocker-sweep.js';
export { type ShareShown, type SharesShown, sharesFigure } from './shares-figure.js';
export { type StackedPart, type StackShown, stackFigure } from './stack-figure.js';
export { type OpenArc, type TimingShown, timingDiagram } from './timing-diagram.js';
export { type TurningShown, turningForce } from './turning-force.js';
