/** What has to be so before the key of a fresh engine is turned. Common practice, no source; the maker's manual and local rules come first. */
import { type Engine, valveKey, valvesOf } from '../../engine/index.js';
import { traitsOf } from '../work/traits.js';
import { factsOf, type RunningFact } from './facts.js';

/** How the work plan stands with an act. */
export interface ActAnswer {
  readonly result: 'good' | 'bad';
  readonly words: string;
  readonly entry?: string;
}
export interface ReadyItem {
  readonly id: string;
  readonly title: string;
  readonly why: string;
  readonly state: 'ready' | 'open' | 'not-ready';
  readonly words: string;
  /** The act of the work plan that answers it; absent for what is computed. */
  readonly act?: string;
  readonly entry?: string;
}

interface Asked {
  readonly id: string;
  readonly act: string;
  readonly title: string;
  readonly why: string;
  readonly fuel?: 'petrol' | 'diesel';
}
const ITEMS: readonly Asked[] = [
  { id: 'oil', act: 'oil-filled', title: 'Oil in, level read', why: 'Nothing may turn without oil.' },
  {
    id: 'filter',
    act: 'filter-filled',
    title: 'Filter filled and wetted',
    why: 'An empty filter takes the first seconds of oil.',
  },
  {
    id: 'primed',
    act: 'primed',
    title: 'Primed until the gauge shows pressure',
    why: 'A dry start wipes shells and lobes.',
  },
  {
    id: 'firing-centre',
    act: 'firing-centre',
    title: 'Cylinder 1 at firing dead centre, not at the overlap',
    why: 'A turn out it spits back, catches fire or grinds the cam while cranking. Both valves of cylinder 1 shut and loose: that is firing.',
  },
  {
    id: 'leads',
    act: 'leads-placed',
    title: 'Leads in firing order, the way the rotor turns',
    why: 'Against the rotor it does not start, and each turn costs paste on the lobes.',
    fuel: 'petrol',
  },
  {
    id: 'spark',
    act: 'spark-set',
    title: 'Standing advance set',
    why: 'Too early it kicks back, too late it cooks the exhaust.',
    fuel: 'petrol',
  },
  {
    id: 'injection',
    act: 'injection-set',
    title: 'Injection pump timed',
    why: 'A tooth out it smokes and does not start.',
    fuel: 'diesel',
  },
  {
    id: 'fuel-joints',
    act: 'fuel-joints-closed',
    title: 'Fuel joints dry under pressure',
    why: 'Fuel can flash at the first start.',
  },
  { id: 'coolant', act: 'coolant-filled', title: 'Coolant in, air out', why: 'A pocket of air cracks a head.' },
  {
    id: 'throttle',
    act: 'throttle-returns',
    title: 'Throttle comes back, stop works',
    why: 'An engine that cannot be stopped runs away.',
  },
  {
    id: 'second-person',
    act: 'roles-told',
    title: 'A second person, and one word that stops all',
    why: 'One turns the key, one looks for fire and leaks.',
  },
  { id: 'extinguisher', act: 'extinguisher-held', title: 'Extinguisher in a hand', why: 'Seconds decide.' },
  {
    id: 'stop-rule',
    act: 'stop-rule-told',
    title: 'Seconds without oil pressure agreed on',
    why: 'Without pressure each second costs the bearings.',
  },
  {
    id: 'clamp',
    act: 'timing-nipped',
    title: 'Timing stands, clamp holds, fuel on last',
    why: 'A clamp that is only nipped moves.',
  },
];

/**
 * The list before the first start. Each item is ready by the answer of the work plan's act, not ready where that was bad, else open; oil at the
 * rockers is counted from what was seen at each valve, here or in the plan. Items of the other fuel are left out; where the fuel is unknown both stay.
 */
export function readyItems(
  engine: Engine,
  facts: readonly RunningFact[],
  answers: ReadonlyMap<string, ActAnswer>,
): readonly ReadyItem[] {
  const traits = traitsOf(engine);
  const asked = ITEMS.filter(({ fuel }) => fuel === undefined || traits.get(fuel) !== 'no').map((item) =>
    answered(item, answers),
  );
  const at = asked.findIndex(({ id }) => id === 'primed');
  return [...asked.slice(0, at + 1), oilItem(engine, facts, answers), ...asked.slice(at + 1)];
}

function answered({ id, act, title, why }: Asked, answers: ReadonlyMap<string, ActAnswer>): ReadyItem {
  const answer = answers.get(act);
  if (answer === undefined) return { id, act, title, why, state: 'open', words: 'not answered yet' };
  const { result, words, entry } = answer;
  return {
    id,
    act,
    title,
    why,
    state: result === 'good' ? 'ready' : 'not-ready',
    words,
    ...(entry !== undefined && { entry }),
  };
}

/** Keys of the valves at which oil was seen: here, or as the answer of the plan's own act. */
export function oiledValves(
  facts: readonly RunningFact[],
  answers: ReadonlyMap<string, ActAnswer>,
): ReadonlyMap<string, string | undefined> {
  const here = factsOf(facts, 'oil-seen').map((one) => [valveKey(one.data.valve), one.entry] as const);
  const PLAN = 'oil-at-valve@';
  const there = [...answers].flatMap(([act, { result, entry }]) =>
    act.startsWith(PLAN) && result === 'good' ? [[act.slice(PLAN.length), entry] as const] : [],
  );
  return new Map([...there, ...here]);
}

function oilItem(engine: Engine, facts: readonly RunningFact[], answers: ReadonlyMap<string, ActAnswer>): ReadyItem {
  const keys = valvesOf(engine).map(valveKey);
  const seen = oiledValves(facts, answers);
  const count = keys.filter((key) => seen.has(key)).length;
  const item = {
    id: 'oil-at-valves',
    title: 'Oil seen at every rocker or lobe',
    why: 'Where none comes, a gallery or a pushrod is blocked, and that place runs dry.',
  };
  if (keys.length === 0) return { ...item, state: 'open', words: 'the sheet does not say which valves it has' };
  const all = count === keys.length;
  return { ...item, state: all ? 'ready' : 'open', words: `${count} of ${keys.length} seen` };
}
