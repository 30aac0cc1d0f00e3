/** Short ways to write an act of an operation. */
import type { ActRule, AnswerKind, Asked } from '../model.js';

type More = Omit<ActRule, 'id' | 'minutes' | 'does' | 'ask' | 'answer' | 'asked'>;
const rule =
  (answer: AnswerKind) =>
  (id: string, minutes: number, does: string, ask: string, more: More = {}): ActRule => ({
    id,
    minutes,
    does,
    ask,
    answer,
    ...more,
  });

/** Answered by words and good or bad. */
export const felt = rule('felt-or-seen');
/** Answered by a photo. */
export const photo = rule('photo');
/** Answered by names or numbers, one a line. */
export const list = rule('list');
/** Answered by position, end and face of a part. */
export const register = rule('register');
export const signOff = rule('sign-off');
/** Answered by a figure with its unit. */
export const value = (
  asked: Asked,
  id: string,
  minutes: number,
  does: string,
  ask: string,
  more: More = {},
): ActRule => ({
  ...rule('value')(id, minutes, does, ask, more),
  asked,
});
