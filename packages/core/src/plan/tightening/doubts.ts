/** Records that cannot all be believed: the same turn recorded twice, an act struck out after later ones were done. */
import type { StageAct } from '../../engine/model.js';
import type { Act } from './acts.js';
import { finishes } from './answers.js';
import type { ActDone, RecordedAct, Voided } from './recorded.js';

/** Acts that turn a fastener past what a wrench set to a value would do: they cannot be repeated. */
export const turns = (kind: StageAct['kind'] | undefined): boolean => kind === 'angle' || kind === 'stretch';

/**
 * Whether a fastener was turned by angle in this stage already, by the record of somebody else: two people who worked
 * without seeing each other's entries. Whether it was really turned twice nobody can tell.
 */
export function turnedTwice(recorded: readonly RecordedAct[], act: Act, done: ActDone): boolean {
  const turned = ({ seen }: ActDone) => seen === 'turned-and-marked';
  return (
    act.kind === 'angle' && turned(done) && recordsOf(recorded, act, done.instance).some((one) => turned(one.done))
  );
}

/**
 * What becomes of the later records of a fastener. `stand`: they count. `again`: it was slackened after or between them,
 * so everything from that stage on is done again. `doubted`: it was turned by angle or stretch on top of a state that is
 * now unknown, which can neither be repeated nor believed. Common practice, no source.
 */
export type Aftermath = 'stand' | 'again' | 'doubted';

/**
 * When the record of an act is struck out. The later records stand where another record of the act does, or where the
 * wrench only went to higher values since: the act is offered again and harms nothing.
 */
export function afterStrike(recorded: readonly RecordedAct[], act: Act, instance: number): Aftermath {
  if (recordsOf(recorded, act, instance).some((one) => finishes(one.done.seen))) return 'stand';
  const later = laterThan(recorded, act, instance);
  const slackened = act.kind === 'loosen' ? later.length > 0 : later.some((one) => one.act.kind === 'loosen');
  if (later.some((one) => turns(one.act.kind)) && (slackened || act.kind === 'torque')) return 'doubted';
  return slackened ? 'again' : 'stand';
}

/** When an act is recorded after later stages were: slackening undoes what the fastener held. */
export function afterLateRecord(recorded: readonly RecordedAct[], act: Act, instance: number): Aftermath {
  const later = act.kind === 'loosen' ? laterThan(recorded, act, instance) : [];
  if (later.some((one) => turns(one.act.kind))) return 'doubted';
  return later.length > 0 ? 'again' : 'stand';
}

const laterThan = (recorded: readonly RecordedAct[], act: Act, instance: number): readonly RecordedAct[] =>
  recorded.filter((one) => one.act.hole === act.hole && one.done.instance === instance && one.act.stage > act.stage);

/** The record was made before its fastener was sent back to an earlier stage. */
export const isVoided = (voided: readonly Voided[], { act, done, at }: RecordedAct): boolean =>
  voided.some((one) => one.hole === act.hole && one.instance === done.instance && one.stage < act.stage && one.at > at);

const recordsOf = (recorded: readonly RecordedAct[], act: Act, instance: number): readonly RecordedAct[] =>
  recorded.filter((one) => one.act === act && one.done.instance === instance);
