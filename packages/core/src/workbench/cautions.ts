/**
 * The trade's usual cautions for each part of the top-end job, shown before the step that needs them. Common practice,
 * no source; the engine maker's manual, the part maker's sheet and local rules come first.
 */
import type { Engine } from '../engine/index.js';
import type { Caution } from './views.js';

const lifting: Caution = {
  word: 'WARNING',
  can: 'A falling head or a tipping stand can crush hands and feet.',
  because: 'A cast head is heavy, and the stand’s balance changes as it goes on.',
  act: 'Two people or a hoist; lock the stand; keep fingers out of the gap.',
};
const edges: Caution = {
  word: 'CAUTION',
  can: 'Deck and gasket edges cut.',
  because: 'Machined faces are sharp.',
  act: 'Wear gloves; move hands along faces, never across edges.',
};
const wetHole: Caution = {
  word: 'NOTICE',
  can: 'A bolt in a blind hole with liquid in it reads the right torque and clamps nothing, or cracks the casting.',
  because: 'Liquid cannot be squeezed.',
  act: 'Blow blind holes dry with eye protection on, and look into each one.',
};
const order: Caution = {
  word: 'NOTICE',
  can: 'A missed fastener or stage shows only when the gasket leaks.',
  because: 'Torque in the wrong order bends the head and lets the gasket creep.',
  act: 'One fastener at a time, marked at once. Smooth pull; stop at the click.',
};
const angle: Caution = {
  word: 'NOTICE',
  can: 'Turning an angle stage twice stretches or breaks the bolt.',
  because: 'Past its yield a bolt keeps the length that it was given.',
  act: 'Mark the head before turning and again after. In doubt: stop, and follow the rule of the sheet.',
};
const rotating: Caution = {
  word: 'WARNING',
  can: 'A turning crank catches fingers, and a starter can turn it without you.',
  because: 'Barring moves every piston, valve and belt at once.',
  act: 'Battery off, plugs out, bar by hand, hands clear of pulleys; one person turns, and says so.',
};
const interference: Caution = {
  word: 'NOTICE',
  can: 'A valve can meet a piston when cam and crank are turned apart.',
  because: 'On many overhead-cam engines they share the same room.',
  act: 'Turn cam and crank only together once timed; if it catches, stop and look. Follow the maker’s safe crank position.',
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

export const gasketCautions = (): readonly Caution[] => [lifting, edges];
export const fastenerCautions = (): readonly Caution[] => [wetHole];
export const tightenCautions = (engine: Engine, joint: string): readonly Caution[] =>
  turnsByAngle(engine, joint) ? [order, angle] : [order];
export const valveCautions = (engine: Engine): readonly Caution[] => {
  const gear = engine.valveGear;
  const overhead = gear !== undefined && gear.kind !== 'pushrod';
  return [rotating, ...(overhead ? [interference] : []), ...(gear?.adjustment === 'hydraulic' ? [bleed] : [])];
};
export const partsCautions = (): readonly Caution[] => [
  {
    word: 'NOTICE',
    can: 'A used lifter on another lobe wears both away within hours.',
    because: 'Lifter and lobe have worn into each other.',
    act: 'Used parts back to their own place, end and face. A new cam takes new flat lifters.',
  },
];
