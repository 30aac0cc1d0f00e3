/** Rocker arm in motion: lift at the valve, true ratio and the path of the contact over the stem. */
import { type Angle, done, type Length, type Outcome, type Ratio, refused } from '../../quantity/index.js';

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
  const turn = turnFor(g, lobeLift);
  if (turn === undefined) return refused({ code: 'cannot-follow', lobeLift });
  const { byTurn, byLift } = cupOver(g, turn, lobeLift);
  return done({
    lift: liftOf(g, turn) as Length,
    ratio: ((-g.valveArm * Math.cos(g.valveArmAbove - turn) * byLift) / byTurn) as Ratio,
    contact: contactOf(g, turn) as Length,
    turned: turn as Angle,
  });
}

const liftOf = ({ valveArm, valveArmAbove }: RockerGeometry, turn: number): number =>
  valveArm * (Math.sin(valveArmAbove) - Math.sin(valveArmAbove - turn));
const contactOf = ({ valveArm, valveArmAbove }: RockerGeometry, turn: number): number =>
  valveArm * (Math.cos(valveArmAbove - turn) - Math.cos(valveArmAbove));

/** Far finer than a lift can be read [rad]. */
const FINE = 1e-13;
const TURNS = 100;

/** Turn of the arm that puts the cup where the pushrod reaches: Newton's way, halved where it would leave what is still open. */
function turnFor(g: RockerGeometry, lobeLift: number): number | undefined {
  let [low, high] = [BACK, Math.min(Math.PI / 2 + g.pushrodArmBelow, Math.PI / 2 + g.valveArmAbove)];
  if (!(cupOver(g, low, lobeLift).over < 0 && cupOver(g, high, lobeLift).over > 0)) return undefined;
  let turn = Math.min(lobeLift / g.pushrodArm, (low + high) / 2);
  for (let count = 0; count < TURNS; count += 1) {
    const { over, byTurn } = cupOver(g, turn, lobeLift);
    if (over < 0) low = turn;
    else high = turn;
    const wished = turn - over / byTurn;
    const next = wished >= low && wished <= high ? wished : (low + high) / 2;
    if (Math.abs(next - turn) <= FINE) return next;
    turn = next;
  }
  return turn;
}

/** How far the cup stands beyond the reach of the pushrod, with its change by the turn of the arm and by the lobe lift. */
function cupOver(g: RockerGeometry, turn: number, lobeLift: number) {
  const angle = turn - g.pushrodArmBelow;
  const [sine, cosine] = [g.pushrodArm * Math.sin(angle), g.pushrodArm * Math.cos(angle)];
  const rise = sine + g.pushrodArm * Math.sin(g.pushrodArmBelow);
  const out = cosine - g.pushrodArm * Math.cos(g.pushrodArmBelow);
  const [tiltSine, tiltCosine] = [Math.sin(g.pushrodTilt), Math.cos(g.pushrodTilt)];
  if (g.pushrodLength === undefined) return { over: rise - lobeLift * tiltCosine, byTurn: cosine, byLift: -tiltCosine };
  const [across, along] = [out - lobeLift * tiltSine, g.pushrodLength + rise - lobeLift * tiltCosine];
  const apart = Math.hypot(across, along);
  return {
    over: apart - g.pushrodLength,
    byTurn: (along * cosine - across * sine) / apart,
    byLift: -(across * tiltSine + along * tiltCosine) / apart,
  };
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
