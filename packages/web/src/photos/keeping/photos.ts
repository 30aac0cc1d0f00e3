import { useMemo, useSyncExternalStore } from 'react';
import { sendPhoto } from '../../api/index.js';
import type { PhotoKey } from './photo.js';
import { type PhotoBox, photoBox } from './photo-box.js';
import { photoShelf } from './photo-shelf.js';

/** The one box of pictures in this page. */
export const photos: PhotoBox = photoBox({
  shelf: photoShelf(),
  send: (job, { photo, type, bytes }) => sendPhoto(job, photo, type, bytes),
  later: (milliseconds, run) => void window.setTimeout(run, milliseconds),
});

/** Starts the copying of pictures that earlier visits left on this device, and goes on when the network comes back. */
export function sendPhotosThatWait(): void {
  void photos.send();
  window.addEventListener('online', () => void photos.send());
}

export interface WaitingPhotos {
  readonly waiting: readonly PhotoKey[];
  readonly trouble?: string;
}
/** Pictures of a job that are on this device only. */
export function useWaitingPhotos(job: string): WaitingPhotos {
  const state = useSyncExternalStore(photos.subscribe, photos.get);
  return useMemo(() => {
    const waiting = state.waiting.filter((one) => one.job === job);
    return { waiting, ...(waiting.length > 0 && state.trouble !== undefined && { trouble: state.trouble }) };
  }, [state, job]);
}
