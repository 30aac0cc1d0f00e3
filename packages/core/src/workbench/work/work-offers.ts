/** What can be begun now: offers of the plan in words, a joint that is half tightened before all of them. */
import { type ActStand, offers, type Pause, type WorkOffer } from '../../plan/index.js';
import type { WorkOfferView } from '../work-views.js';
import { viewOfStand } from './act-view.js';
import { actUnderWay, jointUnderWay, underWayWords } from './joint-under-way.js';
import type { Ground } from './work-ground.js';

/** An act that can be begun, still without its view: there may be hundreds. */
export interface ActOffer {
  readonly stand: ActStand;
  readonly pause: Pause;
  readonly fits: boolean;
  /** Its joint is half tightened. */
  readonly underWay?: string;
}

/** All acts that wait for nothing, in the order in which they are offered; shop and parts are not among them. */
export function actOffers({ bench, standing }: Ground, minutes?: number): readonly ActOffer[] {
  const open = offers(standing, minutes).filter(isActHere);
  const joint = jointUnderWay(bench);
  const stand = joint && actUnderWay(standing, joint);
  if (joint === undefined || stand === undefined) return open;
  const { act } = stand;
  const found = open.find((one) => one.stand.act.id === act.id);
  const pause = found?.pause ?? { safeAfter: true, words: '', minutesToSafe: act.minutes, run: [act.id] };
  const fits = found?.fits ?? (minutes === undefined || act.minutes <= minutes);
  return [{ stand, pause, fits, underWay: underWayWords(joint) }, ...open.filter((one) => one !== found)];
}

const isActHere = (offer: WorkOffer): offer is Extract<WorkOffer, { kind: 'act' }> =>
  offer.kind === 'act' && offer.awaits === undefined;

/** The offer with its act; `alike` counts others of its kind at other places. */
export function offerView(ground: Ground, { stand, pause, fits, underWay }: ActOffer, alike = 0): WorkOfferView {
  const { safeAfter, minutesToSafe } = pause;
  return {
    act: viewOfStand(ground, stand),
    fits,
    minutesToSafe,
    safeAfter,
    pause: underWay === undefined ? pauseWords(pause) : `${underWay}.`,
    ...(alike > 0 && { alike }),
  };
}

/** Where one may stop who begins it. Lengths are usual lengths: common practice, no source. */
function pauseWords({ safeAfter, words, minutesToSafe }: Pause): string {
  if (safeAfter) return 'You may stop after it.';
  return `Do not stop right after it: ${words}. About ${minutesToSafe} min to the next place where one may stop.`;
}
