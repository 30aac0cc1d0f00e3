/** Ready to start: the list, oil at every valve, stop rules, goes at the starter. */
import { valveKey, valveName, valvesOf } from '../../engine/index.js';
import {
  COMMON_PRACTICE,
  judgeStart,
  LONGEST_CRANKING,
  oiledValves,
  type RunningFact,
  readyItems,
  STOPS_AT_ONCE,
  stopRule,
} from '../../plan/index.js';
import { type Bench, givenBy } from '../bench.js';
import type { OilPlaceView, ReadyItemView, StartTryView, StartView } from '../running-views.js';
import { workAt } from '../work/work-facts.js';
import { answersAt, cautionsOf, factsAt, factsOfKind, givenOf } from './facts-at.js';

/** What has to be so before the key is turned, and what the starter told. */
export function startView(bench: Bench): StartView {
  const items = itemsOf(bench);
  const places = oilPlaces(bench);
  const rule = stopRule(bench.engine);
  return {
    title: 'Ready to start',
    ready: {
      items,
      progress: counted(items.filter(({ state }) => state === 'ready').length, items.length, 'ready'),
      all: items.every(({ state }) => state === 'ready'),
    },
    oil: { places, progress: counted(places.filter(({ seen }) => seen).length, places.length, 'seen') },
    stop: {
      seconds: rule.seconds,
      origin: rule.origin,
      rules: [
        { words: `No oil pressure within ${rule.seconds} s of the first firing.`, origin: rule.origin },
        ...STOPS_AT_ONCE,
      ],
      cranking: { seconds: LONGEST_CRANKING, origin: COMMON_PRACTICE },
    },
    tries: triesOf(bench),
    cautions: cautionsOf(bench, ['prime', 'first-start']),
  };
}

const counted = (done: number, of: number, word: string) => ({ done, of, words: `${done} of ${of} ${word}` });

function itemsOf(bench: Bench): readonly ReadyItemView[] {
  return readyItems(bench.engine, oilFacts(bench), answersAt(bench)).map(({ entry, ...item }) => {
    const given = givenBy(bench, entry);
    return { ...item, ...(given && { given }) };
  });
}

/** Where the work plan has an act for a valve, its answer counts: it may have been opened again since oil was seen. */
function oilFacts(bench: Bench): readonly RunningFact[] {
  const { plan } = workAt(bench);
  return factsAt(bench).filter(
    (fact) => fact.kind !== 'oil-seen' || !plan.byId.has(`oil-at-valve@${valveKey(fact.data.valve)}`),
  );
}

function oilPlaces(bench: Bench): readonly OilPlaceView[] {
  const seen = oiledValves(oilFacts(bench), answersAt(bench));
  return valvesOf(bench.engine).map((valve) => {
    const key = valveKey(valve);
    const given = givenBy(bench, seen.get(key));
    return { key, name: valveName(bench.engine, valve), ...(given && { seen: given }) };
  });
}

function triesOf(bench: Bench): readonly StartTryView[] {
  return factsOfKind(bench, 'start-tried')
    .map((fact): StartTryView => {
      const { crankedSeconds, pressureAfterSeconds: after, pressure } = fact.data;
      const oil =
        after === undefined && pressure === undefined
          ? 'oil pressure not read'
          : `oil pressure ${[pressure?.text, after === undefined ? undefined : `after ${after} s`].filter((part) => part !== undefined).join(' ')}`;
      return {
        given: givenOf(fact),
        words: `${crankedSeconds} s on the starter, ${oil}`,
        ...judgeStart(bench.engine, fact.data),
      };
    })
    .reverse();
}
