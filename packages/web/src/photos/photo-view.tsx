import type { PhotoTaken } from '@gudgeon/core/record';
import { isPhoto, useWaitingPhotos } from './keeping/index.js';
import { type PictureState, usePicture } from './use-picture.js';

interface PhotoViewProps {
  readonly job: string;
  readonly photo: PhotoTaken;
  /** Its place in words, which stands for the words that it lacks. */
  readonly place?: string;
}

const NOT_HERE: Readonly<Record<Exclude<PictureState['state'], 'here'>, string>> = {
  looking: 'Looking for the picture…',
  elsewhere: 'The picture is not here yet: it is on the device that took it.',
  'no-answer': 'The picture is not on this device, and the server does not answer.',
  changed: 'The picture on the server is not the one that was taken: its bytes have changed.',
};

/** The picture of a photo, from this device or the server, with whether it has its second copy. */
export function PhotoView({ job, photo, place }: PhotoViewProps) {
  const picture = usePicture(job, photo);
  const { waiting } = useWaitingPhotos(job);
  const only = waiting.some((one) => isPhoto(one, { job, photo: photo.photo }));
  const words = photo.words.trim() || `Photo of ${place ?? photo.about}`;
  if (picture.state !== 'here')
    return (
      <p className="photo-away" data-photo={picture.state}>
        {NOT_HERE[picture.state]}
      </p>
    );
  return (
    <div className="photo-view" data-photo={only ? 'waiting' : 'copied'}>
      <a href={picture.address} target="_blank" rel="noreferrer" title="Open it large">
        <img src={picture.address} alt={words} width={photo.width} height={photo.height} decoding="async" />
      </a>
      <span className="photo-copies not-printed">{only ? 'On this device only' : 'Copied'}</span>
    </div>
  );
}
