/** What follows for one valve spring: loads, room to bind and under the retainer, surge, and the speed to which it holds the gear. */
import type { LiftTable } from '../../calc/cam/index.js';
import { loadAtHeight as testedLoadAt } from '../../calc/selection/index.js';
import {
  activeMass,
  bindMargin,
  firstToPartAt,
  followForce,
  loadAtHeight,
  massAtValve,
  openLoad,
  rateFromLoads,
  springRate,
  surge,
  valveLift,
} from '../../calc/valvetrain/index.js';
import type { ValveGearKind, ValveKind } from '../../engine/index.js';
import type {
  Acceleration,
  AngularSpeed,
  Density,
  Force,
  Length,
  Mass,
  Pressure,
  Ratio,
  Stiffness,
} from '../../quantity/index.js';
import { lobeOf, type MeasuredLobes } from './lobe.js';
import type { Look, Values } from './look.js';

const LOADS = 'spring loads';

/** Every number of one spring that its figures allow. */
export function springNumbers(
  look: Look,
  kind: ValveKind,
  gear: ValveGearKind | undefined,
  lobes?: MeasuredLobes,
): Values {
  const rate = rateOf(look);
  const height = heightOf(look);
  const seat = seatLoadOf(look, rate, height);
  const lift = liftOf(look, lobes?.[kind]);
  const mass = movingMass(look, gear);
  return {
    rate,
    height,
    'seat-load': seat,
    lift,
    'open-load':
      seat === undefined || rate === undefined || lift === undefined
        ? undefined
        : openLoad(seat as Force, rate as Stiffness, lift as Length),
    ...rooms(look, height, lift),
    ...surgeOf(look, rate),
    'moving-mass': mass,
    ...follow(look, kind, { seat, rate, mass, ...(lobes && { lobes }) }),
  };
}

function wireOf(look: Look) {
  const [wire, meanDiameter, activeCoils] = ['spring-wire', 'spring-mean-diameter', 'spring-active-coils'].map((key) =>
    look.read(key),
  );
  if (wire === undefined || meanDiameter === undefined || activeCoils === undefined) return undefined;
  return { wire: wire as Length, meanDiameter: meanDiameter as Length, activeCoils };
}

/** As given, inner and outer together; else from two loads on the tester; else from the wire. */
function rateOf(look: Look): number | undefined {
  const outer = look.read('spring-rate');
  if (outer !== undefined) return outer + (look.read('inner-spring-rate') ?? 0);
  const tested = fromTester(look);
  if (tested !== undefined) return tested;
  const wire = wireOf(look);
  const modulus = look.read('spring-modulus');
  if (wire !== undefined && modulus !== undefined) return springRate(wire, modulus as Pressure);
  look.lack('spring-rate', LOADS);
  return undefined;
}

function fromTester(look: Look): number | undefined {
  const [low, lowAt, high, highAt] = [
    'spring-load-closed',
    'spring-load-closed-height',
    'spring-load-open',
    'spring-load-open-height',
  ].map((key) => look.read(key));
  if (low === undefined || lowAt === undefined || high === undefined || highAt === undefined) return undefined;
  const fit = rateFromLoads([lowAt as Length, highAt as Length], [low as Force, high as Force]);
  return fit !== undefined && fit.rate > 0 ? fit.rate : undefined;
}

function heightOf(look: Look): number | undefined {
  const height = look.need('spring-installed-height', 'room to coil bind');
  return height === undefined ? undefined : height - look.planned('spring-shim');
}

/** As given and more by the shims; else from the tester, else from the free length. */
function seatLoadOf(look: Look, rate: number | undefined, height: number | undefined): number | undefined {
  const given = look.read('spring-seat-load');
  const shim = look.planned('spring-shim');
  if (given !== undefined && (shim === 0 || rate !== undefined)) return given + (rate ?? 0) * shim;
  if (rate !== undefined && height !== undefined) {
    const [load, testHeight] = [look.read('spring-load-closed'), look.read('spring-load-closed-height')];
    if (load !== undefined && testHeight !== undefined)
      return testedLoadAt(
        { load: load as Force, testHeight: testHeight as Length, rate: rate as Stiffness },
        height as Length,
      );
    const free = look.read('spring-free-length');
    if (free !== undefined) return loadAtHeight(rate as Stiffness, free as Length, height as Length);
  }
  look.lack('spring-seat-load', LOADS);
  return undefined;
}

