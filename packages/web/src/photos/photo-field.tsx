import type { PhotoTaken } from '@gudgeon/core/record';
import { useEffect, useId, useRef, useState } from 'react';
import { type Photo, photos } from './keeping/index.js';
import { PhotoInput } from './photo-input.js';
import { takePhoto } from './take-photo.js';

interface PhotoFieldProps {
  readonly job: string;
  /** Place of the photo: words, or `act:…`, `place:…`, `hole:<joint>/<hole>`. */
  readonly about: string;
  /** What is to be seen on it, e.g. "Photo of both gasket faces". */
  readonly ask: string;
  /**
   * Called once the picture is safely on this device: what goes into the log. False where it was not recorded; the picture then stays
   * in the field.
   */
  readonly onKept: (photo: PhotoTaken) => boolean;
}

/** Takes a photo, shows it, asks for its words and keeps it: first on this device, from there on the server. */
export function PhotoField({ job, about, ask, onKept }: PhotoFieldProps) {
  const id = useId();
  const [photo, setPhoto] = useState<Photo>();
  const [words, setWords] = useState('');
  const [busy, setBusy] = useState('');
  const [trouble, setTrouble] = useState('');
  const first = useRef<HTMLInputElement>(null);
  const keepButton = useRef<HTMLButtonElement>(null);
  const preview = usePreview(photo);
  /** Hash of the picture that is being kept, or was: a second press is the same wish. */
  const inHand = useRef('');
  const take = async (file: File) => {
    setBusy('Reading the picture…');
    setTrouble('');
    const taken = await takePhoto(file);
    setBusy('');
    inHand.current = '';
    if (taken.ok) setPhoto(taken.value);
    else setTrouble(taken.fault);
  };
  const keep = async () => {
    if (photo === undefined || inHand.current === photo.photo) return;
    inHand.current = photo.photo;
    setBusy('Keeping the picture…');
    const kept = await photos.keep(job, photo);
    setBusy('');
    const { bytes, ...named } = photo;
    if (!kept.ok) setTrouble(kept.fault);
    if (!kept.ok || !onKept({ ...named, bytes: bytes.length, about, words: words.trim() })) {
      inHand.current = '';
      return;
    }
    setPhoto(undefined);
    setWords('');
    setTrouble('');
  };
  useFocusOn(photo === undefined ? first : keepButton, photo);
  return (
    <fieldset className="photo-field not-printed">
      <legend>{ask}</legend>
      {photo === undefined ? (
        <PhotoInput words="Take a photo" ref={first} taken={take} />
      ) : (
        <>
          {preview && (
            <img
              className="photo-preview"
              src={preview}
              width={photo.width}
              height={photo.height}
              alt="As just taken"
            />
          )}
          <div className="field">
            <label htmlFor={id}>What is to be seen on it</label>
            <input
              id={id}
              className="input"
              maxLength={500}
              autoComplete="off"
              value={words}
              onChange={(event) => setWords(event.target.value)}
              onKeyDown={(event) => event.key === 'Enter' && void keep()}
            />
          </div>
          <button type="button" ref={keepButton} className="act" data-bench-control="Keep the photo" onClick={keep}>
            Keep the photo
          </button>
          <div className="photo-again">
            <PhotoInput words="Take again" second taken={take} />
          </div>
        </>
      )}
      <span role="status">{busy}</span>
      <span className="field-fault" role="alert">
        {trouble}
      </span>
    </fieldset>
  );
}

/** An address for the picture as long as it is shown. */
function usePreview(photo: Photo | undefined): string | undefined {
  const [address, setAddress] = useState<string>();
  useEffect(() => {
    if (photo === undefined) return setAddress(undefined);
    const made = URL.createObjectURL(new Blob([photo.bytes], { type: photo.type }));
    setAddress(made);
    return () => URL.revokeObjectURL(made);
  }, [photo]);
  return address;
}

/** The next press is at hand: "Keep" once there is a picture, the camera once it was kept; nothing is taken from who has done nothing yet. */
function useFocusOn(target: { readonly current: HTMLElement | null }, photo: Photo | undefined): void {
  const before = useRef(photo);
  useEffect(() => {
    if (before.current !== photo) target.current?.focus();
    before.current = photo;
  }, [target, photo]);
}
