import { describe, expect, it } from 'vitest';
import { photoTypeOf } from './photo-type.js';

const bytes = (text: string) => Uint8Array.from(text, (sign) => sign.charCodeAt(0));

describe('the type of a picture', () => {
  // First bytes as the formats' own descriptions print them (PNG 5.2, RFC 9649 2.4, T.81 annex B; recalled).
  it('is told by its first bytes', () => {
    expect(photoTypeOf(bytes('\x89PNG\r\n\x1a\n\0\0\0\rIHDR'))).toBe('image/png');
    expect(photoTypeOf(bytes('\xff\xd8\xff\xe0\0\x10JFIF'))).toBe('image/jpeg');
    expect(photoTypeOf(bytes('RIFF\x1a\0\0\0WEBPVP8 '))).toBe('image/webp');
  });

  it('is none for drawings with script, pages, sounds, other pictures and stumps', () => {
    for (const text of [
      '<svg xmlns="http://www.w3.org/2000/svg"/>',
      '<!doctype html>',
      'GIF89a',
      'RIFF\x1a\0\0\0WAVEfmt ',
      'RIFF\x1a\0',
      '\x89PNG',
      '\xff\xd8',
      ' \xff\xd8\xff',
      '',
    ])
      expect(photoTypeOf(bytes(text)), text).toBeUndefined();
  });
});
