/** Rules for photos. That its bytes are kept already, the device that takes it sees to. */
import { refused } from '../../quantity/outcome.js';
import { canonicalText } from '../canonical.js';
import type { EntryData } from '../entry.js';
import { MOST_PHOTO_BYTES } from '../photo-data.js';
import type { RecordState } from '../state.js';
import { type Decision, nothingToAdd, record } from './lookup.js';

/** The same picture of the same place in the same words is one; with other words, or of another place, it is recorded again. */
export function decidePhoto(state: RecordState, data: EntryData['photo-taken']): Decision {
  if (data.bytes > MOST_PHOTO_BYTES) {
    return refused({ code: 'photo-too-large', bytes: data.bytes, most: MOST_PHOTO_BYTES });
  }
  const said = canonicalText(data);
  const there = state.entries.some(
    ({ reading, struck }) =>
      struck === undefined &&
      reading.understood &&
      reading.known.kind === 'photo-taken' &&
      canonicalText(reading.known.data) === said,
  );
  return there ? nothingToAdd : record({ kind: 'photo-taken', data });
}
