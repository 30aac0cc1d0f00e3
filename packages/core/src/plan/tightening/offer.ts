/** What the person is asked to do now, and why it is asked. */
import type { Joint } from '../../engine/model.js';
import { type Act, actKey, WHOLE_JOINT } from './acts.js';
import type { HoleFastener } from './fastener-now.js';
import { instanceKey } from './ledger.js';
import { roundOf, type Standing } from './standing.js';

/** Why an act is offered that was, or could have been, offered before. */
export type Again = 'catching-up' | 'round-again' | 'moved' | 'short' | 'stiff' | 'struck-out';
export interface OfferedAct {
  readonly act: Act;
  readonly instance: number;
  readonly round: number;
}
export type Waits = NonNullable<HoleFastener['waits']>;
export type Offer =
  | ({ readonly kind: 'act'; readonly again?: Again; readonly words?: string } & OfferedAct)
  /** Put a fastener into the hole before anything else; `why` says what became of the last one. */
  | {
      readonly kind: 'place';
      readonly hole: string;
      readonly instance: number;
      readonly why: Waits;
      readonly mustBeNew: boolean;
      readonly mustMeasure: boolean;
      readonly words: string;
    }
  /** Look for the paint mark first: the record of this act was struck out, so it may have been turned. */
  | ({ readonly kind: 'look'; readonly words: string } & OfferedAct);

export const LOOK_WORDS = 'Has it been turned in this stage already? Look for the paint mark.';

/** The hole that waits for its fastener, else the first open act; nothing when the walk is finished. */
export function offerNow(standing: Standing): Offer | undefined {
  const waiting = standing.ledger.order.holes
    .map((hole) => standing.fasteners.get(hole))
    .find((one) => one?.waits !== undefined);
  if (waiting?.waits !== undefined) return placeOffer(standing.ledger.joint, waiting, waiting.waits);
  return standing.open[0] && actOffer(standing, standing.open[0]);
}

function placeOffer(joint: Joint, fastener: HoleFastener, why: Waits): Offer {
  const { hole, instance, mustBeNew, mustMeasure } = fastener;
  return { kind: 'place', hole, instance, why, mustBeNew, mustMeasure, words: placeWords(joint, why, fastener) };
}

function fitWords({ mustBeNew, mustMeasure }: HoleFastener): string {
  if (mustBeNew) return 'Fit a new one.';
  return mustMeasure
    ? 'Fit a new one, or measure this one against its length limit.'
    : 'Dress it as the sheet says and fit it.';
}

function placeWords(joint: Joint, why: Waits, fastener: HoleFastener): string {
  const fit = fitWords(fastener);
  switch (why) {
    case 'missing':
      return 'No fastener placed here yet.';
    case 'opened':
      return `The joint was opened. ${fit}`;
    case 'renewed':
      return `The old fastener is out. ${fit}`;
    case 'beyond':
      return `Turned or stretched too far: take it out. ${fit} ${joint.whenInDoubt}`.trimEnd();
    case 'twice':
      return `Recorded twice as turned in one stage; whether it was, nobody can tell. Take it out. ${fit} ${joint.whenInDoubt}`.trimEnd();
    case 'cap-off':
      return `It did not turn freely: take this cap off and look why. ${fit}`;
    case 'doubted':
      return `In doubt: take it out. ${fit} ${joint.whenInDoubt}`.trimEnd();
  }
}

function actOffer(standing: Standing, act: Act): Offer {
  const instance = act.hole === WHOLE_JOINT ? 1 : (standing.fasteners.get(act.hole)?.instance ?? 1);
  const offered = { act, instance, round: roundOf(standing.ledger, act) };
  if (act.once && standing.ledger.struck.has(instanceKey(actKey(act), instance))) {
    return { kind: 'look', ...offered, words: LOOK_WORDS };
  }
  const again = againOf(standing, offered);
  if (again === undefined) return { kind: 'act', ...offered };
  return { kind: 'act', ...offered, again, words: againWords(again, act) };
}

function againOf(standing: Standing, { act, instance, round }: OfferedAct): Again | undefined {
  const { ledger, finished } = standing;
  const its = ledger.recorded.filter((one) => one.act.hole === act.hole && one.done.instance === instance);
  if (its.some((one) => one.done.seen === 'moved' && !finished.has(one.act))) return 'moved';
  const last = its.findLast((one) => one.act === act)?.done.seen;
  if (last === 'short' || last === 'stiff') return last;
  const voided = ledger.voided.some((one) => one.hole === act.hole && one.instance === instance);
  if (voided && act.stage <= standing.frontier) return 'struck-out';
  if (standing.fasteners.get(act.hole)?.replaced && act.stage < standing.frontier) return 'catching-up';
  return round > 1 ? 'round-again' : undefined;
}

function againWords(again: Again, act: Act): string {
  switch (again) {
    case 'moved':
      return 'It turned before the value was reached: tighten this one again, then check it.';
    case 'short':
      return act.note ?? 'The stretch was short: bring it on as the sheet says, and measure again.';
    case 'stiff':
      return act.cap === undefined
        ? 'It did not turn freely: put that right before anything is tightened further.'
        : 'It did not turn freely before this cap was off.';
    case 'catching-up':
      return 'A fastener fitted later goes through the stages so far by itself.';
    case 'struck-out':
      return 'An earlier record was struck out: this fastener goes through the stages from there by itself.';
    case 'round-again':
      return 'Round again after an interruption: the wrench should click and nothing turn.';
  }
}
