/** One act of the whole work, very large: what is next, what it asks for, how far its part has come. */
import type { ActStand, WorkAct } from '../../plan/index.js';
import type { Bench } from '../bench.js';
import type { Arrival, WorkBenchView } from '../work-views.js';
import { waitsOf } from './act-waits.js';
import { actWords } from './act-words.js';
import { chunkTitle } from './chunk-title.js';
import { actAfter } from './next-act.js';
import { operationHead } from './operation-view.js';
import { returnOf } from './return-view.js';
import { type Ground, groundOf } from './work-ground.js';
import { type ActOffer, actOffers, offerView } from './work-offers.js';
import { isFinished, progressOf } from './work-progress.js';
import type { WorkAsked } from './work-view.js';

export interface BenchAsked extends WorkAsked {
  /** The act that the person chose; the first offer when left out, or once it is finished. */
  readonly act?: string;
  readonly arrival?: Arrival;
  /** RFC 3339, from the edge. */
  readonly now: string;
}

/** The act to do now. With `arrival` the view opens with what has to be touched before the work goes on. */
export function workBenchView(bench: Bench, asked: BenchAsked): WorkBenchView {
  const ground = groundOf(bench, asked.shown);
  const { plan, standing } = ground;
  const chosen = asked.act === undefined ? undefined : standing.stands.get(asked.act);
  const waits = chosen?.state === 'waiting' ? chosen : undefined;
  const offers = actOffers(ground, asked.minutes);
  const offer = offerOf(offers, chosen) ?? (waits === undefined ? offers[0] : undefined);
  const act = offer?.stand.act;
  const operation = act && operationHead(ground, act.operation);
  const next = act && actAfter(standing, act);
  const complete = completeWords(ground);
  const resume = asked.arrival && returnOf(ground, asked.arrival, asked.now);
  return {
    title: operation?.title ?? 'The whole work',
    ...(operation && { operation }),
    ...(offer && { current: offerView(ground, offer) }),
    ...(next && { next: { id: next.id, does: next.does, place: next.place.name } }),
    progress: act === undefined ? progressOf([...standing.stands.values()]) : chunkProgress(ground, act),
    ...(complete !== undefined && { complete }),
    looksOwed: standing.looksOwed.length,
    cautions: operation?.cautions ?? [],
    spoken: act === undefined ? '' : spokenWords(act),
    ...(resume && { resume }),
    ...(offer === undefined && { nothing: waits ? waitWords(plan, waits) : nothingWords(ground) }),
  };
}

/** The chosen act, where it can be begun; what lies at the shop or on its way is taken up by whoever chooses it. */
function offerOf(offers: readonly ActOffer[], chosen: ActStand | undefined): ActOffer | undefined {
  if (chosen === undefined) return undefined;
  const found = offers.find(({ stand }) => stand === chosen);
  if (found !== undefined || chosen.state !== 'away') return found;
  const { act } = chosen;
  return {
    stand: chosen,
    fits: true,
    pause: { safeAfter: true, words: '', minutesToSafe: act.minutes, run: [act.id] },
  };
}

/** "3 of 5 done, part 2 of 3". */
function chunkProgress({ plan, standing }: Ground, { operation, chunk }: WorkAct): WorkBenchView['progress'] {
  const own = plan.acts.filter((act) => act.operation === operation);
  const progress = progressOf(
    standsIn(
      standing.stands,
      own.filter((act) => act.chunk === chunk),
    ),
  );
  const parts = new Set(own.map((act) => act.chunk)).size;
  return parts === 1 ? progress : { ...progress, words: `${progress.words}, part ${chunk} of ${parts}` };
}
const standsIn = (stands: ReadonlyMap<string, ActStand>, acts: readonly WorkAct[]): readonly ActStand[] =>
  acts.flatMap(({ id }) => stands.get(id) ?? []);

/** Told when the act done last was the last of its chunk. */
function completeWords({ plan, standing }: Ground): string | undefined {
  const id = standing.lately.at(-1)?.data.act;
  const last = id === undefined ? undefined : plan.byId.get(id);
  if (last === undefined) return undefined;
  const acts = plan.acts.filter(({ operation, chunk }) => operation === last.operation && chunk === last.chunk);
  const operation = plan.operations.find((one) => one.id === last.operation);
  if (operation === undefined || !isFinished(standsIn(standing.stands, acts))) return undefined;
  return `${chunkTitle(operation, acts)}. Complete.`;
}

/** What the loudspeaker says; the screen shows the same. */
const spokenWords = ({ place, does, ask }: WorkAct): string =>
  `${place.name === '' ? '' : `${place.name[0]!.toUpperCase()}${place.name.slice(1)}. `}${does} Tell: ${ask}.`;

const waitWords = (plan: Ground['plan'], stand: ActStand): string =>
  `${actWords(stand.act)} waits. ${waitsOf(plan, stand)
    .map(({ words }) => `${words}.`)
    .join(' ')}`;

/** Why nothing can be begun. */
function nothingWords({ standing }: Ground): string {
  const { signedOff, looksOwed, aidsOut, away } = standing;
  if (signedOff) return 'All of it is signed.';
  const lines = [
    ...(looksOwed.length === 0 ? [] : [`second looks are owed: ${looksOwed.length}`]),
    ...(aidsOut.size === 0 ? [] : [`aids of the trial are still out: ${[...aidsOut.keys()].join(', ')}`]),
    ...(away.shop.length === 0 ? [] : [`the shop has it: ${away.shop.length}`]),
    ...(away.parts.length === 0 ? [] : [`parts have not come: ${away.parts.length}`]),
  ];
  return `Nothing can be begun now: ${lines.join('; ')}.`;
}
