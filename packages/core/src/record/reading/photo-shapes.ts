/** The shape of what is recorded about a photo, version 1. */
import { PHOTO_TYPES, type PhotoData } from '../photo-data.js';
import { count, filledText, type Guard, object, oneOf, text } from './guards.js';
import { hash, WORDS } from './pieces.js';

/** As many signs as the id of an act, or a place in words, has. */
const ABOUT = 200;

export const PHOTO_SHAPES: { readonly [K in keyof PhotoData]: Guard<PhotoData[K]> } = {
  'photo-taken': object<PhotoData['photo-taken']>({
    photo: hash,
    type: oneOf(...PHOTO_TYPES),
    bytes: count,
    width: count,
    height: count,
    about: filledText(ABOUT),
    words: text(WORDS),
  }),
};
