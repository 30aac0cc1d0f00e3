/** A person at the bench who keeps the whole work: wishes become entries, a refusal fails the test with its line. */
import type { WorkAct } from '../../plan/index.js';
import { engineOf, Scribe, SHEETS } from '../bench.suite.js';
import { proposeWork, workAt } from '../index.js';
import type { WorkWish } from '../work-views.js';

export const ENGINES = Object.values(SHEETS).map((sheet) => [sheet, engineOf(sheet)] as const);
type Answer = Extract<WorkWish, { kind: 'done' }>['answer'];

export function answerTo({ answer }: WorkAct, result: 'good' | 'bad' = 'good'): Answer {
  switch (answer) {
    case 'value':
      return { kind: 'value', text: '0.05 mm', result };
    case 'photo':
      return { kind: 'photo', photo: 'a'.repeat(64), result };
    case 'list':
      return { kind: 'list', words: 'as it was counted', result };
    case 'register':
      return { kind: 'register', position: 'its own', end: 'up', face: 'front', condition: 'used, good', result };
    default:
      return { kind: 'felt-or-seen', words: 'as it was felt', result };
  }
}

export class WorkScribe extends Scribe {
  /** Minutes past ten: looks alone rest on the time. */
  minutes = 0;

  wish(wish: WorkWish, by = 'Ada'): void {
    const at = new Date(Date.UTC(2026, 0, 1, 9, this.minutes)).toISOString();
    const proposal = proposeWork(this.bench, wish, { at, by });
    if (!proposal.ok) throw new Error(proposal.fault);
    for (const entry of proposal.value) this.append(entry);
    this.minutes += 1;
  }
  /** The book begun at an operation: what comes before is left out. */
  beginAt(operation: string): this {
    this.wish({ kind: 'begin-at', operation, why: 'the book was begun late' });
    return this;
  }
  act(id: string): WorkAct {
    const act = workAt(this.bench).plan.byId.get(id);
    if (act === undefined) throw new Error(`no act ${id}`);
    return act;
  }
  done(...ids: readonly string[]): this {
    for (const id of ids) this.wish({ kind: 'done', act: id, answer: answerTo(this.act(id)), method: 'by hand' });
    return this;
  }
  /** Whatever its operation still has open before this act is left out. */
  skipTo(id: string): this {
    const { plan, standing } = workAt(this.bench);
    const { operation } = this.act(id);
    const before = plan.acts.slice(0, plan.acts.indexOf(this.act(id))).filter((act) => act.operation === operation);
    const open = before.filter((act) => !['done', 'skipped'].includes(standing.stands.get(act.id)?.state ?? ''));
    return this.skip(...open.map((act) => act.id));
  }
  skip(...acts: readonly string[]): this {
    this.wish({ kind: 'skip', acts, reason: 'not on this engine' });
    return this;
  }
}
/** Each engine is read, and its plan made, once for all tests of a file. */
export function keeping(sheet: keyof typeof SHEETS): WorkScribe {
  const found = ENGINES.find(([name]) => name === SHEETS[sheet]);
  if (found === undefined) throw new Error(`no sheet ${sheet}`);
  return new WorkScribe(found[1]);
}
