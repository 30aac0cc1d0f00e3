/** What a gauge reads against what is true: its checks against a standard, its drift, and how far it can be trusted. */
import { deviation, gaugeError, mean, typeB } from '../../calc/metrology/index.js';
import { fromStep, type Length, quadrature } from '../../quantity/index.js';
import type { FeatureKind, Instrument, InstrumentCheck, InstrumentKind, Readings } from '../model.js';
import type { Cause, ErrorSource } from './causes.js';
import { type Habits, STANDARD_SHARE } from './usual-doubt.js';

/** The gauge of one reading, ready to correct it. */
export interface Gauge {
  readonly name: string;
  /** Own standard uncertainty of one reading: feel of the hand, and step of the display. */
  readonly feel: number;
  readonly step: number;
  /** Error at a time [SI], positive where it reads high, with its causes; none where it was never checked. */
  readonly at: (time: string, size: number) => GaugeError;
  /** Cautions that hold for every reading taken with it. */
  readonly cautions: readonly string[];
}
export interface GaugeError {
  readonly error: number;
  readonly causes: readonly Cause[];
  readonly cautions: readonly string[];
}

const COVERAGE = 2;
const expanded = (bound: number): number => typeB('expanded', { bound, coverage: COVERAGE, edgeRatio: 0, level: 0.95 });

/** One averaged reading of a standard. */
interface Point {
  readonly time: number;
  readonly error: number;
}
/** Checks between two settings of the gauge: one `start`, what was between, one `end`. */
interface Session {
  readonly standard: number;
  readonly from: number;
  readonly points: readonly Point[];
  readonly scatter: number | undefined;
  readonly readings: number;
}

/** Checks of one gauge against one standard, in time order, cut where the gauge was set anew. */
function sessionsOf(checks: readonly InstrumentCheck[]): readonly Session[] {
  const sorted = checks
    .map((check) => ({ ...check, time: Date.parse(check.at) }))
    .sort((a, b) => a.time - b.time || (a.entry < b.entry ? -1 : 1));
  const groups: (typeof sorted)[] = [];
  let before: (typeof sorted)[number] | undefined;
  for (const check of sorted) {
    const opens = before === undefined || (check.moment === 'start' && before.moment !== 'start');
    if (opens) groups.push([check]);
    else groups[groups.length - 1]!.push(check);
    before = check;
  }
  return groups.map(sessionOf);
}

function sessionOf(checks: readonly (InstrumentCheck & { readonly time: number })[]): Session {
  const moments = new Map<string, { times: number[]; errors: number[] }>();
  checks.forEach((check, index) => {
    // Checks in between are each a moment of their own; several at the start or at the end are repeats.
    const key = check.moment === 'between' ? `between ${index}` : check.moment;
    const moment = moments.get(key) ?? { times: [], errors: [] };
    moment.times.push(check.time);
    moment.errors.push(check.read - check.standard);
    moments.set(key, moment);
  });
  const all = [...moments.values()];
  const scatters = all.filter(({ errors }) => errors.length > 1).map(({ errors }) => deviation(errors));
  return {
    standard: checks[0]!.standard,
    from: checks[0]!.time,
    points: all.map(({ times, errors }) => ({ time: mean(times), error: mean(errors) })),
    scatter: scatters.length === 0 ? undefined : Math.max(...scatters),
    readings: checks.length,
  };
}

/** Error at a time: on the straight line between the two checks around it, else that of the nearest check. */
function errorIn({ points }: Session, time: number): number {
  const after = points.findIndex((point) => point.time > time);
  if (after <= 0) return points[after === 0 ? 0 : points.length - 1]!.error;
  const [one, next] = [points[after - 1]!, points[after]!];
  return gaugeError({
    standard: 0 as Length,
    atStart: one.error as Length,
    atEnd: next.error as Length,
    share: (time - one.time) / (next.time - one.time),
  });
}
const driftOf = ({ points }: Session): number => points[points.length - 1]!.error - points[0]!.error;

/** All gauges of a job; what readings share is made once. */
export class Gauges {
  readonly #readings: Readings;
  readonly #habits: Habits;
  readonly #made = new Map<string, Gauge>();
  readonly #checks = new Map<string, InstrumentCheck[]>();

  constructor(readings: Readings, habits: Habits) {
    this.#readings = readings;
    this.#habits = habits;
    for (const check of readings.checks) {
      const own = this.#checks.get(check.instrument);
      if (own === undefined) this.#checks.set(check.instrument, [check]);
      else own.push(check);
    }
  }

