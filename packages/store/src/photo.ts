/** The rules by which a picture may be kept, written once for every store, and why one was refused. */
import { hashOfBytes, MOST_PHOTO_BYTES, PHOTO_TYPES, type PhotoType } from '@gudgeon/core/record';

export interface HeldPhoto {
  readonly type: PhotoType;
  readonly bytes: Uint8Array;
}
export type PhotoFault =
  | { readonly code: 'unknown-job'; readonly job: string }
  | { readonly code: 'not-a-photo'; readonly given: string }
  | { readonly code: 'empty' }
  | { readonly code: 'too-large'; readonly bytes: number }
  /** The bytes are not those that the hash names. */
  | { readonly code: 'wrong-hash'; readonly given: string; readonly actual: string };
export type PhotoResult =
  /** `duplicate`: the picture was kept before. */
  | { readonly ok: true; readonly value: { readonly duplicate: boolean } }
  | { readonly ok: false; readonly fault: PhotoFault };

/** What is wrong with a picture before it is kept; nothing when it may be. */
export function photoFault(hash: string, type: string, bytes: Uint8Array): PhotoFault | undefined {
  if (!(PHOTO_TYPES as readonly string[]).includes(type)) return { code: 'not-a-photo', given: type };
  if (bytes.length === 0) return { code: 'empty' };
  if (bytes.length > MOST_PHOTO_BYTES) return { code: 'too-large', bytes: bytes.length };
  const actual = hashOfBytes(bytes);
  return actual === hash ? undefined : { code: 'wrong-hash', given: hash, actual };
}

const short = (text: string) => (text.length > 12 ? `${text.slice(0, 12)}…` : text);

/** One clear line for a person: what is wrong, what would be right. */
export function describePhotoFault(fault: PhotoFault): string {
  switch (fault.code) {
    case 'unknown-job':
      return `There is no job ${fault.job} in the log: send its entries first, then its photos.`;
    case 'not-a-photo':
      return `"${short(fault.given)}" is no kind of photo that is kept; ${PHOTO_TYPES.join(', ')} are.`;
    case 'empty':
      return 'The photo has no bytes.';
    case 'too-large':
      return `The photo has ${fault.bytes} bytes; at most ${MOST_PHOTO_BYTES} (8 MB) are kept.`;
    case 'wrong-hash':
      return `The photo does not give its hash (${short(fault.given)} was named, its bytes give ${short(fault.actual)}): it was changed on the way; send it again.`;
  }
}
