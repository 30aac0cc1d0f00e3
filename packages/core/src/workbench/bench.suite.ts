/** A bench to test on: an invented sheet and entries sealed one after the other, as a device writes them. */
import { readFileSync } from 'node:fs';
import type { Engine } from '../engine/index.js';
import { loadSheet } from '../engine/load/index.js';
import { type Command, type LogEntry, NO_PREVIOUS, sealEntry } from '../record/index.js';
import { type Bench, openBench, propose } from './index.js';

export const SHEETS = {
  v8: 'quernside-51-v8',
  six: 'tollbarrow-6w-diesel-six',
  four: 'pellgarth-t4-twin-cam',
  single: 'skelbeck-one-single',
} as const;

export function engineOf(sheet: string): Engine {
  const loaded = loadSheet(readFileSync(new URL(`../../../../sheets/${sheet}.yaml`, import.meta.url), 'utf8'));
  if (!loaded.ok) throw new Error(loaded.fault.map((fault) => fault.message).join('\n'));
  return loaded.value;
}

/** Writes commands one by one through the rules; a refusal fails the test with its line. */
export class Scribe {
  #entries: LogEntry[] = [];
  readonly engine: Engine;

  constructor(engine: Engine) {
    this.engine = engine;
  }
  #opened: Bench | undefined;
  get bench(): Bench {
    this.#opened = openBench(this.engine, [...this.#entries], this.#opened);
    return this.#opened;
  }
  write(command: Command): void {
    const proposal = propose(this.bench, command);
    if (!proposal.ok) throw new Error(proposal.fault);
    for (const entry of proposal.value) this.append(entry);
  }
  /** One second after the other, from ten in the morning. */
  protected at(counter: number): string {
    const two = (part: number) => String(part % 60).padStart(2, '0');
    return `2026-01-01T10:${two(Math.floor(counter / 60))}:${two(counter)}+01:00`;
  }
  /** The device in the hand; each has a chain of its own. */
  device = 'phone';
  get entries(): readonly LogEntry[] {
    return this.#entries;
  }
  append({ kind, data }: Command): string {
    const sequence = this.#entries.length + 1;
    const own = this.#entries.filter(({ device }) => device === this.device);
    const id = `01900000-0000-7000-8000-${String(sequence).padStart(12, '0')}`;
    const at = this.at(sequence);
    const counter = own.length + 1;
    const draft = { id, job: 'job', device: this.device, counter, at, person: 'Ada', kind, version: 1, data };
    const sealed = sealEntry(draft, own.at(-1)?.hash ?? NO_PREVIOUS);
    this.#entries.push({ ...sealed, sequence, receivedAt: at });
    return id;
  }
}
