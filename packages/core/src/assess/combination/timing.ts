/** Timing diagram: when each valve is open over the two turns of the cycle, and what both have in common. */
import {
  advanced,
  type CamEvents,
  eventsFromLobes,
  lobesFromEvents,
  openWindows,
  seatAllowance,
} from '../../calc/cam/index.js';
import type { ValveKind } from '../../engine/index.js';
import type { Angle, Length } from '../../quantity/index.js';
import { answered, type Naming, together, told } from './answering.js';
import { type Computed, computed, Look, type Values } from './look.js';
import type { Answered, Makeup } from './model.js';

/** `seat`: from the seat to the seat; `at-lift`: above the checking lift of the card. */
export type TimingBasis = 'seat' | 'at-lift';
export interface TimingArc {
  readonly kind: ValveKind;
  readonly basis: TimingBasis;
  /** Lift at the lobe [m]; 0 at the seat. */
  readonly lift: number;
  /** Crank degrees after the firing top dead centre, 0 to 720; overlap is at 360. */
  readonly opens: number;
  readonly closes: number;
}
export interface TimingAnswer extends Answered {
  readonly arcs: readonly TimingArc[];
  /** Crank degrees for which both valves are open around 360; left out where they never are. */
  readonly overlaps: readonly { readonly basis: TimingBasis; readonly from: number; readonly to: number }[];
}

const DEGREE = Math.PI / 180;
const FOR = 'valve timing';
const EVENTS = ['intakeOpens', 'intakeCloses', 'exhaustOpens', 'exhaustCloses'] as const;
const NAMES: Readonly<Record<(typeof EVENTS)[number], Omit<Naming, 'quantity'>>> = {
  intakeOpens: { key: 'intake-opens', name: 'intake opens before top' },
  intakeCloses: { key: 'intake-closes', name: 'intake closes after bottom' },
  exhaustOpens: { key: 'exhaust-opens', name: 'exhaust opens before bottom' },
  exhaustCloses: { key: 'exhaust-closes', name: 'exhaust closes after top' },
};
const SHARED: readonly Naming[] = [
  { key: 'overlap', name: 'overlap', quantity: 'angle' },
  { key: 'intake-duration', name: 'intake duration', quantity: 'angle' },
  { key: 'exhaust-duration', name: 'exhaust duration', quantity: 'angle' },
  { key: 'intake-centreline', name: 'intake centreline after top', quantity: 'angle' },
  { key: 'exhaust-centreline', name: 'exhaust centreline before top', quantity: 'angle' },
  { key: 'separation', name: 'lobe separation, cam angle', quantity: 'angle' },
  { key: 'advance', name: 'advance against split overlap', quantity: 'angle' },
];
const SOURCES = ['cam.events-from-lobes', 'cam.lobes-from-events', 'cam.advance', 'cam.seat-windows'];
const BASES: readonly TimingBasis[] = ['seat', 'at-lift'];

/**
 * Events, centrelines, separation and overlap of the combination, from seat to seat and at the checking lift, as far as its figures go,
 * with the arcs of the diagram. A cam that is moved (`cam-advance`) moves them all.
 */
export function timingOf(makeup: Makeup): TimingAnswer {
  const each = BASES.map((basis) => ({
    basis,
    found: computed(makeup, undefined, (look) => valuesOf(look, basis)),
    events: eventsOf(new Look(makeup), basis),
  }));
  const known = each.filter(({ events }) => events !== undefined);
  const parts = (known.length === 0 ? each : known).map(({ basis, found }) => partOf(makeup, basis, found));
  return {
    ...together(parts, SOURCES),
    arcs: known.flatMap(({ basis, events }) => arcsOf(events!, basis, liftOf(makeup, basis))),
    overlaps: known.flatMap(({ basis, events }) => overlapOf(events!, basis)),
  };
}

