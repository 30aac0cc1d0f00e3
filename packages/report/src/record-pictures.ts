/** Which pictures of a record go into one file, and what stands beside each. */
import type { RecordRow, RecordView } from '@gudgeon/core/workbench';
import type { Picture } from './document.js';

/** A file that a mail program and a browser on an old computer still take [bytes of pictures, before they are written as text]. */
export const MOST_IN_ONE_FILE = 24 * 1024 * 1024;

interface PhotoRow extends RecordRow {
  readonly photo: NonNullable<RecordRow['photo']>;
}
const photoRows = ({ sections }: RecordView): readonly PhotoRow[] =>
  sections.flatMap(({ rows }) => rows).filter((row): row is PhotoRow => row.photo !== undefined);

/** Photos that one file has room for, as they stand in the record; the same picture counts once. */
export function picturesForFile(view: RecordView, most = MOST_IN_ONE_FILE): readonly PhotoRow['photo'][] {
  const taken = new Map<string, PhotoRow['photo']>();
  let room = most;
  for (const { photo } of photoRows(view)) {
    if (taken.has(photo.photo) || photo.bytes > room) continue;
    room -= photo.bytes;
    taken.set(photo.photo, photo);
  }
  return [...taken.values()];
}

/** The photos of a record in its order: with their picture where `sources` has it, else with why it is left out. */
export function recordPictures(view: RecordView, sources: ReadonlyMap<string, string>): readonly Picture[] {
  const fits = new Set(picturesForFile(view).map(({ photo }) => photo));
  return photoRows(view).map((row) => {
    const { photo } = row.photo;
    const source = sources.get(photo);
    const struck = row.struck === undefined ? '' : ` (struck out: ${row.struck})`;
    const why = fits.has(photo)
      ? 'it is neither on the device that wrote this file nor was it to be had from the server'
      : `one file takes ${MOST_IN_ONE_FILE / 1024 ** 2} MB of pictures`;
    return {
      title: row.what,
      words: `${row.value}${struck}`,
      who: `${row.by}, ${row.at}, SHA-256 ${photo}`,
      ...(source === undefined ? { why } : { source }),
    };
  });
}
