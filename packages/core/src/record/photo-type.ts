/** What a file of pictures really holds; its name and the type that its sender gives are only claims. */
import type { PhotoType } from './photo-data.js';

const ascii = (text: string): readonly number[] => [...text].map((sign) => sign.charCodeAt(0));
interface Mark {
  readonly at: number;
  readonly bytes: readonly number[];
}
const MARKS: readonly { readonly type: PhotoType; readonly marks: readonly Mark[] }[] = [
  { type: 'image/jpeg', marks: [{ at: 0, bytes: [0xff, 0xd8, 0xff] }] },
  { type: 'image/png', marks: [{ at: 0, bytes: [0x89, ...ascii('PNG\r\n'), 0x1a, 0x0a] }] },
  {
    type: 'image/webp',
    marks: [
      { at: 0, bytes: ascii('RIFF') },
      { at: 8, bytes: ascii('WEBP') },
    ],
  },
];

/**
 * The type of a picture by its first bytes; undefined for anything that is not kept as a photo (a drawing with script in it,
 * a page, another file). Source: PNG (ISO/IEC 15948) 5.2; RFC 9649, section 2.4, for WebP; ITU-T T.81, annex B, for JPEG (all recalled).
 */
export function photoTypeOf(bytes: Uint8Array): PhotoType | undefined {
  const holds = ({ at, bytes: mark }: Mark) => mark.every((byte, index) => bytes[at + index] === byte);
  return MARKS.find(({ marks }) => marks.every(holds))?.type;
}
