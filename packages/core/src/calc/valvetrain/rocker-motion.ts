/** Rocker arm in motion: lift at the valve, true ratio and the path of the contact over the stem. */
import { type Angle, done, type Length, type Outcome, type Ratio, refused } from '../../quantity/index.js';
import { signChange } from '../numeric/index.js';

export interface RockerGeometry {
  /** Pivot to the centre of the arc (roller or pad) that bears on the stem. */
  readonly valveArm: Length;
  /** With the valve closed, how far that centre lies above the line through the pivot square to the stem, as an angle. */
  readonly valveArmAbove: Angle;
  /** Pivot to the pushrod cup. */
  readonly pushrodArm: Length;
  /** With the valve closed, how far the cup lies below the line through the pivot square to the pushrod, as an angle. */
  readonly pushrodArmBelow: Angle;
  /** Between the pushrod and the lifter's travel, in the plane of the rocker. */
  readonly pushrodTilt: Angle;
  /** Cup to lifter; undefined takes a pushrod so long that its swing does not count. */
  readonly pushrodLength: Length | undefined;
}
export interface RockerPlace {
  readonly lift: Length;
  /** Valve lift for a small more of lobe lift. */
  readonly ratio: Ratio;
  /** Contact on the stem away from the pivot, against its place with the valve closed. */
  readonly contact: Length;
  readonly turned: Angle;
}
export interface CannotFollow {
  readonly code: 'cannot-follow';
  readonly lobeLift: Length;
}

const BACK = -0.2;
const SMALL = 1e-6;

/**
 * Where a rocker arm stands at a lobe lift.
 *
 *   valve: lift = Rv·(sin α₀ − sin(α₀ − δ)), contact = Rv·(cos(α₀ − δ) − cos α₀)
 *   pushrod: the cup, Rp from the pivot, and the lifter's end stay one pushrod length apart; that gives the turn δ
 *
 * α₀ `valveArmAbove`, β₀ `pushrodArmBelow` [rad], both 0 to below 90° or a little negative; `lobeLift` [m]. A flat stem touches a round tip straight under
 * the centre of its arc, so a roller and a pad of one radius lift alike; the roller rolls, the pad slides by its radius times δ.
 * Refuses with `cannot-follow` a lift at which an arm would pass its dead point. Plane motion, rigid parts.
 * Source: derived (two arms on one pivot).
 */
export function rockerAt(g: RockerGeometry, lobeLift: Length): Outcome<RockerPlace, CannotFollow> {
  const at = turnFor(g, lobeLift);
  const up = turnFor(g, lobeLift + SMALL);
  const down = turnFor(g, lobeLift - SMALL);
  if (at === undefined || up === undefined || down === undefined) return refused({ code: 'cannot-follow', lobeLift });
  return done({
    lift: liftOf(g, at) as Length,
    ratio: ((liftOf(g, up) - liftOf(g, down)) / (2 * SMALL)) as Ratio,
    contact: contactOf(g, at) as Length,
    turned: at as Angle,
  });
}

const liftOf = ({ valveArm, valveArmAbove }: RockerGeometry, turn: number): number =>
  valveArm * (Math.sin(valveArmAbove) - Math.sin(valveArmAbove - turn));
const contactOf = ({ valveArm, valveArmAbove }: RockerGeometry, turn: number): number =>
  valveArm * (Math.cos(valveArmAbove - turn) - Math.cos(valveArmAbove));

/** Turn of the arm that puts the cup where the pushrod reaches. */
function turnFor(g: RockerGeometry, lobeLift: number): number | undefined {
  const most = Math.min(Math.PI / 2 + g.pushrodArmBelow, Math.PI / 2 + g.valveArmAbove);
  const over = (turn: number) => cupOver(g, turn, lobeLift);
  return over(BACK) < 0 && over(most) > 0 ? signChange(over, BACK, most) : undefined;
}

/** How far the cup stands beyond the reach of the pushrod. */
function cupOver(g: RockerGeometry, turn: number, lobeLift: number): number {
  const rise = g.pushrodArm * (Math.sin(turn - g.pushrodArmBelow) + Math.sin(g.pushrodArmBelow));
  const out = g.pushrodArm * (Math.cos(turn - g.pushrodArmBelow) - Math.cos(g.pushrodArmBelow));
  const [across, along] = [lobeLift * Math.sin(g.pushrodTilt), lobeLift * Math.cos(g.pushrodTilt)];
  if (g.pushrodLength === undefined) return rise - along;
  return Math.hypot(out - across, g.pushrodLength + rise - along) - g.pushrodLength;
}

/**
 * Sweep of the contact over the stem [m] from closed to a turn of the arm [rad]: largest contact place minus smallest.
 *
 * The contact is farthest out when the arm stands square to the stem. Source: derived.
 */
export function contactSweep(g: RockerGeometry, turn: Angle): Length {
  const square = g.valveArmAbove > 0 && g.valveArmAbove < turn ? [contactOf(g, g.valveArmAbove)] : [];
  const places = [0, contactOf(g, turn), ...square];
  return (Math.max(...places) - Math.min(...places)) as Length;
}
