import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { at, distance, heading } from './geometry.js';
import { baseRadius, lobeOutline, rise } from './lobe.js';

const lobe = { lift: 7.5, half: 68 };
const centre = at(0, 0);
const anyTurn = fc.double({ min: -180, max: 180, noNaN: true });

// Checked against the geometry of contact: a follower touches its cam without cutting into it and without a gap.
describe('cam lobe', () => {
  it('carries a flat follower at base circle plus lift, whatever its angle', () => {
    fc.assert(
      fc.property(anyTurn, (fromNose) => {
        const base = baseRadius(lobe);
        const n = heading(0);
        // The follower stands upward, the nose `fromNose` before it.
        const outline = lobeOutline(lobe, base, centre, -fromNose);
        const highest = Math.max(...outline.map((p) => p.x * n.x + p.y * n.y));
        const expected = base + rise(lobe, fromNose).lift;
        expect(highest).toBeLessThanOrEqual(expected + 1e-9);
        expect(highest).toBeGreaterThan(expected - 0.08); // the outline is a polygon of 3 degree steps
      }),
    );
  });
  it('touches a roller follower and does not cut into it', () => {
    fc.assert(
      fc.property(anyTurn, (fromNose) => {
        const roller = 8.5;
        const base = baseRadius(lobe);
        const outline = lobeOutline(lobe, base, centre, -fromNose, roller);
        const axle = at(0, -(base + roller + rise(lobe, fromNose).lift));
        const gap = Math.min(...outline.map((p) => distance(p, axle))) - roller;
        expect(gap).toBeGreaterThan(-0.01);
        expect(gap).toBeLessThan(0.12);
      }),
    );
  });
  it('lifts fully at the nose and not at all on the base circle', () => {
    expect(rise(lobe, 0).lift).toBeCloseTo(7.5, 9);
    expect(rise(lobe, 68).lift).toBe(0);
    expect(rise(lobe, -120).lift).toBe(0);
  });
  it('gives the slope that the lift has', () => {
    const step = 1e-5;
    for (const turn of [-60, -33, -5, 12, 47]) {
      const difference = (rise(lobe, turn + step).lift - rise(lobe, turn - step).lift) / ((2 * step * Math.PI) / 180);
      expect(rise(lobe, turn).slope).toBeCloseTo(difference, 4);
    }
  });
  it('leaves the base circle smoothly', () => {
    expect(Math.abs(rise(lobe, 67.999).slope)).toBeLessThan(0.01);
  });
});
