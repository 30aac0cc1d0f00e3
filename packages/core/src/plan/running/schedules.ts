/** The run-in, step by step: as the sheet prints it, else as the trade usually does it. */
import type { Engine, RunInStep, Window } from '../../engine/model.js';
import type { AngularSpeed } from '../../quantity/index.js';
import { rpm } from '../../quantity/index.js';
import { traitsOf } from '../work/traits.js';

export interface ScheduledStep {
  /** 1 for the first. */
  readonly number: number;
  readonly words: string;
  /** Time to run [s]; absent: it is over when the person goes on. */
  readonly seconds?: number;
  readonly time: string;
  readonly speed?: { readonly text: string; readonly window: Window<AngularSpeed> };
  readonly load: string;
  readonly origin: string;
}
export interface Schedule {
  readonly steps: readonly ScheduledStep[];
  readonly origin: string;
  /** False where common practice stands in for a sheet that prints none. */
  readonly fromSheet: boolean;
  /** New flat lobes live or die in its first step: it is not idled and, if it can be helped, not broken off. */
  readonly flat: boolean;
}
export const COMMON_PRACTICE = 'common practice, no source';

/**
 * The run-in of this engine. The sheet's own lines come first, whatever they say. Without any: a diesel by load in steps, in the
 * shape of a technical manual that was read; else by the followers, a flat one (and one that the sheet does not name, because the careful way
 * hurts no roller) straight to fast idle, 20 to 30 minutes at 1,800 to 2,500 rpm.
 */
export function scheduleOf(engine: Engine): Schedule {
  const traits = traitsOf(engine);
  const flat = traits.get('roller-followers') !== 'yes';
  if (engine.runIn.length > 0) {
    const steps = engine.runIn.map(ofSheet);
    return { steps, origin: originsOf(steps), fromSheet: true, flat };
  }
  const general = traits.get('diesel') === 'yes' ? DIESEL : flat ? FLAT : ROLLER;
  const steps = general.map((step, index) => ({ number: index + 1, ...step }));
  return { steps, origin: originsOf(steps), fromSheet: false, flat };
}

const ofSheet = (line: RunInStep, index: number): ScheduledStep => ({
  number: index + 1,
  words: line.text,
  ...(line.time && { seconds: line.time.value }),
  time: line.time?.text ?? '',
  ...(line.speed && { speed: line.speed }),
  load: line.load ?? '',
  origin: line.from.text,
});
const originsOf = (steps: readonly ScheduledStep[]) => [...new Set(steps.map(({ origin }) => origin))].join('; ');

type General = Omit<ScheduledStep, 'number'>;
const between = (low: number, high: number): NonNullable<General['speed']> => ({
  text: `${low} to ${high} rpm`,
  window: { low: rpm(low), high: rpm(high) },
});
const MINUTE = 60;

const RINGS: General = {
  words: 'In the first hours: pull and coast by turns, so that the rings bed; never long at one speed',
  time: '',
  load: 'changing, not above half',
  origin: COMMON_PRACTICE,
};
const FLAT: readonly General[] = [
  {
    words: 'Straight from the start to fast idle, speed changing all the time; do not let it idle slowly. Up to 30 min',
    seconds: 20 * MINUTE,
    time: '20 min',
    speed: between(1800, 2500),
    load: 'none',
    origin: COMMON_PRACTICE,
  },
  RINGS,
];
const ROLLER: readonly General[] = [
  {
    words: 'To working temperature, speed changing; look for leaks',
    seconds: 20 * MINUTE,
    time: '20 min',
    speed: between(1200, 2500),
    load: 'none',
    origin: COMMON_PRACTICE,
  },
  RINGS,
];
const SMALL_DIESEL = 'TM 5-3895-376-14&P p. 6-2, a small diesel; the shape alone is taken over';
const DIESEL: readonly General[] = (
  [
    ['Idle', 10, 'none'],
    ['Half speed', 10, 'half'],
    ['Full speed', 20, 'full'],
    ['Idle, then stop', 2, 'none'],
  ] as const
).map(([words, minutes, load]) => ({
  words,
  seconds: minutes * MINUTE,
  time: `${minutes} min`,
  load,
  origin: SMALL_DIESEL,
}));
