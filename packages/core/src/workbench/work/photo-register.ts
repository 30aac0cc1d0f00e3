/** Photos by what they show, in the order in which they were taken; one that was taken again stays beside the new one. */
import { givenBy } from '../bench.js';
import { photoPlace, photosAbout } from '../photo-rows.js';
import type { RegistersView } from '../work-views.js';
import { actWords } from './act-words.js';
import { type Ground, givenOf } from './work-ground.js';

type Row = RegistersView['photos'][number];

export function photoRows(ground: Ground): readonly Row[] {
  const taken = photosAbout(ground.bench).flatMap(({ about, photo, words, entry }): readonly Row[] => {
    const given = givenBy(ground.bench, entry);
    return given === undefined ? [] : [{ about, aboutWords: aboutWords(ground, about), photo, words, given }];
  });
  const told = new Set(taken.map(({ about, photo }) => `${about} ${photo}`));
  return [...taken, ...answerRows(ground).filter(({ about, photo }) => !told.has(`${about} ${photo}`))];
}

/** Acts that were answered with a photo: it is shown for them wherever it was tied to when it was taken. */
function answerRows(ground: Ground): readonly Row[] {
  return ground.facts.flatMap((fact) => {
    if (fact.kind !== 'work-act-done' || fact.data.answer.kind !== 'photo') return [];
    const { photo, words = '' } = fact.data.answer;
    const about = `act:${fact.data.act}`;
    return [{ about, aboutWords: aboutWords(ground, about), photo, words, given: givenOf(fact) }];
  });
}

function aboutWords({ bench, plan }: Ground, about: string): string {
  const act = about.startsWith('act:') ? plan.byId.get(about.slice('act:'.length)) : undefined;
  return act === undefined ? photoPlace(bench.engine, about) : actWords(act);
}
