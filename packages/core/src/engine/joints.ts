import type { Engine, FastenerKind, Hole, Joint, Stage } from './model.js';

/** The joint of that id; undefined where the sheet describes none. */
export function jointById(engine: Engine, id: string): Joint | undefined {
  return engine.joints.find((joint) => joint.id === id);
}

/** The hole of that id; undefined where the joint has none. */
export function holeById(joint: Joint, id: string): Hole | undefined {
  return joint.holes.find((hole) => hole.id === id);
}

/** What screws into the hole; undefined where the hole is unknown or names no fastener of the joint. */
export function fastenerOfHole(joint: Joint, holeId: string): FastenerKind | undefined {
  const hole = holeById(joint, holeId);
  return joint.fasteners.find((fastener) => fastener.id === hole?.fastener);
}

/** Joints that hold a head down, in the order of the sheet. */
export function jointsOfHead(engine: Engine, headId: string): readonly Joint[] {
  return engine.joints.filter((joint) => joint.head === headId);
}

/** One line of the lay-out tray: so many of this fastener, and the holes that they go into. */
export interface LayOutRow {
  readonly fastener: FastenerKind;
  readonly count: number;
  readonly holes: readonly string[];
}

/** Fasteners to lay out before the joint is begun, by kind in the order of the sheet; kinds without a hole are left out. */
export function layOut(joint: Joint): readonly LayOutRow[] {
  return joint.fasteners
    .map((fastener) => {
      const holes = joint.holes.filter((hole) => hole.fastener === fastener.id).map((hole) => hole.id);
      return { fastener, count: holes.length, holes };
    })
    .filter((row) => row.count > 0);
}

/** Ids of the holes that a stage names, in the order of the sheet's list. The visiting order is for `plan/tightening`. */
export function holesOfStage(joint: Joint, stage: Stage): readonly string[] {
  return stage.holes === 'all' ? joint.holes.map((hole) => hole.id) : stage.holes;
}

const TIGHTENS = new Set(['torque', 'angle', 'stretch']);

/** Does the stage leave its fasteners tighter than it found them? */
export function stageTightens(stage: Stage): boolean {
  return TIGHTENS.has(stage.act.kind);
}
