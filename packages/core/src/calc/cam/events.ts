import { type Angle, done, type Outcome, refused } from '../../quantity/index.js';

const HALF_TURN = Math.PI;

export type ValveSide = 'intake' | 'exhaust';
export const VALVE_SIDES = ['intake', 'exhaust'] as const satisfies readonly ValveSide[];

/**
 * Valve events in crank angle [rad]: intake opens before top, closes after bottom; exhaust opens before bottom, closes
 * after top. A negative event lies on the other side of its dead centre and is kept as it is.
 */
export interface CamEvents {
  readonly intakeOpens: Angle;
  readonly intakeCloses: Angle;
  readonly exhaustOpens: Angle;
  readonly exhaustCloses: Angle;
}

/** The same card as durations and centrelines. */
export interface CamLobes {
  readonly intakeDuration: Angle;
  readonly exhaustDuration: Angle;
  /** Middle of the intake event after top dead centre, crank angle. */
  readonly intakeCentreline: Angle;
  /** Middle of the exhaust event before top dead centre, crank angle. */
  readonly exhaustCentreline: Angle;
  /** Angle between both middles, in CAM angle. */
  readonly separation: Angle;
  /** Both valves open, crank angle; negative when both are closed between the events. */
  readonly overlap: Angle;
  /** Separation minus intake centreline: positive when the cam is ahead of split overlap. */
  readonly advance: Angle;
}

export interface NoDuration {
  readonly code: 'no-duration';
  readonly valve: ValveSide;
  readonly duration: Angle;
}

/**
 * Durations, centrelines, separation, overlap and advance of a cam card's events.
 *
 *   duration = O + 180° + C,  ICL = di/2 − IO,  ECL = de/2 − EC,  LSA = (ICL + ECL)/2,
 *   overlap = IO + EC,  advance = LSA − ICL
 *
 * IO, IC, EO, EC as in `CamEvents` [rad]; all results [rad]. The separation is in cam angle, everything else in crank
 * angle. The middle of an unsymmetric lobe's event is not its point of highest lift.
 * Refuses with `no-duration` events that leave a valve no open time.
 * Example: 20/60, 60/20 degrees: durations 260, centrelines 110, separation 110, overlap 40.
 * Source: definitions of the trade, common practice.
 */
export function lobesFromEvents(events: CamEvents): Outcome<CamLobes, NoDuration> {
  const intakeDuration = (events.intakeOpens + HALF_TURN + events.intakeCloses) as Angle;
  const exhaustDuration = (events.exhaustOpens + HALF_TURN + events.exhaustCloses) as Angle;
  const fault = noDuration(intakeDuration, exhaustDuration);
  if (fault) return refused(fault);
  const intakeCentreline = (intakeDuration / 2 - events.intakeOpens) as Angle;
  const exhaustCentreline = (exhaustDuration / 2 - events.exhaustCloses) as Angle;
  const separation = ((intakeCentreline + exhaustCentreline) / 2) as Angle;
  return done({
    intakeDuration,
    exhaustDuration,
    intakeCentreline,
    exhaustCentreline,
    separation,
    overlap: (events.intakeOpens + events.exhaustCloses) as Angle,
    advance: (separation - intakeCentreline) as Angle,
  });
}

/**
 * Events of a cam from its durations, separation and installed intake centreline; turns `lobesFromEvents` round.
 *
 *   IO = di/2 − ICL,  IC = di/2 + ICL − 180°,  ECL = 2·LSA − ICL,  EO = de/2 + ECL − 180°,  EC = de/2 − ECL
 *
 * All [rad]; the separation in cam angle. Negative events are right and are not clipped: −5° after top is 5° before.
 * Refuses with `no-duration` a duration of 0 or less.
 * Example: 214/224 degrees, separation 112, centreline 107: IO 0, IC 34, EO 49, EC −5.
 * Source: definitions of the trade, common practice.
 */
export function eventsFromLobes(lobes: LobePlaces): Outcome<CamEvents, NoDuration> {
  const fault = noDuration(lobes.intakeDuration, lobes.exhaustDuration);
  return fault ? refused(fault) : done(eventsOf(lobes));
}

/** What places both lobes: how long each is, how far they are apart, and where the intake stands. */
export type LobePlaces = Pick<CamLobes, 'intakeDuration' | 'exhaustDuration' | 'separation' | 'intakeCentreline'>;

/** `eventsFromLobes` of durations that are known to be above 0. */
export function eventsOf(lobes: LobePlaces): CamEvents {
  const exhaustCentreline = 2 * lobes.separation - lobes.intakeCentreline;
  return {
    intakeOpens: (lobes.intakeDuration / 2 - lobes.intakeCentreline) as Angle,
    intakeCloses: (lobes.intakeDuration / 2 + lobes.intakeCentreline - HALF_TURN) as Angle,
    exhaustOpens: (lobes.exhaustDuration / 2 + exhaustCentreline - HALF_TURN) as Angle,
    exhaustCloses: (lobes.exhaustDuration / 2 - exhaustCentreline) as Angle,
  };
}

function noDuration(intake: Angle, exhaust: Angle): NoDuration | undefined {
  if (!(intake > 0)) return { code: 'no-duration', valve: 'intake', duration: intake };
  if (!(exhaust > 0)) return { code: 'no-duration', valve: 'exhaust', duration: exhaust };
  return undefined;
}

/**
 * Events after the whole cam is turned ahead by a crank angle: every opening comes earlier, every closing too.
 *
 * `advance` [rad of crank], negative retards. Example: 20-60/60-20 advanced by 5° is 25-55/65-15.
 * Source: definition.
 */
export function advanced(events: CamEvents, advance: Angle): CamEvents {
  return {
    intakeOpens: (events.intakeOpens + advance) as Angle,
    intakeCloses: (events.intakeCloses - advance) as Angle,
    exhaustOpens: (events.exhaustOpens + advance) as Angle,
    exhaustCloses: (events.exhaustCloses - advance) as Angle,
  };
}

/**
 * Middle of a lobe from two wheel readings of equal lift, one on each flank: centre = (a + b)/2 [rad].
 *
 * Readings are signed (before the dead centre negative) and both taken turning in the running sense.
 * Example: 60.0° and 145.5° after top give 102.75°. Source: derived, for flanks that are alike.
 */
export function centrelineFromEqualLifts(a: Angle, b: Angle): Angle {
  return ((a + b) / 2) as Angle;
}
