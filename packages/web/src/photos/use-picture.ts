import { useEffect, useState } from 'react';
import { type NamedPhoto, type NotHere, readPicture } from './read-picture.js';

export type PictureState =
  | { readonly state: 'looking' | NotHere }
  | { readonly state: 'here'; readonly address: string };

/** The picture of another device can come at any moment. */
const LOOK_AGAIN = 15_000;

/** The address of a photo's picture while a screen shows it; where it is not here yet, it is looked for again by itself. */
export function usePicture(job: string, { photo, type }: NamedPhoto): PictureState {
  const [shown, show] = useState<PictureState>({ state: 'looking' });
  const [looks, setLooks] = useState(0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: `looks` is what asks again
  useEffect(() => {
    let wanted = true;
    let timer: number | undefined;
    let address: string | undefined;
    void readPicture(job, { photo, type }).then((read) => {
      if (!wanted) return;
      if (read.ok) {
        address = URL.createObjectURL(read.value);
        show({ state: 'here', address });
        return;
      }
      show({ state: read.fault });
      if (read.fault !== 'changed') timer = window.setTimeout(() => setLooks((before) => before + 1), LOOK_AGAIN);
    });
    return () => {
      wanted = false;
      window.clearTimeout(timer);
      if (address !== undefined) URL.revokeObjectURL(address);
    };
  }, [job, photo, type, looks]);
  return shown;
}
