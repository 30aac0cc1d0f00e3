export { isPhoto, type Photo, type PhotoKey } from './photo.js';
export { photos, sendPhotosThatWait, useWaitingPhotos, type WaitingPhotos } from './photos.js';
