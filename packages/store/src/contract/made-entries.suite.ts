/** Entries for the store's suite. The store never works a hash out, so any distinct text will do as one here. */
import type { Envelope } from '@gudgeon/core/record';
import { START_OF_CHAIN } from '../index.js';

export type Draft = Partial<Envelope> & Pick<Envelope, 'job' | 'device'>;

/** Links drafts into one chain for each device of each job, in the order given. */
export function linked(drafts: readonly Draft[]): Envelope[] {
  const tips = new Map<string, { counter: number; hash: string }>();
  return drafts.map((draft) => {
    const key = JSON.stringify([draft.job, draft.device]);
    const tip = tips.get(key) ?? { counter: 0, hash: START_OF_CHAIN };
    const counter = tip.counter + 1;
    const name = `${draft.job}/${draft.device}/${counter}`;
    const next = { counter, hash: `hash of ${name}` };
    tips.set(key, next);
    return { ...blank, id: `id of ${name}`, ...draft, ...next, previous: tip.hash };
  });
}

const blank = {
  at: '2030-05-04T10:00:00+02:00',
  person: 'Invented Person',
  kind: 'note',
  version: 1,
  data: { about: 'v8', text: 'invented' },
};

export function chainOf(job: string, device: string, length: number): Envelope[] {
  return linked(Array.from({ length }, () => ({ job, device })));
}

/** A receive clock that moves on by a second at each look. */
export function receiveClock(day = '2030-05-04'): () => string {
  let seconds = 0;
  return () => {
    seconds += 1;
    const clock = new Date(Date.parse(`${day}T09:00:00Z`) + seconds * 1000);
    return clock.toISOString();
  };
}
