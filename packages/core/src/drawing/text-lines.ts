import { textWidth } from './extent.js';
import type { Shape } from './figure.js';
import { at } from './geometry.js';
import { label } from './shapes.js';

/** Breaks a sentence to the width of the drawing, as labels one below the other. */
export function textLines(text: string, left: number, top: number, width: number, size: number): readonly Shape[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines[lines.length - 1];
    if (last !== undefined && textWidth(`${last} ${word}`, size) <= width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines.map((line, i) => label(at(left, top + size * 1.25 * (i + 0.5)), line, size, { anchor: 'start' }));
}
