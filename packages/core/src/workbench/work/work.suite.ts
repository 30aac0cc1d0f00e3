/** A person at the bench for the tests of the work's views: wishes in, entries out, one after the other. */
import type { Engine } from '../../engine/index.js';
import { Scribe } from '../bench.suite.js';
import type { Proposal } from '../propose.js';
import type { WorkWish } from '../work-views.js';
import { proposeWork } from './propose-work.js';
import { workAt } from './work-facts.js';

export class Builder extends Scribe {
  #minutes = 0;
  constructor(engine: Engine) {
    super(engine);
  }
  /** After so many minutes more. */
  wait(minutes: number): void {
    this.#minutes += minutes;
  }
  protected override at(): string {
    return this.now();
  }
  now(): string {
    return new Date(Date.UTC(2026, 0, 1, 9, this.#minutes)).toISOString();
  }
  /** The line of a refusal; nothing when it was written. */
  refusal(wish: WorkWish, by = 'Ada'): string | undefined {
    const proposal = proposeWork(this.bench, wish, { at: this.now(), by });
    return proposal.ok ? undefined : proposal.fault;
  }
  wish(wish: WorkWish, by = 'Ada'): void {
    this.take(proposeWork(this.bench, wish, { at: this.now(), by }));
  }
  /** Writes what was proposed; a refusal fails the test with its line. */
  take(proposal: Proposal): void {
    if (!proposal.ok) throw new Error(proposal.fault);
    for (const entry of proposal.value) this.append(entry);
  }
  /** Begins the book at an operation. */
  begin(operation: string): void {
    this.wish({ kind: 'begin-at', operation, why: 'what comes before was done before this book' });
  }
  felt(act: string, words = 'as it should be', result: 'good' | 'bad' = 'good'): void {
    this.wish({ kind: 'done', act, answer: { kind: 'felt-or-seen', words, result }, method: 'by hand' });
  }
  state(act: string): string | undefined {
    return workAt(this.bench).standing.stands.get(act)?.state;
  }
}
