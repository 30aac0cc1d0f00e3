import { boundsOf } from './extent.js';
import type { Figure, Shape, Touch } from './figure.js';
import { distance } from './geometry.js';

export interface Parts {
  readonly title: string;
  /** Sentences; empty ones are left out. */
  readonly description: readonly string[];
  readonly shapes: readonly Shape[];
  readonly touches?: readonly Touch[];
  readonly margin: number;
  /** Shapes that the frame must also hold, though they are not drawn: so a moving part does not move the page. */
  readonly frame?: readonly Shape[];
  /** Widens a narrow figure to both sides. */
  readonly leastWidth?: number;
}
/** Puts a figure together: frame, words, and touches that keep out of each other's reach. */
export function compose(parts: Parts): Figure {
  const touches = spaced(parts.touches ?? []);
  return {
    title: parts.title,
    description: parts.description.filter((sentence) => sentence !== '').join(' '),
    bounds: widened(boundsOf([...parts.shapes, ...(parts.frame ?? [])], touches, parts.margin), parts.leastWidth ?? 0),
    shapes: parts.shapes,
    touches,
  };
}
function widened(bounds: Figure['bounds'], least: number): Figure['bounds'] {
  const more = Math.max(0, least - bounds.width);
  return { ...bounds, left: bounds.left - more / 2, width: bounds.width + more };
}
/** Where two places lie nearer than their wished reach, each takes half of the way between them. */
function spaced(touches: readonly Touch[]): readonly Touch[] {
  return touches.map((touch) => {
    const nearest = touches.reduce(
      (least, other) => (other === touch ? least : Math.min(least, distance(touch.centre, other.centre))),
      Number.POSITIVE_INFINITY,
    );
    return nearest > 0 && nearest / 2 < touch.reach ? { ...touch, reach: nearest / 2 } : touch;
  });
}
/** "1, 3 and 5" */
export function listed(items: readonly (string | number)[]): string {
  const words = items.map(String);
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words[words.length - 1]}`;
}
