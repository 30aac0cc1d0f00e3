import { describe, expect, it } from 'vitest';
import { bounceGuard } from './bounce.js';

// 400 ms is the project's own rule for double taps (bench ergonomics, touch targets): common practice, no source.
describe('a bounced button', () => {
  it('acts once when hit twice within 400 ms', () => {
    const guard = bounceGuard();
    expect([guard.allows('done', 0), guard.allows('done', 399), guard.allows('done', 400)]).toEqual([
      true,
      false,
      true,
    ]);
  });

  it('does not hold up a different action', () => {
    const guard = bounceGuard();
    expect([guard.allows('done', 0), guard.allows('back', 10)]).toEqual([true, true]);
  });

  it('is not made to wait longer by hammering', () => {
    const guard = bounceGuard();
    guard.allows('done', 0);
    for (const at of [100, 200, 300, 390]) guard.allows('done', at);
    expect(guard.allows('done', 401)).toBe(true);
  });
});
