import { describe, expect, it } from 'vitest';
import { neighbour, touchAt } from './neighbour.js';

const place = (part: string, x: number, y: number) => ({ part, name: part, centre: { x, y }, reach: 4 });
const holes = [place('a', 0, 0), place('b', 20, 0), place('c', 40, 1), place('d', 0, 30)];

describe('going from hole to hole by arrow keys', () => {
  it('takes the nearest ahead and nothing behind', () => {
    expect(neighbour(holes, holes[0]!, 'ArrowRight')?.part).toBe('b');
    expect(neighbour(holes, holes[1]!, 'ArrowRight')?.part).toBe('c');
    expect(neighbour(holes, holes[0]!, 'ArrowDown')?.part).toBe('d');
    expect(neighbour(holes, holes[0]!, 'ArrowLeft')).toBeUndefined();
  });
});

describe('a thumb on the drawing', () => {
  it('means the nearest hole within its own width', () => {
    expect(touchAt(holes, { x: 8, y: 1 }, 9)?.part).toBe('a');
    expect(touchAt(holes, { x: 12, y: 0 }, 15)?.part).toBe('b');
  });

  it('means nothing far from any hole', () => {
    expect(touchAt(holes, { x: 100, y: 100 }, 9)).toBeUndefined();
  });
});
