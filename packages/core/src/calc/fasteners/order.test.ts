import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { centreOutwardOrder, crossPattern, type PlacedHole } from './order.js';

const grid = (columns: number, rows: number, pitchX: number, pitchY: number): PlacedHole[] =>
  Array.from({ length: columns * rows }, (_, index) => ({
    id: `${index + 1}`,
    x: (index % columns) * pitchX,
    y: Math.floor(index / columns) * pitchY,
  }));
const centreOf = (holes: readonly PlacedHole[]) => ({
  x: holes.reduce((sum, hole) => sum + hole.x, 0) / holes.length,
  y: holes.reduce((sum, hole) => sum + hole.y, 0) / holes.length,
});
const distances = (holes: readonly PlacedHole[]): number[] => {
  const centre = centreOf(holes);
  return centreOutwardOrder(holes).map((id) => {
    const hole = holes.find((one) => one.id === id)!;
    return Math.hypot(hole.x - centre.x, hole.y - centre.y);
  });
};
const anyHoles = fc
  .uniqueArray(fc.tuple(fc.integer({ min: 0, max: 600 }), fc.integer({ min: -120, max: 120 })), {
    minLength: 1,
    maxLength: 24,
    selector: ([x, y]) => `${x},${y}`,
  })
  .map((places) => places.map(([x, y], index): PlacedHole => ({ id: `${index + 1}`, x, y })));

describe('cross pattern for a ring of fasteners', () => {
  // Legacy cross-pattern table of ASME PCC-1, recalled and not re-read.
  it.each([
    [4, '1 3 2 4'],
    [8, '1 5 3 7 2 6 4 8'],
    [12, '1 7 4 10 2 8 5 11 3 9 6 12'],
  ])('visits %i fasteners in the order of the flange table', (n, printed) => {
    expect(crossPattern(n).join(' ')).toBe(printed);
  });

  it('visits every fastener of a ring once, whatever their number', () => {
    for (let n = 0; n <= 48; n += 1) {
      expect(crossPattern(n).toSorted((a, b) => a - b)).toEqual(Array.from({ length: n }, (_, index) => index + 1));
    }
  });

  // Common practice, no source.
  it('never goes from a fastener to its neighbour in a ring of five or more', () => {
    for (let n = 5; n <= 48; n += 1) {
      const order = crossPattern(n);
      for (const [index, place] of order.slice(1).entries()) {
        const step = Math.abs(place - order[index]!);
        expect(Math.min(step, n - step), `${n}: ${order}`).toBeGreaterThan(1);
      }
    }
  });
});

describe('order from the centre outward', () => {
  // Two rows of five, 100 by 110 mm: common practice, no source; distances are hand arithmetic, hypot(k·100, 55).
  it('takes the central pair, then the next four, then the ends of a head of two by five', () => {
    const far = distances(grid(5, 2, 100, 110));
    expect(far[0]).toBeCloseTo(55.0, 1);
    expect(far[1]).toBeCloseTo(55.0, 1);
    for (const one of far.slice(2, 6)) expect(one).toBeCloseTo(114.1, 1);
    for (const one of far.slice(6)) expect(one).toBeCloseTo(207.4, 1);
  });

  it('crosses from corner to opposite corner in the inner four', () => {
    const order = centreOutwardOrder(grid(5, 2, 100, 110));
    const inner = order.slice(2, 6).map(Number);
    // 2 and 9, 4 and 7 are diagonal in a grid numbered 1-5 and 6-10.
    expect(inner[0]! + inner[1]!).toBe(11);
    expect(inner[2]! + inner[3]!).toBe(11);
  });

  // TB 9-2320-279-13&P-2, torque limits work package (read): a straight row goes from the middle to the ends.
  it('takes a straight row from the middle to the ends, alternating sides', () => {
    const row = Array.from({ length: 9 }, (_, index) => ({ id: `${index + 1}`, x: index * 50, y: 0 }));
    const order = centreOutwardOrder(row).map(Number);
    expect(order[0]).toBe(5);
    for (let ring = 1; ring <= 4; ring += 1) {
      expect(order.slice(2 * ring - 1, 2 * ring + 1).toSorted((a, b) => a - b)).toEqual([5 - ring, 5 + ring]);
    }
  });

  it('goes round a ring of eight in a cross, never to a neighbour', () => {
    const ring = Array.from({ length: 8 }, (_, index) => ({
      id: `${index + 1}`,
      x: 80 * Math.cos((index * Math.PI) / 4),
      y: 80 * Math.sin((index * Math.PI) / 4),
    }));
    const order = centreOutwardOrder(ring).map(Number);
    for (const [index, place] of order.slice(1).entries()) {
      const step = Math.abs(place - order[index]!);
      expect(Math.min(step, 8 - step)).toBeGreaterThan(1);
    }
  });

  it('visits every fastener once', () => {
    fc.assert(
      fc.property(anyHoles, (holes) => {
        expect(centreOutwardOrder(holes).toSorted()).toEqual(holes.map((hole) => hole.id).toSorted());
      }),
    );
  });

  it('never comes back inward by more than the width of a ring', () => {
    fc.assert(
      fc.property(anyHoles, (holes) => {
        const far = distances(holes);
        const width = 0.02 * Math.max(...far) + 1e-9;
        let reached = 0;
        for (const one of far) {
          expect(one).toBeGreaterThanOrEqual(reached - width);
          reached = Math.max(reached, one);
        }
      }),
    );
  });

  it('depends on the places of the fasteners, not on the order of the list', () => {
    fc.assert(
      fc.property(anyHoles, fc.infiniteStream(fc.nat()), (holes, noise) => {
        const shuffled = holes.map((hole) => ({ hole, key: noise.next().value })).toSorted((a, b) => a.key - b.key);
        expect(centreOutwardOrder(shuffled.map((one) => one.hole))).toEqual(centreOutwardOrder(holes));
      }),
    );
  });

  it('takes two fasteners that the sheet puts at one place by their names, whichever is listed first', () => {
    const twins = ['b', 'a', 'c'].map((id) => ({ id, x: 50, y: 0 }));
    const holes = [...twins, { id: 'd', x: -150, y: 0 }];
    const order = centreOutwardOrder(holes);
    expect(order).toEqual(centreOutwardOrder(holes.toReversed()));
    expect(order.toSorted()).toEqual(['a', 'b', 'c', 'd']);
    expect(order[0]).toBe('a');
  });

  it('answers the same in metres as in millimetres', () => {
    const holes = grid(5, 2, 100, 110);
    const metres = holes.map(({ id, x, y }) => ({ id, x: x / 1000, y: y / 1000 }));
    expect(centreOutwardOrder(metres)).toEqual(centreOutwardOrder(holes));
  });

  it('has nothing to order in an empty joint, and leaves a fastener without a place for the end', () => {
    expect(centreOutwardOrder([])).toEqual([]);
    const holes = [{ id: 'lost', x: Number.NaN, y: 0 }, ...grid(2, 1, 50, 0)];
    expect(centreOutwardOrder(holes).at(-1)).toBe('lost');
  });
});
