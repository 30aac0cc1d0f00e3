import type { PhotoTaken } from '@gudgeon/core/record';

/** A picture as this device holds it; `photo` is the SHA-256 of its bytes. */
export interface Photo extends Pick<PhotoTaken, 'photo' | 'type' | 'width' | 'height'> {
  readonly bytes: Uint8Array<ArrayBuffer>;
}
export interface PhotoKey {
  readonly job: string;
  readonly photo: string;
}
export const isPhoto = (one: PhotoKey, other: PhotoKey): boolean => one.job === other.job && one.photo === other.photo;
