import { type Bench, photoPlace, photosAbout } from '@gudgeon/core/workbench';
import { PhotoView } from './photo-view.js';

interface PhotoStripProps {
  readonly job: string;
  readonly bench: Bench;
  readonly about: string;
}

/** All photos of one place, beside each other; nothing where there is none. */
export function PhotoStrip({ job, bench, about }: PhotoStripProps) {
  const photos = photosAbout(bench, about);
  const place = photoPlace(bench.engine, about);
  if (photos.length === 0) return null;
  return (
    <ul className="photo-strip plain" aria-label={`Photos of ${place}`}>
      {photos.map((photo) => (
        <li key={photo.entry}>
          <PhotoView job={job} photo={photo} place={place} />
          {photo.words.trim() !== '' && <p className="photo-words">{photo.words}</p>}
        </li>
      ))}
    </ul>
  );
}
