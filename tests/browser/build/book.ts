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

  /** Reads what is new. What was read last must still be there. Then `done` holds what was done since. */
  async read(): Promise<void> {
    const last = this.#entries.at(-1);
    const fresh = await this.#fetch((last?.sequence ?? 1) - 1);
    if (last !== undefined) expect(fresh[0]?.hash).toBe(last.hash);
    this.#entries = [...this.#entries, ...fresh.slice(last === undefined ? 0 : 1)];
    this.#bench = openBench(this.engine, this.#entries, this.#bench);
    const lately = workAt(this.#bench).standing.lately.map(({ data }) => data.act);
    this.#done.push(...lately.filter((act) => !this.#done.includes(act)));
  }

  /** All that was read so far is still there, each in its place. */
  async expectKept(): Promise<void> {
    const all = await this.#fetch(0);
    const known = this.#entries.map(({ hash }) => hash);
    expect(all.slice(0, known.length).map(({ hash }) => hash)).toEqual(known);
  }

  async #fetch(after: number): Promise<readonly StoredEnvelope[]> {
    const reply = await fetch(`${this.#address}/api/jobs/job/entries?after=${after}`);
    return ((await reply.json()) as { readonly entries: readonly StoredEnvelope[] }).entries;
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