const liftOf = (makeup: Makeup, basis: TimingBasis): number =>
  basis === 'seat' ? 0 : (new Look(makeup).read('checking-lift') ?? 0);

/** Seat to seat: as given, else the duration at a lift made wider by the usual allowance. */
function durationOf(look: Look, kind: ValveKind, basis: TimingBasis): number | undefined {
  if (basis === 'at-lift') return look.need('duration-at-lift', FOR, kind);
  const seat = look.read('lobe-duration', kind);
  if (seat !== undefined) return seat;
  const atLift = look.read('duration-at-lift', kind);
  const lift = look.read('checking-lift');
  if (atLift === undefined || lift === undefined) {
    look.lack('lobe-duration', FOR);
    return undefined;
  }
  return atLift + 2 * seatAllowance(lift as Length);
}

function eventsOf(look: Look, basis: TimingBasis): CamEvents | undefined {
  const intakeDuration = durationOf(look, 'intake', basis);
  const exhaustDuration = durationOf(look, 'exhaust', basis);
  const intake = look.need('centreline-wanted', FOR, 'intake');
  const exhaust = look.need('centreline-wanted', FOR, 'exhaust');
  const advance = look.planned('cam-advance');
  if (intakeDuration === undefined || exhaustDuration === undefined) return undefined;
  if (intake === undefined || exhaust === undefined) return undefined;
  const events = eventsFromLobes({
    intakeDuration: intakeDuration as Angle,
    exhaustDuration: exhaustDuration as Angle,
    separation: ((intake + exhaust) / 2) as Angle,
    intakeCentreline: intake as Angle,
  });
  return events.ok ? advanced(events.value, advance as Angle) : undefined;
}

function valuesOf(look: Look, basis: TimingBasis): Values {
  const events = eventsOf(look, basis);
  const lobes = events && lobesFromEvents(events);
  if (events === undefined || !lobes?.ok) return {};
  const { overlap, separation, advance, intakeCentreline, exhaustCentreline } = lobes.value;
  const own = Object.fromEntries(EVENTS.map((event) => [NAMES[event].key, events[event]]));
  return {
    ...own,
    overlap,
    separation,
    advance,
    'intake-centreline': intakeCentreline,
    'exhaust-centreline': exhaustCentreline,
    'intake-duration': lobes.value.intakeDuration,
    'exhaust-duration': lobes.value.exhaustDuration,
  };
}

function partOf(makeup: Makeup, basis: TimingBasis, found: Computed) {
  const naming = [...EVENTS.map((event): Naming => ({ ...NAMES[event], quantity: 'angle' })), ...SHARED];
  const suffix = basis === 'seat' ? '' : '-at-lift';
  const words = basis === 'seat' ? '' : ', at the checking lift';
  const figures = naming.flatMap((one) => {
    const value = found.values.get(one.key);
    return value === undefined
      ? []
      : [answered(makeup, { ...one, key: `${one.key}${suffix}`, name: `${one.name}${words}` }, value)];
  });
  const widened = basis === 'seat' && found.used.some(({ key }) => key.startsWith('duration-at-lift'));
  return {
    figures,
    computed: [found],
    working: figures.map(({ name, value }) => `${name} ${told('angle', value)}`),
    cautions: widened
      ? ['no seat duration is known: the one at the checking lift is made wider by the usual allowance at each end']
      : [],
  };
}

function arcsOf(events: CamEvents, basis: TimingBasis, lift: number): readonly TimingArc[] {
  const windows = openWindows(events);
  return (['intake', 'exhaust'] as const).map((kind) => ({
    kind,
    basis,
    lift,
    opens: windows[kind].opens / DEGREE,
    closes: windows[kind].closes / DEGREE,
  }));
}

function overlapOf(events: CamEvents, basis: TimingBasis) {
  const { intake, exhaust } = openWindows(events);
  return exhaust.closes > intake.opens ? [{ basis, from: intake.opens / DEGREE, to: exhaust.closes / DEGREE }] : [];
}
