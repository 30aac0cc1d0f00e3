/** Lines of the record for the whole work: what was done and found, left out, opened again, looked at twice. */
import { DONE_AGAIN, REOPENING_RULES, type WorkFactKind } from '../plan/index.js';
import type { Bench } from './bench.js';
import type { Writer } from './row-words.js';
import { actWords, answerWords } from './work/act-words.js';
import { planAt } from './work/work-plan.js';

function actName(bench: Bench, id: string): string {
  const act = planAt(bench).byId.get(id);
  return act === undefined ? id : actWords(act);
}
const listed = (names: readonly string[]) => (names.length === 0 ? 'nothing' : names.join('; '));

export const workRows: { readonly [K in WorkFactKind]: Writer<K> } = {
  'work-act-done': (bench, { act, answer, method }) => ({
    what: actName(bench, act),
    value: `${answerWords(answer)}${method === '' ? '' : `, ${method}`}`,
  }),
  'work-act-skipped': (bench, { act, reason }) => ({ what: `Left out: ${actName(bench, act)}`, value: reason }),
  'work-reopened': (bench, { rule, place, why }) => {
    if (rule === DONE_AGAIN) return { what: `Open again: ${actName(bench, place ?? '')}`, value: why };
    const title = REOPENING_RULES.find(({ id }) => id === rule)?.title ?? rule;
    return { what: `${title}${place === undefined ? '' : ` (${place})`}`, value: why };
  },
  'second-look': (bench, { act, looker, method, result, seen }) => ({
    what: `Second look: ${actName(bench, act)}`,
    value: `${result === 'good' ? '' : 'NOT GOOD: '}${seen}; ${looker}, ${method}`,
  }),
  'mock-up-aid-out': (_, { aid, count, where }) => ({ what: `Aid put in: ${aid}`, value: `${count}, ${where}` }),
  'mock-up-aid-returned': (_, { aid, count }) => ({ what: `Aid taken out: ${aid}`, value: `${count}` }),
  'work-begun': (bench, { operation, why }) => ({
    what: `Book begun at: ${planAt(bench).operations.find(({ id }) => id === operation)?.title ?? operation}`,
    value: why,
  }),
  'work-act-added': (_, { does, ask, why }) => ({ what: `Put into the plan: ${does}`, value: `${ask} (${why})` }),
  'work-act-critical': (bench, { act, why }) => ({ what: `Held for critical: ${actName(bench, act)}`, value: why }),
  'work-left': (_, { halfDone, loose, missing, uncovered, doubt }) => ({
    what: 'Work left',
    value: Object.entries({
      'half done': halfDone,
      loose,
      missing,
      'not oiled or covered': uncovered,
      'in doubt': doubt,
    })
      .filter(([, text]) => text !== '')
      .map(([about, text]) => `${about}: ${text}`)
      .join('; '),
  }),
  'work-resumed': (bench, { why, verified }) => ({
    what: 'Work taken up again',
    value: `${why.replaceAll('-', ' ')}; touched ${listed(verified.map((act) => actName(bench, act)))}`,
  }),
  'work-signed-off': (bench, { words, skips }) => ({
    what: 'Signed off',
    value: `${words}; left out: ${listed(skips.map((act) => actName(bench, act)))}`,
  }),
};
