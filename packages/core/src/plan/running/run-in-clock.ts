/** The clock of the run-in, folded from the log and the time that the edge gives. */
import type { RunningFact, RunningFactOf } from './facts.js';
import type { Schedule, ScheduledStep } from './schedules.js';

/** Gauges are read at the beginning and then this often [s]. Common practice, no source. */
export const READING_EVERY = 300;

export interface BrokenOff {
  readonly fact: RunningFactOf<'run-in-stopped'>;
  /** Step that ran, and how long it had run in all. */
  readonly step: number;
  readonly ranSeconds: number;
  /** Before the time of the step was over. */
  readonly early: boolean;
}
export interface RunInClock {
  readonly state: 'not-begun' | 'running' | 'stopped' | 'finished';
  /** The one that runs, or the one to begin with next. */
  readonly step?: ScheduledStep;
  /** Run of that step until now [s]; left of it: below zero once it has run longer. */
  readonly stepSeconds: number;
  readonly leftSeconds?: number;
  /** Of all timed steps, each counted to its own time. */
  readonly totalSeconds: number;
  readonly ofSeconds: number;
  /** Run of each step [s], first step first. */
  readonly ran: readonly number[];
  readonly done: readonly boolean[];
  readonly stops: readonly BrokenOff[];
  /** Timed step to go on with once the one that runs is over. */
  readonly next?: ScheduledStep;
  /** Until the gauges are due; 0 or less: now. Only while it runs. */
  readonly nextReadingSeconds?: number;
}

/** Seconds from one moment to another, both RFC 3339 with offset; never below zero, because two devices may disagree. */
export const secondsBetween = (from: string, to: string): number =>
  Math.max(0, (Date.parse(to) - Date.parse(from)) / 1000);

interface Running {
  readonly step: number;
  readonly since: string;
}
class Clock {
  readonly #schedule: Schedule;
  readonly #ran: number[];
  /** Lines that are over without having run their time: answered elsewhere, or passed by a later step. */
  readonly #left = new Set<number>();
  /** The step that ran last. */
  #last = 1;
  readonly stops: BrokenOff[] = [];
  running: Running | undefined;
  begun = false;
  /** When a gauge was last read since the clock was started; absent: not yet. */
  lastLook: string | undefined;

  constructor(schedule: Schedule, answered: ReadonlySet<number>) {
    this.#schedule = schedule;
    this.#ran = schedule.steps.map(() => 0);
    for (const step of answered) this.#left.add(step);
  }

