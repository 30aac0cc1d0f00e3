import { describe, expect, it } from 'vitest';
import { mm } from '../../quantity/index.js';
import { bolt, hole, invented, jointOf, placed, torque } from '../bench.suite.js';
import { judgeFastener, judgePlaced, lengthTolerance } from './judge.js';

// Trade facts of this file: common practice, no source.
const long = (id: string, length: number, over = {}) =>
  bolt({ id, length: { text: `${length} mm`, value: mm(length), from: invented }, ...over });
const size = (length: number) => ({ text: `${length} mm`, value: mm(length), from: invented });
const joint = jointOf({
  fasteners: [long('long', 95), long('middle', 94), long('short', 60)],
  holes: [
    hole('1', { fastener: 'long' }),
    hole('2', { fastener: 'short', onThread: 'sealer' }),
    hole('3', { fastener: 'short', depth: size(20.5), clamped: size(40) }),
    hole('4', { fastener: 'short', depth: size(30) }),
    hole('5', { fastener: 'short', clamped: size(49.5) }),
    hole('6', { fastener: 'short', opensInto: 'water', depth: size(20.5), clamped: size(40) }),
    hole('7', { fastener: 'short', depth: size(19), clamped: size(40) }),
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

  it('bottoms when what is left of its length beyond the head is more than the hole is deep', () => {
    // 60 mm under the head, 40 mm clamped: 20 mm reach into 20.5 mm.
    expect(verdict('3', { length: mm(60) })).toMatchObject({ verdict: 'right', reach: { bottoms: false } });
    expect(verdict('3', { length: mm(60.5) })).toMatchObject({ verdict: 'right', reach: { bottoms: false } });
    // Within the tolerance of 1 mm, and still too long.
    expect(verdict('3', { length: mm(60.6) })).toMatchObject({ verdict: 'too-long', reach: { bottoms: true } });
    expect(verdict('3', { fastener: 'long' })).toMatchObject({ verdict: 'too-long', reach: { bottoms: true } });
    expect(verdict('3', { length: mm(60) }).reach?.into).toBeCloseTo(0.02, 9);
  });

  it('is too short when less than one diameter of thread is left for the hole', () => {
    // M10, 49.5 mm clamped: 60 mm leave 10.5 mm, 59.4 mm leave 9.9 mm.
    expect(verdict('5', { length: mm(60) })).toMatchObject({ verdict: 'right', reach: { shallow: false } });
    expect(verdict('5', { length: mm(59.4) })).toMatchObject({ verdict: 'too-short', reach: { shallow: true } });
  });

  it('cannot bottom in a hole that opens into water, and nothing is told where the clamped thickness is not stated', () => {
    expect(verdict('6', { length: mm(60.9) })).toMatchObject({ verdict: 'right' });
    expect(verdict('6', { length: mm(60.9) }).reach).not.toHaveProperty('bottoms');
    expect(verdict('4', { length: mm(60) }).verdict).toBe('right');
    expect(verdict('4', { length: mm(60) }).reach).toBeUndefined();
  });

  it('stops nobody by figures that the right fastener itself contradicts: one of them is misprinted', () => {
    expect(verdict('7', { length: mm(60) })).toMatchObject({ verdict: 'right' });
    expect(verdict('7', { length: mm(60) }).reach).toBeUndefined();
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
