/** Why a run-in is stopped, and what it means that it was. Common practice, no source. */
import type { BrokenOff } from './run-in-clock.js';
import type { Schedule } from './schedules.js';

export interface StopReason {
  readonly id: string;
  readonly words: string;
  /** What is to be done before it turns again. */
  readonly next: string;
}
export const STOP_REASONS: readonly StopReason[] = [
  { id: 'over', words: 'the step is over', next: 'Go on with the next line.' },
  {
    id: 'no-pressure',
    words: 'oil pressure gone or low',
    next: 'It does not start again until the cause is found: level, pick-up, relief valve, filter, gauge. Prime it anew.',
  },
  {
    id: 'hot',
    words: 'too hot',
    next: 'Let it cool with the cap on; look for air in the coolant, thermostat, fan and timing.',
  },
  {
    id: 'noise',
    words: 'knock or tapping',
    next: 'Find what knocks before it turns again; cut the filter open and draw a magnet through the oil.',
  },
  {
    id: 'leak',
    words: 'leak of fuel, oil or coolant',
    next: 'Close the leak; dry all round, so that a new one is seen.',
  },
  { id: 'fire', words: 'smoke or fire', next: 'Fuel and battery off; look at every fuel joint before anything else.' },
];

/** The reason in whose words an entry says why; undefined for the person's own words. */
export const stopReason = (why: string): StopReason | undefined => STOP_REASONS.find(({ words }) => words === why);

/** What a stop means: nothing where the step was over; else what has to be looked at, and how it goes on. */
export function meaningOfStop({ fact, step, ranSeconds, early }: BrokenOff, schedule: Schedule): string {
  const after = stopReason(fact.data.why)?.next;
  const planned = schedule.steps[step - 1]?.seconds;
  if (!early || planned === undefined) return after ?? 'The step was over.';
  const ran = `Broken off after ${minutes(ranSeconds)} of ${minutes(planned)} min; the time run counts.`;
  const cause = after === undefined || stopReason(fact.data.why)?.id === 'over' ? [] : [after];
  if (schedule.flat && step === firstTimed(schedule)) {
    return [
      ran,
      ...cause,
      'New flat lobes are not bedded yet: see each lifter turn, then start straight to the speed of this step and run the rest in one go, no idling.',
    ].join(' ');
  }
  return [ran, ...cause, 'Go on with the same step for what is left of it.'].join(' ');
}
/** The first that runs for a time at a speed: a line before it, such as priming by hand, turns no lobe under load. */
const firstTimed = ({ steps }: Schedule) => {
  const timed = steps.filter(({ seconds }) => seconds !== undefined);
  return (timed.find(({ speed }) => speed !== undefined) ?? timed[0])?.number;
};
const minutes = (seconds: number): string => `${Math.round(seconds / 6) / 10}`;
