/** What is recorded about a photo: which picture, of what place, in whose words. The picture itself is kept beside the log, by its hash. */

export const PHOTO_TYPES = ['image/jpeg', 'image/png', 'image/webp'] as const;
export type PhotoType = (typeof PHOTO_TYPES)[number];

/** Largest picture that is kept [bytes]. */
export const MOST_PHOTO_BYTES = 8 * 1024 * 1024;

/** Kind -> data. No plan waits for a photo by itself, so it is not among the facts of the tightening. */
export interface PhotoData {
  'photo-taken': {
    /** SHA-256 of the picture's bytes: its name, and the proof that it was not exchanged. */
    readonly photo: string;
    readonly type: PhotoType;
    readonly bytes: number;
    /** As shown upright [px]. */
    readonly width: number;
    readonly height: number;
    /** What it shows: words of a person, or `act:…`, `place:…`, `hole:<joint>/<hole>`. */
    readonly about: string;
    readonly words: string;
  };
}
export type PhotoTaken = PhotoData['photo-taken'];
