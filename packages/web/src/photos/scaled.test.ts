import { describe, expect, it } from 'vitest';
import { scaled } from './scaled.js';

describe('the size at which a photo is kept', () => {
  it('has a long side of 1600 px, whichever side that is', () => {
    expect(scaled({ width: 4000, height: 3000 })).toEqual({ width: 1600, height: 1200 });
    expect(scaled({ width: 3000, height: 4000 })).toEqual({ width: 1200, height: 1600 });
  });
  it('is never larger than the picture came', () => {
    expect(scaled({ width: 640, height: 480 })).toEqual({ width: 640, height: 480 });
    expect(scaled({ width: 1600, height: 9 })).toEqual({ width: 1600, height: 9 });
  });
  it('keeps at least a line of a strip', () => {
    expect(scaled({ width: 20_000, height: 2 })).toEqual({ width: 1600, height: 1 });
  });
});
