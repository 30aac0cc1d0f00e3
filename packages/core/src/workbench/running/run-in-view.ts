/** The run-in: schedule, clock, gauges, what was read, what comes after. */
import {
  afterRunIn,
  GAUGES,
  type Gauge,
  judgeGauge,
  limitShown,
  meaningOfStop,
  momentsOfReadings,
  newestReadings,
  RUNNING_WHATS,
  type RunInClock,
  type RunningWhat,
  runInClock,
  type Schedule,
  type ScheduledStep,
  STOP_REASONS,
  scheduleOf,
  stopNow,
} from '../../plan/index.js';
import { unitsOf } from '../../quantity/index.js';
import type { Bench } from '../bench.js';
import type { GaugeView, RunInStepView, RunInView } from '../running-views.js';
import { answersAt, cautionsOf, factsAt, factsOfKind, givenOf, timeText } from './facts-at.js';

/** Where the run-in stands at `now` (RFC 3339 with offset). */
export function runInView(bench: Bench, now: string): RunInView {
  const { engine } = bench;
  const schedule = scheduleOf(engine);
  const facts = factsAt(bench);
  const clock = runInClock(schedule, facts, now, answeredLines(bench, schedule));
  const running = clock.state === 'running' ? clock.step : undefined;
  return {
    title: 'Run-in',
    schedule: {
      origin: schedule.origin,
      fromSheet: schedule.fromSheet,
      steps: schedule.steps.map((step) => stepView(step, clock)),
    },
    clock: clockView(schedule, clock),
    stopNow: stopNow(engine, facts, running),
    stops: clock.stops
      .map((stop) => ({
        given: givenOf(stop.fact),
        words: `step ${stop.step}, after ${timeText(stop.ranSeconds)}: ${stop.fact.data.why}`,
        meaning: meaningOfStop(stop, schedule),
      }))
      .reverse(),
    gauges: RUNNING_WHATS.map((what) => gaugeView(bench, what, clock.step)),
    readings: readingsOf(bench, schedule),
    afterwards: afterRunIn(engine),
    stopReasons: STOP_REASONS.map(({ id, words }) => ({ id, words })),
    cautions: cautionsOf(bench, ['break-in', 're-check']),
  };
}

/** Lines of the sheet that the work plan has an answer for. */
function answeredLines(bench: Bench, schedule: Schedule): ReadonlySet<number> {
  if (!schedule.fromSheet) return new Set();
  const answers = answersAt(bench);
  return new Set(
    schedule.steps.flatMap(({ number }) =>
      answers.get(`run-in-step@line-${number}`)?.result === 'good' ? [number] : [],
    ),
  );
}

function stepView(step: ScheduledStep, { done, ran, step: now, state }: RunInClock): RunInStepView {
  const { number, words, time, speed, load, seconds, origin } = step;
  const isNow = state !== 'finished' && now?.number === number;
  return {
    number,
    words,
    time,
    speed: speed?.text ?? '',
    load,
    state: isNow ? 'now' : done[number - 1] ? 'done' : 'later',
    ranSeconds: ran[number - 1] ?? 0,
    ...(seconds !== undefined && { ofSeconds: seconds }),
    origin,
  };
}

function clockView(schedule: Schedule, clock: RunInClock): RunInView['clock'] {
  const { state, step, stepSeconds, leftSeconds, totalSeconds, ofSeconds, nextReadingSeconds } = clock;
  const call = callOf(clock);
  return {
    state,
    ...(step && state !== 'finished' && { step: step.number }),
    stepSeconds,
    ...(leftSeconds !== undefined && { leftSeconds }),
    totalSeconds,
    ofSeconds,
    words: clockWords(schedule, clock),
    ...(call !== undefined && { call }),
    ...(nextReadingSeconds !== undefined && { nextReadingSeconds }),
  };
}

function clockWords({ steps }: Schedule, { state, step, stepSeconds, leftSeconds, ofSeconds }: RunInClock): string {
  if (state === 'finished') return `All timed steps have run: ${timeText(ofSeconds)}.`;
  if (step === undefined) return 'Nothing is left of the run-in.';
  const name = `Step ${step.number} of ${steps.length}`;
  if (state === 'not-begun') return `${name} is the first: ${step.words}`;
  const ran = `${timeText(stepSeconds)} run`;
  const left =
    leftSeconds === undefined
      ? ''
      : leftSeconds >= 0
        ? `, ${timeText(leftSeconds)} left`
        : `, ${timeText(leftSeconds)} beyond its time`;
  return `${name}${state === 'stopped' ? ', stopped' : ''}: ${ran}${left}`;
}

/** What is said aloud once the time of a step is over. */
function callOf({ state, step, leftSeconds, next }: RunInClock): string | undefined {
  if (state !== 'running' || step === undefined || leftSeconds === undefined || leftSeconds > 0) return undefined;
  return next === undefined
    ? 'All timed steps have run. Let it idle, then stop it.'
    : `Go on with step ${next.number}: ${next.words}`;
}

const FIRST_UNITS: Readonly<Record<Gauge, readonly string[]>> = {
  'oil-pressure': ['bar', 'psi', 'kPa', 'kgf/cm2'],
  'oil-temperature': ['°C', '°F'],
  'coolant-temperature': ['°C', '°F'],
  'exhaust-temperature': ['°C', '°F'],
  speed: ['rpm'],
};
const unitsFor = (what: Gauge): readonly string[] => {
  const known = new Set(unitsOf(GAUGES[what].kind).map(({ name }) => name));
  return FIRST_UNITS[what].filter((unit) => known.has(unit));
};

function gaugeView(bench: Bench, what: RunningWhat, step: ScheduledStep | undefined): GaugeView {
  const facts = factsAt(bench);
  const read = newestReadings(facts).get(what);
  const newest = read && { ...givenOf(read), text: read.data.reading?.text ?? read.data.words ?? '' };
  if (what === 'load-words') {
    const { load = '', origin = '' } = step ?? {};
    const says = load === '' ? 'no load is asked for now' : `asked for: ${load}`;
    const asked = { limit: load, origin: load === '' ? '' : origin };
    return { what, title: 'load', units: [], ...asked, ...(newest && { newest }), verdict: 'no data', says };
  }
  const limit = limitShown(bench.engine, what, step);
  const judged = read && judgeGauge(bench.engine, facts, read, step);
  return {
    what,
    title: GAUGES[what].title,
    units: unitsFor(what),
    limit: limit?.text ?? '',
    origin: limit?.origin ?? '',
    ...(newest && { newest }),
    verdict: judged?.verdict ?? 'no data',
    says: judged?.says ?? 'not read yet',
  };
}

function readingsOf(bench: Bench, schedule: Schedule): RunInView['readings'] {
  const facts = factsAt(bench);
  const moments = momentsOfReadings(schedule, facts);
  return factsOfKind(bench, 'running-read')
    .map((fact) => {
      const { what, reading, words } = fact.data;
      const moment = moments.get(fact);
      const { verdict, says } = judgeGauge(bench.engine, facts, fact, moment?.step);
      return {
        given: givenOf(fact),
        what,
        title: what === 'load-words' ? 'load' : GAUGES[what].title,
        text: reading?.text ?? words ?? '',
        ...(what !== 'load-words' && { verdict }),
        says,
        ...(moment && { minute: Math.floor(moment.seconds / 60) }),
      };
    })
    .reverse();
}
