import { type Bench, photosAbout, type RegistersView } from '@gudgeon/core/workbench';
import { PhotoStrip } from '../../photos/index.js';

interface PhotosByPlaceProps {
  readonly job: string;
  readonly bench: Bench;
  readonly photos: RegistersView['photos'];
}

/** Every photo under what it is tied to. */
export function PhotosByPlace({ job, bench, photos }: PhotosByPlaceProps) {
  const places = [...new Map(photos.map(({ about, aboutWords }) => [about, aboutWords]))];
  return (
    <section className="record-section" aria-labelledby="photos">
      <h2 id="photos">Photos by place</h2>
      {places.length === 0 && <p>None yet.</p>}
      {places.map(([about, words]) => (
        <div key={about} className="stack">
          <h3>
            {words} ({photosAbout(bench, about).length})
          </h3>
          <PhotoStrip job={job} bench={bench} about={about} />
        </div>
      ))}
    </section>
  );
}