  /** The gauge by its id; without one, or with one that nobody described, the usual gauge for the feature. */
  of(instrument: string | undefined, kind: FeatureKind): Gauge {
    const known = instrument === undefined ? undefined : this.#readings.instruments.get(instrument);
    const key = known?.id ?? `${kind.instrument} ${kind.resolution}`;
    let gauge = this.#made.get(key);
    if (gauge === undefined) {
      gauge =
        known === undefined
          ? this.#make({ id: key, name: WORDS[kind.instrument], kind: kind.instrument, resolution: kind.resolution }, [
              NO_GAUGE,
            ])
          : this.#make(known, []);
      this.#made.set(key, gauge);
    }
    return gauge;
  }

  #make(
    gauge: Pick<Instrument, 'id' | 'name' | 'kind' | 'resolution' | 'expanded'>,
    cautions: readonly string[],
  ): Gauge {
    const usual = expanded(this.#habits.doubts[gauge.kind].expanded);
    const half = usual / Math.SQRT2;
    const own = gauge.expanded === undefined ? half : expanded(gauge.expanded);
    const step = fromStep(gauge.resolution);
    const sessions = sessionsByStandard(this.#checks.get(gauge.id) ?? []);
    const base = { name: gauge.name, feel: half, step, cautions };
    if (sessions.length === 0) {
      const causes = [{ source: settingOf(gauge.id, gauge.name, own), sensitivity: 1 }];
      const never: GaugeError = { error: 0, causes, cautions: [`${gauge.name}: not checked against a standard`] };
      return { ...base, at: () => never };
    }
    const known = sessions.map((own_) => own_.map((session) => this.#judged(gauge, session, { usual, half, step })));
    return {
      ...base,
      at: (at, size) => {
        const near = nearest(known, size);
        const time = Date.parse(at);
        const { session, causes, cautions: about } = near.findLast((one) => one.session.from <= time) ?? near[0]!;
        return { error: errorIn(session, time), causes, cautions: about };
      },
    };
  }

  /** What remains of a gauge's error after a session of checks: that of the standard, of reading it, and its drift. */
  #judged(
    gauge: Pick<Instrument, 'id' | 'name' | 'expanded'>,
    session: Session,
    { usual, half, step }: { readonly usual: number; readonly half: number; readonly step: number },
  ): JudgedSession {
    const read = quadrature(Math.max(half, session.scatter ?? 0), step) / Math.sqrt(session.readings);
    const standard = gauge.expanded === undefined ? usual * STANDARD_SHARE : expanded(gauge.expanded);
    const id = `${gauge.id}/${session.standard}/${session.from}`;
    const drift = driftOf(session);
    const causes: Cause[] = [{ source: settingOf(id, gauge.name, quadrature(standard, read)), sensitivity: 1 }];
    if (drift !== 0)
      causes.push({
        source: { key: `gauge/${id}/drift`, name: `drift of ${gauge.name}`, u: fromStep(drift) },
        sensitivity: 1,
      });
    const doubt = COVERAGE * quadrature(usual, step);
    const drifted = Math.abs(drift) > doubt;
    return {
      session,
      causes,
      cautions: drifted ? [`${gauge.name}: drifted between start and end by more than it can be trusted to`] : [],
    };
  }
}
interface JudgedSession {
  readonly session: Session;
  readonly causes: readonly Cause[];
  readonly cautions: readonly string[];
}

const settingOf = (id: string, name: string, u: number): ErrorSource => ({
  key: `gauge/${id}`,
  name: `setting of ${name}`,
  u,
});

function sessionsByStandard(checks: readonly InstrumentCheck[]): readonly (readonly Session[])[] {
  const byStandard = new Map<number, InstrumentCheck[]>();
  for (const check of checks) {
    const own = byStandard.get(check.standard);
    if (own === undefined) byStandard.set(check.standard, [check]);
    else own.push(check);
  }
  return [...byStandard.values()].map(sessionsOf);
}

/** The checks against the standard nearest in size are those that hold. */
function nearest(known: readonly (readonly JudgedSession[])[], size: number): readonly JudgedSession[] {
  let best = known[0]!;
  for (const one of known)
    if (Math.abs(one[0]!.session.standard - size) < Math.abs(best[0]!.session.standard - size)) best = one;
  return best;
}

const NO_GAUGE = 'no gauge noted: the usual one is assumed';
/** Names of kinds of gauges in the trade's words. */
const WORDS: Readonly<Record<InstrumentKind, string>> = {
  'outside-micrometer': 'outside micrometer',
  'bore-gauge': 'bore gauge',
  'small-bore-gauge': 'small bore gauge',
  'depth-micrometer': 'depth micrometer',
  'dial-indicator': 'dial indicator',
  'height-gauge': 'height gauge',
  'straightedge-and-feeler': 'straight edge and feeler',
  'feeler-gauge': 'feeler gauge',
  caliper: 'caliper',
  burette: 'burette',
  scale: 'scale',
  'spring-tester': 'spring tester',
  'gauging-strip': 'gauging strip',
  protractor: 'protractor',
  'radius-gauge': 'radius gauge',
  'ultrasonic-gauge': 'ultrasonic gauge',
};
