import { describe, expect, it } from 'vitest';
import { threadDiameter } from './thread-diameter.js';

describe('outside diameter of a thread (designations of ISO 261 and ASME B1.1, from memory)', () => {
  it.each([
    ['M10x1.25', 10],
    ['M11', 11],
    ['m14 x 1.5', 14],
    ['3/8-24', 9.525],
    ['7/16-14 UNC', 11.1125],
    ['1/2', 12.7],
    ['1 1/8-7', 28.575],
  ])('%s is %d mm', (thread, millimetres) => {
    expect((threadDiameter(thread) ?? Number.NaN) * 1000).toBeCloseTo(millimetres, 9);
  });

  it.each(['not stated', '', '#10-24', '1/0', 'M0', '0.4375'])('"%s" does not say one', (thread) => {
    expect(threadDiameter(thread)).toBeUndefined();
  });
});
