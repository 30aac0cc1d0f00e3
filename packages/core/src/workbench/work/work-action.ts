/** The next thing of the whole work, for its place on the first page. */
import type { Bench } from '../bench.js';
import type { NextAction } from '../views.js';
import { opensOf } from './act-opens.js';
import { actWords } from './act-words.js';
import { groundOf } from './work-ground.js';
import { actOffers } from './work-offers.js';

const action = (words: string, place: string): NextAction => ({ words, place, finished: false });

/** The first act that can be begun, at the screen that answers it; else what holds everything up. */
export function workAction(bench: Bench): NextAction {
  const ground = groundOf(bench);
  const { looksOwed, aidsOut, away, signedOff } = ground.standing;
  if (signedOff) return { words: 'The work is signed off. Print the record.', place: 'record', finished: true };
  const act = actOffers(ground)[0]?.stand.act;
  if (act !== undefined) {
    const opens = opensOf(bench, act);
    return action(actWords(act), opens?.answers === true ? opens.place : 'bench');
  }
  const [look, aid] = [looksOwed[0], [...aidsOut.keys()][0]];
  if (look !== undefined) return action(`Second look: ${actWords(look.act)}`, 'work');
  if (aid !== undefined) return action(`Take out what the trial left inside: ${aid}`, 'work');
  const waits = away.shop.length > 0 ? 'the shop' : 'parts that were ordered';
  return action(`Wait for ${waits}: ${[...away.shop, ...away.parts].map((one) => actWords(one.act))[0] ?? ''}`, 'work');
}
