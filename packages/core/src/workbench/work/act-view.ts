/** One act at one place, as every screen of the work shows it. */
import type { ActStand, WorkAct } from '../../plan/index.js';
import type { Bench } from '../bench.js';
import type { ShownIn } from '../measure-views.js';
import type { WorkActView } from '../work-views.js';
import { opensOf } from './act-opens.js';
import { unitsOfAct } from './act-units.js';
import { waitsOf } from './act-waits.js';
import { type Ground, givenOf, groundOf } from './work-ground.js';

/** An act of the plan; undefined where the plan has none of that id. */
export function actView(bench: Bench, act: string, shown?: ShownIn): WorkActView | undefined {
  const ground = groundOf(bench, shown);
  const stand = ground.standing.stands.get(act);
  return stand && viewOfStand(ground, stand);
}

/** The view of an act that stands as it does. */
export function viewOfStand(ground: Ground, stand: ActStand): WorkActView {
  const { again, look } = stand;
  return {
    ...fixedPart(ground, stand.act),
    state: stand.state,
    ...recorded(stand),
    ...(again && { again: { title: again.title, because: again.because, why: again.why } }),
    waitsFor: waitsOf(ground.plan, stand),
    ...(look && { look }),
  };
}

type Fixed = Omit<WorkActView, 'state' | 'waitsFor' | 'given' | 'skipped' | 'again' | 'look' | 'looked'>;
/** What the log does not change is made once for each act: a plan has more than a thousand. */
const fixed = { mm: new WeakMap<WorkAct, Fixed>(), in: new WeakMap<WorkAct, Fixed>() };

function fixedPart(ground: Ground, act: WorkAct): Fixed {
  const known = fixed[ground.shown.length].get(act);
  if (known !== undefined) return known;
  const made = fixedView(ground, act);
  fixed[ground.shown.length].set(act, made);
  return made;
}

function fixedView({ bench, plan, shown }: Ground, act: WorkAct): Fixed {
  const operation = plan.operations.find(({ id }) => id === act.operation);
  if (operation === undefined) throw new Error(`act ${act.id} is of no operation of its plan`);
  const { id, does, ask, answer, asked, minutes, noReturn, two, badPause, mustDo, awaits, unsure, own } = act;
  const opens = opensOf(bench, act);
  return {
    id,
    operation: operation.id,
    operationTitle: operation.title,
    phase: operation.phase,
    place: act.place.name,
    does,
    ask,
    answer,
    ...(asked && { asked }),
    units: unitsOfAct(act, shown),
    minutes,
    critical: act.critical === true,
    closes: act.closes === true,
    ...(noReturn !== undefined && { noReturn }),
    ...(two !== undefined && { two }),
    ...(badPause !== undefined && { badPause }),
    ...(mustDo !== undefined && { mustDo }),
    ...(awaits && { awaits }),
    ...(unsure !== undefined && { unsure }),
    ...(own !== undefined && { added: { why: own } }),
    ...(opens && { opens }),
    photos: `act:${id}`,
  };
}

/** What was answered, left out, looked at once more. */
function recorded({ held, foundBad }: ActStand): Pick<WorkActView, 'given' | 'skipped' | 'looked'> {
  const { done, skipped, signed, look } = held;
  return {
    ...(done && { given: givenView(done, foundBad) }),
    ...(signed && { given: { ...givenOf(signed), words: signed.data.words, method: '', result: 'good' } }),
    ...(skipped && { skipped: { ...givenOf(skipped), reason: skipped.data.reason } }),
    ...(look && { looked: lookedView(look.fact) }),
  };
}

function givenView(done: NonNullable<ActStand['held']['done']>, bad: boolean): NonNullable<WorkActView['given']> {
  const { answer, method } = done.data;
  const result = bad ? 'bad' : 'good';
  const given = { ...givenOf(done), method, result } as const;
  if (answer.kind === 'photo') return { ...given, words: answer.words ?? '', photo: answer.photo };
  return { ...given, words: answer.kind === 'value' ? answer.text : answer.words };
}

const lookedView = (fact: NonNullable<ActStand['held']['look']>['fact']): NonNullable<WorkActView['looked']> => {
  const { looker, method, seen } = fact.data;
  return { ...givenOf(fact), looker, method, seen };
};
