/** Sealing an entry: its own hash, and the link to the entry before it on the same device. */
import { sha256 } from '@noble/hashes/sha2';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils';
import { canonicalText } from './canonical.js';
import type { Envelope } from './entry.js';

/** What stands in `previous` of a device's first entry in a job. */
export const NO_PREVIOUS = '0'.repeat(64);

export type EntryDraft = Omit<Envelope, 'previous' | 'hash'>;

/** SHA-256 of bytes, as 64 hexadecimal digits. Source: FIPS 180-4. */
export const hashOfBytes = (bytes: Uint8Array): string => bytesToHex(sha256(bytes));

/** SHA-256 of a text's UTF-8 bytes. */
export const hashOfText = (text: string): string => hashOfBytes(utf8ToBytes(text));

/** The hash of an entry: SHA-256 over the canonical text of every field of the envelope but `hash` itself. */
export function entryHash(entry: Omit<Envelope, 'hash'>): string {
  const { id, job, device, counter, at, person, instrument, kind, version, raw, data, previous } = entry;
  return hashOfText(
    canonicalText({ id, job, device, counter, at, person, instrument, kind, version, raw, data, previous }),
  );
}

/** Links a draft to the device's entry before it (`NO_PREVIOUS` for the first) and gives it its hash. */
export function sealEntry(draft: EntryDraft, previousHash: string): Envelope {
  const linked = { ...draft, previous: previousHash };
  return { ...linked, hash: entryHash(linked) };
}
