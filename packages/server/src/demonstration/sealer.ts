/** Turns what was said into sealed entries, one after the other, with the demonstration's own clock. */
import { type Envelope, NO_PREVIOUS, sealEntry } from '@gudgeon/core/record';
import { localTime, seeded, uuidV7 } from './seeded.js';

export const DEMONSTRATION_JOB = 'invented-demonstration';
const SEED = 5341;
/** A Saturday morning in an invented shop, at UTC+1. */
const BEGIN = Date.UTC(2026, 2, 14, 7, 40);
const OFFSET_HOURS = 1;
const PERSON = 'Invented Person';
const WRENCH = 'torque wrench TW-1 (invented)';
/** Seconds from one entry to the next, at least and at most. */
const PACE = { least: 8, more: 20 };

export interface Said {
  readonly kind: string;
  readonly data: unknown;
  /** Strikes out the entry before it. */
  readonly strikesLast?: boolean;
  /** A reading of a part that is worn more than its sisters. */
  readonly worn?: boolean;
}

export class Sealer {
  readonly chance = seeded(SEED);
  readonly #sealed: Envelope[] = [];
  #clock = BEGIN;

  get entries(): readonly Envelope[] {
    return this.#sealed;
  }
  say(facts: readonly Said[]): void {
    for (const fact of facts) this.#seal(fact);
  }
  /** Comes back on a later day, at the same time in the morning. */
  sleep(days: number): void {
    const passed = Math.ceil((this.#clock - BEGIN) / 86_400_000);
    this.#clock = BEGIN + (passed + days - 1) * 86_400_000;
  }
  #seal({ kind, data, strikesLast = false }: Said): void {
    const last = this.#sealed.at(-1);
    this.#clock += Math.round((PACE.least + PACE.more * this.chance()) * 1000);
    const draft = {
      id: uuidV7(this.#clock, this.chance),
      job: DEMONSTRATION_JOB,
      device: 'invented-bench',
      counter: this.#sealed.length + 1,
      at: localTime(this.#clock, OFFSET_HOURS),
      person: PERSON,
      ...(kind === 'act-done' && { instrument: WRENCH }),
      kind,
      version: 1,
      data: strikesLast && last ? { ...(data as object), entry: last.id } : data,
    };
    this.#sealed.push(sealEntry(draft, last?.hash ?? NO_PREVIOUS));
  }
}
