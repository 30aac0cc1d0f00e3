/** Reads what a client wants to append: the shape of each entry, its job, and that it gives its own hash. */
import { type Envelope, entryHash, readEnvelope } from '@gudgeon/core/record';
import { type Refusal, refusal } from '../app/refusal.js';

/** A device that was offline for a whole engine sends its entries in several batches. */
const MOST_ENTRIES = 500;

/** Throws a `Refusal` that names the first entry that cannot be taken. */
export function readBatch(job: string, body: unknown): readonly Envelope[] {
  const entries = typeof body === 'object' && body !== null && 'entries' in body ? body.entries : undefined;
  if (!Array.isArray(entries)) throw refusal(400, 'no-entries', 'Send { "entries": [ … ] }.');
  if (entries.length > MOST_ENTRIES) {
    throw refusal(413, 'too-many', `${entries.length} entries came at once; send at most ${MOST_ENTRIES}.`);
  }
  for (const [index, entry] of entries.entries()) {
    const problem = problemOf(job, entry, index);
    if (problem) throw problem;
  }
  return entries as readonly Envelope[];
}

/** Only the envelope is read: an entry of a kind that this program does not know is kept all the same. */
function problemOf(job: string, entry: unknown, index: number): Refusal | undefined {
  const where = `Entry ${index + 1} of the batch`;
  const read = readEnvelope(entry);
  if (!read.ok) {
    const { at, expected, given } = read.fault;
    const field = at === '' ? where : `${where}, ${at}`;
    return refusal(400, 'bad-entry', `${field}: ${expected} is needed, ${given} was given.`);
  }
  const envelope = read.value;
  if (envelope.job !== job) {
    return refusal(400, 'other-job', `${where} belongs to another job than ${job}, to which it was sent.`);
  }
  if (hashOf(envelope) === envelope.hash) return undefined;
  return refusal(400, 'wrong-hash', `${where} does not give its own hash: it was changed after it was sealed.`);
}

/** Data that cannot be written canonically has no hash. */
function hashOf(envelope: Envelope): string | undefined {
  try {
    return entryHash(envelope);
  } catch {
    return undefined;
  }
}