  take(fact: RunningFact): void {
    if (fact.kind === 'run-in-begun') this.#begin(fact);
    if (fact.kind === 'run-in-stopped') this.#stop(fact);
    if (fact.kind === 'running-read' && this.running !== undefined) this.lastLook = fact.at;
  }
  #begin({ data, at }: RunningFactOf<'run-in-begun'>): void {
    const wasRunning = this.running !== undefined;
    this.count(at);
    const step = data.step ?? this.next();
    if (step === undefined || this.#ran[step - 1] === undefined) return;
    // A step without a time of its own is over once a later one begins.
    for (const earlier of this.#schedule.steps) if (earlier.number < step) this.#leave(earlier);
    this.running = { step, since: at };
    this.#last = step;
    this.begun = true;
    if (!wasRunning) this.lastLook = undefined;
  }
  #leave({ number, seconds }: ScheduledStep): void {
    if (seconds === undefined) this.#left.add(number);
  }
  #stop(fact: RunningFactOf<'run-in-stopped'>): void {
    if (this.running === undefined) return;
    const { step } = this.running;
    this.count(fact.at);
    this.running = undefined;
    const { seconds } = this.#schedule.steps[step - 1]!;
    const ranSeconds = this.#ran[step - 1]!;
    this.stops.push({ fact, step, ranSeconds, early: seconds !== undefined && ranSeconds < seconds });
    if (seconds === undefined) this.#left.add(step);
  }
  /** Adds what has run until this moment, and goes on from there. */
  count(at: string): void {
    if (this.running === undefined) return;
    const { step, since } = this.running;
    this.#ran[step - 1] = this.#ran[step - 1]! + secondsBetween(since, at);
    this.running = { step, since: at };
  }
  get ran(): readonly number[] {
    return this.#ran;
  }
  get done(): readonly boolean[] {
    return this.#schedule.steps.map(
      ({ number, seconds }, index) => this.#left.has(number) || (seconds !== undefined && this.#ran[index]! >= seconds),
    );
  }
  /** The timed step to go on with. */
  get nextStep(): ScheduledStep | undefined {
    const number = this.next();
    const step = number === undefined ? undefined : this.#schedule.steps[number - 1];
    return step?.seconds === undefined ? undefined : step;
  }
  /**
   * The first timed step with time left, from the one that ran last onward; then one before it that was passed over; once all have run,
   * the first line that is not answered.
   */
  next(): number | undefined {
    const { done } = this;
    const open = this.#schedule.steps.filter((_, index) => !done[index]);
    const timed = open.filter(({ seconds }) => seconds !== undefined);
    return (timed.find(({ number }) => number >= this.#last) ?? timed[0] ?? open[0])?.number;
  }
}

/**
 * Where the run-in stands at `now`. Time that was run counts, also before a stop: a step is over when the times that it ran add up to its own, or
 * when the work plan has its answer (`answered`, step numbers). A line without a time (oil change, hot setting) is over when a later step begins or when it was begun and stopped. Finished once every timed step has run and the engine stands; lines without time are then still listed.
 */
export function runInClock(
  schedule: Schedule,
  facts: readonly RunningFact[],
  now: string,
  answered: ReadonlySet<number> = new Set(),
): RunInClock {
  const clock = new Clock(schedule, answered);
  for (const fact of facts) clock.take(fact);
  const nextReading =
    clock.running === undefined
      ? undefined
      : clock.lastLook === undefined
        ? 0
        : READING_EVERY - secondsBetween(clock.lastLook, now);
  clock.count(now);
  const { ran, done } = clock;
  const timed = schedule.steps.filter(({ seconds }) => seconds !== undefined);
  const finished = timed.length > 0 ? timed.every(({ number }) => done[number - 1]) : done.every((one) => one);
  const number = clock.running?.step ?? clock.next();
  const step = number === undefined ? undefined : schedule.steps[number - 1];
  const stepSeconds = number === undefined ? 0 : ran[number - 1]!;
  return {
    state: clock.running !== undefined ? 'running' : !clock.begun ? 'not-begun' : finished ? 'finished' : 'stopped',
    ...(step && { step }),
    stepSeconds,
    ...(step?.seconds !== undefined && { leftSeconds: step.seconds - stepSeconds }),
    totalSeconds: timed.reduce(
      (sum, one) => sum + (done[one.number - 1] ? one.seconds! : Math.min(ran[one.number - 1]!, one.seconds!)),
      0,
    ),
    ofSeconds: timed.reduce((sum, one) => sum + (one.seconds ?? 0), 0),
    ran,
    done,
    stops: clock.stops,
    ...(clock.nextStep && { next: clock.nextStep }),
    ...(nextReading !== undefined && { nextReadingSeconds: nextReading }),
  };
}

/** Where the run-in stood at each gauge reading: running time in all [s], and the step that ran. Readings while the clock stood are left out. */
export function momentsOfReadings(
  schedule: Schedule,
  facts: readonly RunningFact[],
): ReadonlyMap<RunningFact, { readonly seconds: number; readonly step: ScheduledStep }> {
  const clock = new Clock(schedule, new Set());
  const moments = new Map<RunningFact, { readonly seconds: number; readonly step: ScheduledStep }>();
  for (const fact of facts) {
    clock.take(fact);
    if (fact.kind !== 'running-read' || clock.running === undefined) continue;
    clock.count(fact.at);
    const seconds = clock.ran.reduce((sum, one) => sum + one, 0);
    moments.set(fact, { seconds, step: schedule.steps[clock.running.step - 1]! });
  }
  return moments;
}
