import { describe, expect, it } from 'vitest';
import { arcPath } from './shape-path.js';

// SVG 2, "Paths", elliptical arc: sweep flag 1 is the positive-angle direction (clockwise on a screen). Ends by hand: r·(cos, sin).
describe('the pen for arcs', () => {
  const arc = (startDegrees: number, endDegrees: number) =>
    arcPath({ kind: 'arc', centre: { x: 0, y: 0 }, radius: 10, startDegrees, endDegrees, role: 'visible' });

  it('draws a quarter turn from right to bottom', () => {
    expect(arc(0, 90)).toBe('M10 0A10 10 0 0 1 7.071 7.071A10 10 0 0 1 0 10');
  });

  it('draws the other way round for a falling angle', () => {
    expect(arc(90, 0)).toBe('M0 10A10 10 0 0 0 7.071 7.071A10 10 0 0 0 10 0');
  });

  it('closes a full turn instead of drawing nothing', () => {
    expect(arc(0, 360)).toBe('M10 0A10 10 0 0 1 -10 0A10 10 0 0 1 10 0');
  });
});
