import type { WorkAct, WorkAnswer } from '../../plan/index.js';

/** "Turn the crank by hand, main bearing 3": what the hand does, and where. */
export function actWords({ does, place }: Pick<WorkAct, 'does' | 'place'>): string {
  const bare = does.replace(/[.:]$/, '');
  return place.name === '' ? bare : `${bare}, ${place.name}`;
}

/** What was answered, in words. */
export function answerWords(answer: WorkAnswer): string {
  const found = answer.result === 'bad' ? ' (NOT GOOD)' : '';
  if (answer.kind === 'value') return `${answer.text}${found}`;
  if (answer.kind !== 'photo') return `${answer.words}${found}`;
  const seen = answer.words === undefined ? '' : `: ${answer.words}`;
  return `photo ${answer.photo.slice(0, 8)}${seen}${found}`;
}
