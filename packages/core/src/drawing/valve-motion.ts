import { openWindows } from '../calc/cam/index.js';
import { type CamEvents, type Engine, firingDeadCentres, type ValveGearKind, type ValveId } from '../engine/index.js';
import type { Angle } from '../quantity/index.js';
import { inDegrees, within } from './geometry.js';
import { type Lobe, rise } from './lobe.js';

export type ValveState = 'on base circle' | 'opening' | 'open' | 'closing';
/** How one valve stands, with what the drawing had to assume. */
export interface ValveMotion {
  readonly lobe: Lobe;
  /** Cam degrees from the nose to the follower, positive after full lift. */
  readonly pastNose: number;
  readonly lobeLift: number;
  readonly valveLift: number;
  readonly fullLift: number;
  readonly ratio: number;
  readonly state: ValveState;
  /** Crank degrees after the cylinder's firing dead centre; absent where the firing order is not stated. */
  readonly phase?: number;
  readonly notes: readonly string[];
}
const deg = (degrees: number): Angle => ((degrees * Math.PI) / 180) as Angle;
/** A mild road cam, for a drawing only: common practice, no source. */
const USUAL_EVENTS: CamEvents = {
  intakeOpens: deg(18),
  intakeCloses: deg(54),
  exhaustOpens: deg(56),
  exhaustCloses: deg(16),
};
const USUAL_LIFT = { pushrod: 7, 'overhead-rocker': 7, 'overhead-finger': 6, 'overhead-bucket': 9 };
const USUAL_RATIO = { pushrod: 1.5, 'overhead-rocker': 1.4, 'overhead-finger': 1.6, 'overhead-bucket': 1 };
/** Crank degrees either side of full lift in which a valve is called open rather than opening or closing. */
const NEAR_FULL = 12;

/** @param crankAngle rad, from firing TDC of cylinder 1. @param events seat events; absent: a usual cam, and said so. */
export function valveMotion(
  engine: Engine,
  kind: ValveGearKind,
  valve: ValveId,
  crankAngle: Angle,
  events: CamEvents | undefined,
): ValveMotion {
  const window = openWindows(events ?? USUAL_EVENTS)[valve.kind];
  const opens = inDegrees(window.opens);
  const duration = inDegrees(window.closes) - opens;
  const stated = engine.cam?.lobeLift?.[valve.kind]?.value;
  const statedRatio = engine.valveGear?.ratio?.value;
  const lobe = { lift: positive(stated, 1000) ?? USUAL_LIFT[kind], half: Math.min(85, Math.max(30, duration / 4)) };
  const ratio = kind === 'overhead-bucket' ? 1 : (positive(statedRatio, 1) ?? USUAL_RATIO[kind]);
  const phase = phaseOf(engine, valve, crankAngle);
  const pastOpening = phase === undefined ? undefined : within(phase - opens, 720);
  // Degrees of crank after full lift, in -360 to 360; the heel is on the follower where nothing is known.
  const pastFull = pastOpening === undefined ? 360 : wrappedAbout(pastOpening - duration / 2);
  const pastNose = pastFull / 2;
  // The lobe's drawn half width is clamped; the motion follows the stated window.
  const share = Math.abs(pastFull) < duration / 2 ? (pastFull / (duration / 2)) * lobe.half : 90;
  const lobeLift = rise(lobe, share).lift;
  const motion = {
    lobe,
    pastNose: Math.abs(share) < lobe.half ? share : pastNose,
    lobeLift,
    ratio,
    valveLift: lobeLift * ratio,
    fullLift: lobe.lift * ratio,
    state: stateOf(pastFull, duration),
    notes: notesOf(events, stated !== undefined, phase),
  };
  return phase === undefined ? motion : { ...motion, phase };
}
const positive = (value: number | undefined, times: number): number | undefined =>
  value !== undefined && value > 0 ? value * times : undefined;
const wrappedAbout = (degrees: number): number => {
  const turn = within(degrees, 720);
  return turn > 360 ? turn - 720 : turn;
};
function phaseOf(engine: Engine, valve: ValveId, crankAngle: Angle): number | undefined {
  const centres = firingDeadCentres(engine.layout);
  const fires = centres.ok ? centres.value.get(valve.cylinder) : undefined;
  return fires === undefined ? undefined : within(inDegrees(crankAngle) - inDegrees(fires), 720);
}
function stateOf(pastFull: number, duration: number): ValveState {
  if (Math.abs(pastFull) >= duration / 2) return 'on base circle';
  if (Math.abs(pastFull) <= NEAR_FULL) return 'open';
  return pastFull < 0 ? 'opening' : 'closing';
}
function notesOf(events: CamEvents | undefined, liftStated: boolean, phase: number | undefined): readonly string[] {
  return [
    events === undefined ? 'The cam events are not stated: the state shown is that of a usual mild cam.' : '',
    liftStated
      ? 'The lobe has its stated lift; its flanks are schematic.'
      : 'Lobe and lift are schematic: no lobe lift is stated.',
    phase === undefined ? 'The firing order is not stated: the cam is drawn with its heel to the follower.' : '',
  ];
}
