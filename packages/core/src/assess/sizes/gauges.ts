/** What a gauge reads against what is true: its checks against a standard, its drift, and how far it can be trusted. */
import { typeB } from '../../calc/metrology/index.js';
import { fromStep, quadrature } from '../../quantity/index.js';
import type { FeatureKind, Instrument, InstrumentCheck, InstrumentKind, Readings } from '../model.js';
import { type Cause, causeOf, type ErrorSource } from './causes.js';
import { driftOf, errorIn, type Session, sessionsByStandard } from './sessions.js';
import { type Habits, STANDARD_SHARE } from './usual-doubt.js';

/** The gauge of one reading, ready to correct it. */
export interface Gauge {
  readonly name: string;
  /** Own standard uncertainty of one reading: feel of the hand, and step of the display. */
  readonly feel: number;
  readonly step: number;
  /** Both together. */
  readonly single: number;
  /** Error at a time [SI], positive where it reads high, with its causes; none where it was never checked. */
  readonly at: (time: string, size: number) => GaugeError;
}
export interface GaugeError {
  readonly error: number;
  readonly causes: readonly Cause[];
  readonly cautions: readonly string[];
}

const COVERAGE = 2;
const expanded = (bound: number): number => typeB('expanded', { bound, coverage: COVERAGE, edgeRatio: 0, level: 0.95 });

/** All gauges of a job; what readings share is made once. */
export class Gauges {
  readonly #story: Pick<Readings, 'instruments' | 'checks'>;
  readonly #habits: Habits;
  readonly #made = new Map<string, Gauge>();
  readonly #usual = new Map<FeatureKind, Gauge>();
  readonly #checks = new Map<string, InstrumentCheck[]>();

  constructor(story: Pick<Readings, 'instruments' | 'checks'>, habits: Habits) {
    this.#story = story;
    this.#habits = habits;
    for (const check of story.checks) {
      const own = this.#checks.get(check.instrument);
      if (own === undefined) this.#checks.set(check.instrument, [check]);
      else own.push(check);
    }
  }

  /** The gauge by its id; without one, or with one that nobody described, the usual gauge for the feature. */
  of(instrument: string | undefined, kind: FeatureKind): Gauge {
    const known = instrument === undefined ? undefined : this.#story.instruments.get(instrument);
    const before = known === undefined ? this.#usual.get(kind) : this.#made.get(known.id);
    if (before !== undefined) return before;
    const gauge = known === undefined ? this.#usualFor(kind) : this.#make(known);
    if (known === undefined) this.#usual.set(kind, gauge);
    else this.#made.set(known.id, gauge);
    return gauge;
  }
  #usualFor({ instrument, resolution }: FeatureKind): Gauge {
    const id = `usual ${instrument} ${resolution}`;
    const gauge =
      this.#made.get(id) ?? this.#make({ id, name: WORDS[instrument], kind: instrument, resolution }, NO_GAUGE);
    this.#made.set(id, gauge);
    return gauge;
  }

  #make(gauge: Described, unknown?: string): Gauge {
    const usual = expanded(this.#habits.doubts[gauge.kind].expanded);
    const half = usual / Math.SQRT2;
    const step = fromStep(gauge.resolution);
    const base = { name: gauge.name, feel: half, step, single: quadrature(half, step) };
    const sessions = sessionsByStandard(this.#checks.get(gauge.id) ?? []);
    if (sessions.length === 0) {
      const own = gauge.expanded === undefined ? half : expanded(gauge.expanded);
      const causes = [causeOf(settingOf(gauge.id, gauge.name, own), 1)];
      const never: GaugeError = {
        error: 0,
        causes,
        cautions: [unknown ?? `${gauge.name}: not checked against a standard`],
      };
      return { ...base, at: () => never };
    }
    const known = sessions.map((same) => same.map((session) => judgedSession(gauge, session, { usual, half, step })));
    return {
      ...base,
      at: (at, size) => {
        const near = nearest(known, size);
        const time = Date.parse(at);
        const { session, causes, cautions } = near.findLast((one) => one.session.from <= time) ?? near[0]!;
        return { error: errorIn(session, time), causes, cautions };
      },
    };
  }
}

type Described = Pick<Instrument, 'id' | 'name' | 'kind' | 'resolution' | 'expanded'>;
/** Standard uncertainties of a gauge: as is usual in all, of the hand, and of the step. */
interface GaugeDoubt {
  readonly usual: number;
  readonly half: number;
  readonly step: number;
}

/** What remains of a gauge's error after a session of checks: that of the standard, of reading it, and its drift. */
function judgedSession(gauge: Described, session: Session, { usual, half, step }: GaugeDoubt): JudgedSession {
  const read = quadrature(Math.max(half, session.scatter ?? 0), step) / Math.sqrt(session.readings);
  const standard = gauge.expanded === undefined ? usual * STANDARD_SHARE : expanded(gauge.expanded);
  const id = `${gauge.id}/${session.standard}/${session.from}`;
  const setting = causeOf(settingOf(id, gauge.name, quadrature(standard, read)), 1);
  const drift = driftOf(session);
  const drifting = { key: `gauge/${id}/drift`, name: `drift of ${gauge.name}`, u: fromStep(drift) };
  const drifted = Math.abs(drift) > COVERAGE * quadrature(usual, step);
  return {
    session,
    causes: drift === 0 ? [setting] : [setting, causeOf(drifting, 1)],
    cautions: drifted ? [`${gauge.name}: drifted between start and end by more than it can be trusted to`] : [],
  };
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
  'torque-wrench': 'torque wrench',
};
