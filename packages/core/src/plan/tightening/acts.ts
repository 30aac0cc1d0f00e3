/**
 * From a joint's printed stages to the flat list of acts, one fastener at a time, in the order of the wrench.
 */
import { centreOutwardOrder } from '../../calc/fasteners/index.js';
import type { FastenerKind, Hole, Joint, Stage, StageAct, ThreadTreatment } from '../../engine/model.js';

/** The hole name of an act that speaks to the whole joint. */
export const WHOLE_JOINT = 'all';

/** The window of an act in SI; `quantity` names what is measured, and `none` means that there is nothing to read. */
export interface ActTarget {
  readonly text: string;
  readonly quantity: 'torque' | 'angle' | 'length' | 'none';
  readonly low?: number;
  readonly high?: number;
}
/** One act of the hand: this fastener, this stage, this target. */
export interface Act {
  /** Counts from 1 over the whole joint. */
  readonly number: number;
  readonly stage: number;
  readonly label?: string;
  readonly hole: string;
  /** The cap that it is about, and the fasteners that hold it, where the joint is tightened cap by cap. */
  readonly cap?: { readonly name: string; readonly holes: readonly string[] };
  readonly kind: StageAct['kind'];
  readonly target: ActTarget;
  readonly note?: string;
  readonly fastener?: FastenerKind;
  readonly onThread?: ThreadTreatment;
  readonly underHead?: ThreadTreatment;
  /** Turning by angle or stretch cannot be repeated on the same fastener; a torque value can. */
  readonly once: boolean;
}
export interface VisitingOrder {
  readonly holes: readonly string[];
  readonly origin: 'sheet' | 'computed' | 'as-listed';
  readonly words: string;
}
export interface TighteningActs {
  readonly order: VisitingOrder;
  readonly acts: readonly Act[];
}

/** How an act is named in facts and addresses. */
export const actKey = (act: Pick<Act, 'stage' | 'hole'>): string => `${act.stage}/${act.hole}`;
/** How a skipped act is named in a `skipped` fact. */
export const skipName = (joint: string, act: Pick<Act, 'stage' | 'hole'>): string => `act:${joint}/${actKey(act)}`;

/** A stage by torque value may go round again: the wrench clicks and nothing turns. */
export const byTorqueValue = (kind: StageAct['kind']): boolean => kind === 'torque' || kind === 'verify';

/** Whether an act must never be repeated on the same fastener: by angle, by stretch, or loosened by an angle. */
function isOnce(act: StageAct): boolean {
  return act.kind === 'angle' || act.kind === 'stretch' || (act.kind === 'loosen' && act.amount !== 'fully');
}

/**
 * The order in which a whole pass visits the joint's fasteners.
 *
 * The printed order wins. Where the sheet prints none, an order from the centre outward is computed from the positions
 * and says so; without positions the holes stand as listed. Holes that a printed order leaves out follow it as listed.
 */
export function visitingOrder(joint: Joint): VisitingOrder {
  const listed = joint.holes.map((hole) => hole.id);
  if (joint.order !== undefined) {
    const printed = joint.order.holes;
    const rest = listed.filter((id) => !printed.includes(id));
    const origin = joint.order.from.text === '' ? 'the sheet' : joint.order.from.text;
    const extra = rest.length === 0 ? '' : ` ${rest.join(', ')} not in it: taken after it as listed.`;
    return { holes: [...printed, ...rest], origin: 'sheet', words: `Order as printed (${origin}).${extra}` };
  }
  const placed = joint.holes.flatMap((hole) => (hole.at === undefined ? [] : [{ id: hole.id, ...hole.at }]));
  if (placed.length === listed.length && placed.length > 0) {
    return {
      holes: centreOutwardOrder(placed),
      origin: 'computed',
      words: 'The sheet prints no order. Computed from the centre outward; a maker’s order, where one exists, wins.',
    };
  }
  return {
    holes: listed,
    origin: 'as-listed',
    words: 'The sheet prints neither an order nor all positions. Fasteners stand as the sheet lists them.',
  };
}

/** The holes of one stage, in the order of the wrench. */
function holesOf(stage: Stage, joint: Joint, order: VisitingOrder): readonly string[] {
  if (stage.direction === 'as-listed') return stage.holes === 'all' ? joint.holes.map((hole) => hole.id) : stage.holes;
  const named = stage.holes;
  const inOrder = named === 'all' ? order.holes : order.holes.filter((id) => named.includes(id));
  return stage.direction === 'reverse' ? inOrder.toReversed() : inOrder;
}

/** "At least one turn" has no upper end. */
const isLeast = (text: string): boolean => /^\s*(at least|>=|≥)/i.test(text);

function targetOf(act: StageAct): ActTarget {
  switch (act.kind) {
    case 'torque':
    case 'verify':
      return { text: act.text, quantity: 'torque', ...act.target };
    case 'angle':
      return { text: act.text, quantity: 'angle', ...act.target };
    case 'stretch':
      return { text: act.text, quantity: 'length', ...act.target };
    case 'loosen':
      if (act.amount === 'fully') return { text: act.text, quantity: 'none' };
      return { text: act.text, quantity: 'angle', low: act.amount, ...(!isLeast(act.text) && { high: act.amount }) };
    case 'renew':
    case 'instruct':
    case 'feel':
      return { text: act.text, quantity: 'none' };
  }
}

/** What the fastener in this hole is and what goes on it. */
function fastenerAt(joint: Joint, hole: Hole | undefined): Pick<Act, 'fastener' | 'onThread' | 'underHead'> {
  if (hole === undefined) return {};
  const fastener = joint.fasteners.find((kind) => kind.id === hole.fastener);
  return { ...(fastener && { fastener }), onThread: hole.onThread, underHead: hole.underHead };
}

/** What is felt belongs to the crank, and what is said of a cap to all of its fasteners. */
function speaksToWhole({ act, holes, cap }: Stage): boolean {
  return act.kind === 'feel' || (act.kind === 'instruct' && (holes === 'all' || cap !== undefined));
}

function actsOfStage(stage: Stage, joint: Joint, order: VisitingOrder, before: number): Act[] {
  const whole = speaksToWhole(stage);
  const holes = whole ? [WHOLE_JOINT] : holesOf(stage, joint, order);
  return holes.map((hole, index) => ({
    number: before + index + 1,
    stage: stage.number,
    ...(stage.label !== undefined && { label: stage.label }),
    hole,
    ...(stage.cap !== undefined && { cap: { name: stage.cap, holes: holesOf(stage, joint, order) } }),
    kind: stage.act.kind,
    target: targetOf(stage.act),
    ...(stage.note !== undefined && { note: stage.note }),
    ...fastenerAt(joint, whole ? undefined : joint.holes.find((one) => one.id === hole)),
    once: isOnce(stage.act),
  }));
}

/**
 * Every act of a joint in the order in which it is done, exactly as the sheet prints the stages.
 *
 * `in-order` and `reverse` follow the visiting order, narrowed to the stage's own holes; `as-listed` follows the stage.
 * An instruction to `all` is one act for the whole joint, one to a cap is one act, one to named holes is one act a hole;
 * what is felt is always one act.
 *
 * Assumes a sheet that passed its loader: stages numbered from 1 in their order, holes that exist.
 * Source: the sheet; fallback order see `calc/fasteners/order.ts`.
 */
export function tighteningActs(joint: Joint): TighteningActs {
  const order = visitingOrder(joint);
  const acts: Act[] = [];
  for (const stage of joint.stages) acts.push(...actsOfStage(stage, joint, order, acts.length));
  return { order, acts };
}
