/** Photos of the work by the act that they were taken for, newest last; one that was taken again stays beside the new one. */
import type { RegistersView } from '../work-views.js';
import { actWords } from './act-words.js';
import { type Ground, givenOf } from './work-ground.js';

export function photoRows({ plan, facts }: Ground): RegistersView['photos'] {
  return facts.flatMap((fact) => {
    if (fact.kind !== 'work-act-done' || fact.data.answer.kind !== 'photo') return [];
    const { act, answer } = fact.data;
    const known = plan.byId.get(act);
    return [
      {
        about: `act:${act}`,
        aboutWords: known === undefined ? act : actWords(known),
        photo: answer.photo,
        words: answer.words ?? '',
        given: givenOf(fact),
      },
    ];
  });
}
