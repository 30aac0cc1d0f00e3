export { PhotoField } from './photo-field.js';
export { PhotoStrip } from './photo-strip.js';
export { PhotoView } from './photo-view.js';
export { type NotHere, readPicture } from './read-picture.js';
