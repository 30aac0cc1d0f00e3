import { describe, expect, it } from 'vitest';
import { mm } from '../../quantity/index.js';
import { bolt, hole, invented, jointOf, placed, torque } from '../bench.suite.js';
import { judgeFastener, judgePlaced, lengthTolerance } from './judge.js';

// Trade facts of this file: common practice, no source.
const long = (id: string, length: number, over = {}) =>
  bolt({ id, length: { text: `${length} mm`, value: mm(length), from: invented }, ...over });
const joint = jointOf({
  fasteners: [long('long', 95), long('middle', 94), long('short', 60)],
  holes: [
    hole('1', { fastener: 'long' }),
    hole('2', { fastener: 'short', onThread: 'sealer' }),
    hole('3', { fastener: 'short', depth: { text: '60.5 mm', value: mm(60.5), from: invented } }),
    hole('4', { fastener: 'short', depth: { text: '30 mm', value: mm(30), from: invented } }),
  ],
  stages: [torque(30)],
});
const verdict = (where: string, stated: Parameters<typeof judgeFastener>[2]) => judgeFastener(joint, where, stated);

describe('a fastener for a hole', () => {
  it('is right when the sheet names its kind', () => {
    expect(verdict('2', { fastener: 'short' }).verdict).toBe('right');
  });

  it('is wrong by name when another kind of the same length is offered', () => {
    const twins = jointOf({
      fasteners: [long('a', 60), long('b', 60)],
      holes: [hole('1', { fastener: 'a' })],
      stages: [],
    });
    expect(judgeFastener(twins, '1', { fastener: 'b' }).verdict).toBe('wrong-kind');
  });

  it('is too long or too short by the length of its kind', () => {
    expect(verdict('2', { fastener: 'long' })).toMatchObject({ verdict: 'too-long' });
    expect(verdict('2', { fastener: 'long' }).off).toBeCloseTo(0.035, 9);
    expect(verdict('1', { fastener: 'short' })).toMatchObject({ verdict: 'too-short' });
  });

  it('is judged by what was measured before what was said', () => {
    expect(verdict('1', { fastener: 'long', length: mm(60) }).verdict).toBe('too-short');
  });

  it.each([
    ['2', 61, 'right'],
    ['2', 61.01, 'too-long'],
    ['2', 59, 'right'],
    ['2', 58.99, 'too-short'],
    // A kind 1 mm shorter exists: half of that is the tolerance.
    ['1', 95.5, 'right'],
    ['1', 94.5, 'right'],
    ['1', 94.4, 'too-short'],
    ['1', 95.6, 'too-long'],
  ])('hole %s takes a measured length of %f mm as %s', (where, length, expected) => {
    expect(verdict(where, { length: mm(length) }).verdict).toBe(expected);
  });

  it('allows 1 mm, or half the way to the nearest other length', () => {
    expect(lengthTolerance(joint, mm(60))).toBeCloseTo(0.001, 12);
    expect(lengthTolerance(joint, mm(95))).toBeCloseTo(0.0005, 12);
  });

  it('bottoms when it is longer than the hole is deep, even within the tolerance', () => {
    expect(verdict('3', { length: mm(60.4) })).toMatchObject({ verdict: 'right', bottoms: false });
    expect(verdict('3', { length: mm(60.8) })).toMatchObject({ verdict: 'too-long', bottoms: true });
  });

  it('tells nothing about bottoming where the depth is counted from the face of the block', () => {
    const judged = verdict('4', { length: mm(60) });
    expect(judged.verdict).toBe('right');
    expect(judged.bottoms).toBeUndefined();
  });

  it('is not right while nobody has said what it is', () => {
    expect(verdict('1', {}).verdict).toBe('cannot-tell');
    const unsized = jointOf({ fasteners: [{ id: 'bolt', name: 'x', thread: 'M8', use: 'reuse' }], stages: [] });
    expect(judgeFastener(unsized, '1', { length: mm(40) }).verdict).toBe('cannot-tell');
    expect(judgeFastener(unsized, '1', { fastener: 'bolt' }).verdict).toBe('right');
    expect(judgeFastener(unsized, '1', { fastener: 'stud' }).verdict).toBe('wrong-kind');
  });

  it('is past its limit when a re-usable one has grown longer than the sheet allows', () => {
    const lengthLimit = { text: '99.4 mm', value: mm(99.4), from: invented };
    const grown = jointOf({ fasteners: [long('bolt', 99, { use: 'reuse-to-length', lengthLimit })], stages: [] });
    expect(judgeFastener(grown, '1', { length: mm(99.4) }).verdict).toBe('right');
    expect(judgeFastener(grown, '1', { length: mm(99.5) }).verdict).toBe('past-limit');
  });

  it('takes the printed window of a length as its size', () => {
    const window = { low: mm(94), high: mm(98) };
    const kind = bolt({ length: { text: '94..98 mm', value: mm(96), window, from: invented } });
    const ranged = jointOf({ fasteners: [kind], stages: [] });
    expect(judgeFastener(ranged, '1', { length: mm(98.9) }).verdict).toBe('right');
    expect(judgeFastener(ranged, '1', { length: mm(99.1) }).verdict).toBe('too-long');
  });

  it('is refused with sealer on a thread that takes oil, and with oil on one that takes sealer', () => {
    expect(judgePlaced(joint, placed(joint, '1', { onThread: 'sealer' }).data as never).verdict).toBe(
      'wrong-on-thread',
    );
    expect(verdict('2', { fastener: 'short', onThread: 'oil' }).verdict).toBe('wrong-on-thread');
    expect(verdict('1', { fastener: 'long', underHead: 'dry' }).verdict).toBe('wrong-under-head');
  });

  it('takes what the person looked up where the sheet does not say what goes on', () => {
    const silent = jointOf({ holes: [hole('1', { onThread: 'not-stated' })], stages: [] });
    expect(judgeFastener(silent, '1', { fastener: 'bolt', onThread: 'oil' }).verdict).toBe('right');
  });

  it('belongs to no hole that the joint does not have', () => {
    expect(verdict('99', { fastener: 'long' }).verdict).toBe('unknown-hole');
  });
});
