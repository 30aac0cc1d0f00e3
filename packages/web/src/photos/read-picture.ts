import { done, type Outcome, refused } from '@gudgeon/core/quantity';
import { hashOfBytes, type PhotoTaken } from '@gudgeon/core/record';
import { listPhotos, readPhoto } from '../api/index.js';
import { photos } from './keeping/index.js';

/** Why a picture cannot be shown now. `elsewhere`: the device that took it has not sent it yet. */
export type NotHere = 'elsewhere' | 'no-answer' | 'changed';
/** Of a photo in the log, what finding its picture takes. */
export type NamedPhoto = Pick<PhotoTaken, 'photo' | 'type'>;

/** A page of many photos asks the server once which of them it holds. */
const lists = new Map<string, ReturnType<typeof listPhotos>>();
const ONE_PAGE = 1000;
function listOf(job: string): ReturnType<typeof listPhotos> {
  const asked = lists.get(job) ?? listPhotos(job);
  if (!lists.has(job)) window.setTimeout(() => lists.delete(job), ONE_PAGE);
  lists.set(job, asked);
  return asked;
}

/** The picture of a photo: from this device, or from the server, and then only if it still gives its hash. */
export async function readPicture(job: string, { photo, type }: NamedPhoto): Promise<Outcome<Blob, NotHere>> {
  const here = await photos.one({ job, photo }).catch(() => undefined);
  if (here) return done(new Blob([here.bytes], { type: here.type }));
  const list = await listOf(job);
  if (!list.ok) return refused('no-answer');
  if (!list.value.photos.includes(photo)) return refused('elsewhere');
  const read = await readPhoto(job, photo);
  if (!read.ok) return refused('no-answer');
  if (hashOfBytes(new Uint8Array(read.value)) !== photo) return refused('changed');
  return done(new Blob([read.value], { type }));
}
