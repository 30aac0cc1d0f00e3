/**
 * The trade's usual cautions for each part of the top-end job, shown before the step that needs them. Those that operations of the whole work
 * tell as well stand in `plan/work/hazards.ts`, once. Common practice, no source; the engine maker's manual, the part maker's sheet and
 * local rules come first.
 */
import type { Engine } from '../engine/index.js';
import { HAZARDS } from '../plan/index.js';
import type { Caution } from './views.js';

const order: Caution = {
  word: 'NOTICE',
  can: 'A missed fastener or stage shows only when the gasket leaks.',
  because: 'Torque in the wrong order bends the head and lets the gasket creep.',
  act: 'One fastener at a time, marked at once. Smooth pull; stop at the click.',
};
const bleed: Caution = {
  word: 'NOTICE',
  can: 'A pumped-up lifter holds its valve open and lets a piston hit it.',
  because: 'Oil in the lifter needs time to leak off.',
  act: 'Wait between valve and next turn of the crank, as long as the lifter maker says.',
};

const turnsByAngle = (engine: Engine, joint: string) =>
  engine.joints
    .find((one) => one.id === joint)
    ?.stages.some((stage) => stage.act.kind === 'angle' || stage.act.kind === 'stretch') ?? false;

export const gasketCautions = (): readonly Caution[] => [HAZARDS.lifting, HAZARDS.edges];
export const fastenerCautions = (): readonly Caution[] => [HAZARDS.liquidInHole];
export const tightenCautions = (engine: Engine, joint: string): readonly Caution[] =>
  turnsByAngle(engine, joint) ? [order, HAZARDS.twice] : [order];
export const valveCautions = (engine: Engine): readonly Caution[] => {
  const gear = engine.valveGear;
  const overhead = gear !== undefined && gear.kind !== 'pushrod';
  return [
    HAZARDS.turning,
    ...(overhead ? [HAZARDS.valvesMeet] : []),
    ...(gear?.adjustment === 'hydraulic' ? [bleed] : []),
  ];
};
export const partsCautions = (): readonly Caution[] => [
  {
    word: 'NOTICE',
    can: 'A used lifter on another lobe wears both away within hours.',
    because: 'Lifter and lobe have worn into each other.',
    act: 'Used parts back to their own place, end and face. A new cam takes new flat lifters.',
  },
];
