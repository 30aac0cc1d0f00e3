/** What the record says, as another machine reads it from the server: only read, never written. */
import type { Engine } from '@gudgeon/core/engine';
import type { StoredEnvelope } from '@gudgeon/core/record';
import { type Bench, openBench } from '@gudgeon/core/workbench';
import { expect } from 'vitest';
import { answeredBy } from '../../../packages/core/src/workbench/work/finished-elsewhere.js';
import { workAt } from '../../../packages/core/src/workbench/work/work-facts.js';

export class Book {
  readonly engine: Engine;
  readonly #address: string;
  #entries: readonly StoredEnvelope[] = [];
  #bench: Bench | undefined;
  readonly #done: string[] = [];

  constructor(address: string, engine: Engine) {
    this.#address = address;
    this.engine = engine;
  }

  /** Reads it anew. What was there before must still be there, in the same order. Returns the acts that were done since. */
  async read(): Promise<readonly string[]> {
    const reply = await fetch(`${this.#address}/api/jobs/job/entries`);
    const { entries } = (await reply.json()) as { readonly entries: readonly StoredEnvelope[] };
    expect(entries.slice(0, this.#entries.length).map(({ hash }) => hash)).toEqual(
      this.#entries.map(({ hash }) => hash),
    );
    this.#entries = entries;
    this.#bench = openBench(this.engine, entries, this.#bench);
    const fresh = workAt(this.#bench)
      .standing.lately.map(({ data }) => data.act)
      .filter((act) => !this.#done.includes(act));
    this.#done.push(...fresh);
    return fresh;
  }

  get bench(): Bench {
    if (this.#bench === undefined) throw new Error('The book was not opened yet.');
    return this.#bench;
  }
  get entries(): readonly StoredEnvelope[] {
    return this.#entries;
  }
  /** Acts in the order in which they were done. */
  get done(): readonly string[] {
    return this.#done;
  }
  get standing() {
    return workAt(this.bench).standing;
  }
  act(id: string) {
    const found = workAt(this.bench).plan.byId.get(id);
    if (found === undefined) throw new Error(`The plan has no act "${id}".`);
    return found;
  }
  /** Which part of the record finishes it; undefined where it is answered at the bench itself. */
  answeredBy(id: string) {
    return answeredBy(this.bench, this.act(id));
  }
  data<T>(kind: string): readonly T[] {
    return this.#entries.filter((entry) => entry.kind === kind).map(({ data }) => data as T);
  }
}
