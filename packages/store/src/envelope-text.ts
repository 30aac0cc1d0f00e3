/** Entries are kept as the JSON text of the whole envelope, so that fields of a newer version survive untouched. */
import type { Envelope, StoredEnvelope } from '@gudgeon/core/record';

export function toText(entry: Envelope): string {
  return JSON.stringify(entry);
}

export function fromText(text: string, sequence: number, receivedAt: string): StoredEnvelope {
  return { ...(JSON.parse(text) as Envelope), sequence, receivedAt };
}
