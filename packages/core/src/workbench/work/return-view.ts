/** "You were here" for the whole work. */
import { type ActToVerify, returnToWork, type WorkAct } from '../../plan/index.js';
import type { Bench } from '../bench.js';
import type { Arrival, WorkReturnView } from '../work-views.js';
import { actWords, answerWords } from './act-words.js';
import { actUnderWay, jointUnderWay, underWayWords } from './joint-under-way.js';
import { leftView } from './left-view.js';
import { stoodLines } from './stood-lines.js';
import { type Ground, groundOf } from './work-ground.js';

const ARRIVED: Readonly<Record<Arrival, string>> = {
  'opened-again': 'This was opened anew.',
  paused: 'Nothing was touched here for ten minutes.',
  'other-person': 'Another person worked here before.',
};

/**
 * What to ask of a person who comes back: the card of whoever stopped, up to three acts to touch and compare, and after a month what
 * standing does to an open engine. Undefined where nothing was done yet, no card was written and nothing stood; and once all is signed.
 * `now`: RFC 3339, from the edge.
 */
export function workReturnView(bench: Bench, arrival: Arrival, now: string): WorkReturnView | undefined {
  return returnOf(groundOf(bench), arrival, now);
}

export function returnOf(ground: Ground, arrival: Arrival, now: string): WorkReturnView | undefined {
  const { bench, plan, facts, standing } = ground;
  if (standing.signedOff) return undefined;
  const back = returnToWork(plan, facts);
  const left = leftView(standing);
  const stood = stoodLines(standing, lastEntry(bench), now);
  const leftBadly = badly(ground, back?.leftBadly);
  if (back === undefined && left === undefined && leftBadly === undefined && stood.length === 0) return undefined;
  const last = back?.verify.at(-1);
  return {
    words: `${ARRIVED[arrival]} ${last === undefined ? 'No act stands as done yet.' : `You were here: ${actWords(last.act)}.`}`,
    ...(left && { left }),
    ...(leftBadly !== undefined && { leftBadly }),
    verify: (back?.verify ?? []).map(verifyView),
    mayHaveBegun: (back?.mayHaveBegun ?? []).flatMap(begunView),
    stood,
  };
}

/** A joint that is half tightened weighs more than the act done last. */
function badly({ bench, standing }: Ground, badPause: string | undefined): string | undefined {
  const joint = jointUnderWay(bench);
  if (joint !== undefined && actUnderWay(standing, joint) !== undefined) return `${underWayWords(joint)}.`;
  return badPause === undefined ? undefined : `It was left where nobody should stop: ${badPause}.`;
}

function verifyView({ act, done, words, mayRepeat }: ActToVerify): WorkReturnView['verify'][number] {
  const { answer, method } = done.data;
  const was = `${answerWords(answer)}${method === '' ? '' : `, ${method}`}`;
  return { act: act.id, title: actWords(act), was, words, mayRepeat };
}
const begunView = (act: WorkAct): WorkReturnView['mayHaveBegun'] =>
  act.noReturn === undefined ? [] : [{ act: act.id, title: actWords(act), noReturn: act.noReturn }];

/** The newest time in the log; devices may have written in any order. */
function lastEntry({ state }: Bench): string | undefined {
  return state.entries.reduce<string | undefined>(
    (last, { entry }) => (last === undefined || Date.parse(entry.at) > Date.parse(last) ? entry.at : last),
    undefined,
  );
}
