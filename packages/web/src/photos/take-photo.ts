import { done, type Outcome, refused } from '@gudgeon/core/quantity';
import { hashOfBytes, MOST_PHOTO_BYTES, photoTypeOf } from '@gudgeon/core/record';
import type { Photo } from './keeping/index.js';
import { scaled } from './scaled.js';

const QUALITY = 0.8;

/**
 * A picture as it is kept, from whatever the camera gave: upright, its long side at most 1600 px, as JPEG. Drawing it anew leaves behind
 * what cameras write into their files, such as the place on the map.
 */
export async function takePhoto(file: Blob): Promise<Outcome<Photo, string>> {
  const address = URL.createObjectURL(file);
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    return await drawn(image);
  } catch {
    return refused(
      'This file holds no picture that this browser can read. Take a photo, or choose a JPEG or PNG file.',
    );
  } finally {
    URL.revokeObjectURL(address);
  }
}

async function drawn(image: HTMLImageElement): Promise<Outcome<Photo, string>> {
  // A browser counts and draws an image the right way up, as the camera says that it was held.
  const { width, height } = scaled({ width: image.naturalWidth, height: image.naturalHeight });
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  const pen = canvas.getContext('2d');
  const blob = pen && (await jpegOf(canvas, pen, image));
  if (!blob)
    return refused('This device has too little memory for the picture. Close other programs, then take it again.');
  const bytes = new Uint8Array(await blob.arrayBuffer());
  const type = photoTypeOf(bytes);
  if (type === undefined || bytes.length > MOST_PHOTO_BYTES)
    return refused('This browser could not write the picture as JPEG. Use another browser for photos.');
  return done({ photo: hashOfBytes(bytes), type, bytes, width, height });
}

function jpegOf(
  canvas: HTMLCanvasElement,
  pen: CanvasRenderingContext2D,
  image: HTMLImageElement,
): Promise<Blob | null> {
  const { width, height } = canvas;
  // What is clear in the picture would come out black.
  pen.fillStyle = '#fff';
  pen.fillRect(0, 0, width, height);
  pen.imageSmoothingQuality = 'high';
  pen.drawImage(image, 0, 0, width, height);
  return new Promise((give) => canvas.toBlob(give, 'image/jpeg', QUALITY));
}