/** Lift at the valve: what the lobe gives through the rocker, less the lash. */
function liftOf(look: Look, measured: LiftTable | undefined): number | undefined {
  const lobe = measured === undefined ? look.need('lobe-lift', 'valve lift') : Math.max(...measured.lifts);
  const ratio = look.need('rocker-ratio', 'valve lift');
  const lash = look.need('valve-lash', 'valve lift');
  if (lobe === undefined || ratio === undefined || lash === undefined) return undefined;
  return valveLift(lobe as Length, ratio as Ratio, lash as Length);
}

function rooms(look: Look, height: number | undefined, lift: number | undefined): Values {
  const bind = look.need('spring-bind-height', 'room to coil bind');
  const retainer = look.need('retainer-room', 'room under the retainer');
  return {
    'bind-margin':
      height === undefined || lift === undefined || bind === undefined
        ? undefined
        : bindMargin(height as Length, lift as Length, bind as Length),
    'retainer-margin': retainer === undefined || lift === undefined ? undefined : retainer - lift,
  };
}

const CAM_TURN = 4 * Math.PI;

function surgeOf(look: Look, rate: number | undefined): Values {
  const wire = wireOf(look);
  const density = look.read('spring-density');
  const mass =
    look.read('spring-active-mass') ??
    (wire === undefined || density === undefined ? undefined : activeMass(wire, density as Density));
  if (mass === undefined) look.lack('spring-active-mass', 'surge');
  if (mass === undefined || rate === undefined) return {};
  const { bothHeld } = surge(rate as Stiffness, mass as Mass);
  const speed = look.need('highest-speed', 'surge against the cam');
  return { surge: bothHeld, 'surge-multiple': speed === undefined ? undefined : bothHeld / (speed / CAM_TURN) };
}

/** Parts that move with the lobe and turn with the rocker, by kind of gear. */
const PARTS: Readonly<Record<ValveGearKind, { readonly lobe: readonly string[]; readonly rocker: boolean }>> = {
  pushrod: { lobe: ['pushrod-mass', 'lifter-mass'], rocker: true },
  'overhead-rocker': { lobe: [], rocker: true },
  'overhead-finger': { lobe: [], rocker: true },
  'overhead-bucket': { lobe: ['lifter-mass'], rocker: false },
};

function movingMass(look: Look, gear: ValveGearKind | undefined): number | undefined {
  if (gear === undefined) return undefined;
  const lacking = 'speed to which the spring holds';
  const { lobe, rocker } = PARTS[gear];
  const need = (key: string) => look.need(key, lacking);
  const withValve = [need('valve-mass'), need('retainer-mass')];
  const withLobe = lobe.map(need);
  const spring = need('spring-mass');
  const arm = rocker ? need('rocker-mass') : 0;
  const ratio = need('rocker-ratio');
  if ([...withValve, ...withLobe, spring, arm, ratio].some((one) => one === undefined)) return undefined;
  const sum = (all: readonly (number | undefined)[]) =>
    all.reduce<number>((whole, one) => whole + (one ?? 0), 0) as Mass;
  return massAtValve(
    { withValve: sum(withValve), spring: spring as Mass, rockerAtValve: arm as Mass, withLobe: sum(withLobe) },
    ratio as Ratio,
  );
}

interface Holding {
  readonly seat: number | undefined;
  readonly rate: number | undefined;
  readonly mass: number | undefined;
  readonly lobes?: MeasuredLobes;
}

/** Load that the lobe needs at the highest speed, and the speed at which the gear would part. */
function follow(look: Look, kind: ValveKind, { seat, rate, mass, lobes }: Holding): Values {
  const ratio = look.read('rocker-ratio');
  const lobe = ratio === undefined ? undefined : lobeOf(look, kind, ratio, lobes);
  const speed = look.need('highest-speed', 'load that the lobe needs');
  if (lobe === undefined) return {};
  const sharpest = lobe.places.reduce((least, { bend }) => Math.min(least, bend), 0);
  const needed = speed === undefined ? {} : needAt(sharpest, speed as AngularSpeed, mass);
  if (seat === undefined || rate === undefined || mass === undefined) return needed;
  const lash = look.read('valve-lash') ?? 0;
  const net = lash === 0 ? lobe.places : lobe.places.map((place) => ({ ...place, lift: place.lift - lash }));
  const first = firstToPartAt(net, seat as Force, rate as Stiffness, mass as Mass);
  if (first === undefined) return needed;
  const margin = speed === undefined ? {} : { 'follow-margin': (first.speed / speed) ** 2 };
  return { ...needed, 'separation-speed': first.speed, ...margin };
}

function needAt(bend: number, speed: AngularSpeed, mass: number | undefined): Values {
  const acceleration = (bend * speed ** 2) as Acceleration;
  return {
    'nose-acceleration': acceleration,
    'load-needed': mass === undefined ? undefined : followForce(mass as Mass, acceleration),
  };
}
